import { route } from '../../parts/frame/route';
import { CorrectLine } from '../../parts/kept/correct-line';

/** `#/air/correct/<id>` */
export const CorrectReading = () => <CorrectLine id={route.value.rest[1] ?? ''} />;
