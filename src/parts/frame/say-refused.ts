import type { Refused } from '../../actions/shop';
import type { Result } from '../../result';
import { TO_PLACE } from '../../words/frame/refusals';
import { linkTo } from './route';
import { showToast, type ToastMessage } from './toast';

/** The page where a refusal is put right, which leads back here; undefined where a field of the form itself is to blame. */
export const wayOut = ({ way }: Refused): ToastMessage['way'] =>
  way && {
    href: `${linkTo(...way)}?back=${encodeURIComponent(location.hash)}`,
    label: TO_PLACE[way[0]],
  };

/** Says why nothing was done by a tap outside a form, with the way to where it is put right. */
export const sayRefused = (refused: Refused): void =>
  showToast({ text: refused.sentence, isRefused: true, way: wayOut(refused) });

/** Says what a tap outside a form has done, or why it did nothing. */
export const sayOutcome = <Value>(
  done: Result<Value, Refused>,
  told: (value: Value) => ToastMessage,
): void => (done.ok ? showToast(told(done.value)) : sayRefused(done.failure));
