import { verdictFor } from '../../actions/verdicts/verdict-for';
import type { Sanding } from '../../logbook/fold/pieces';
import { useShop } from '../../parts/frame/shop-context';
import { Reasons } from '../../parts/verdict/reasons';
import type { Act } from '../../verdicts/act';
import { usePiece } from './use-piece';

const ACTS: { readonly [S in Sanding['stage']]: Act } = {
  scuff: 'scuff',
  level: 'level-sand',
  'rub-out': 'rub-out',
};

/** What the judge says of this sanding; it forbids nothing. */
export function StillSoft({ stage }: { readonly stage: Sanding['stage'] }) {
  const { piece } = usePiece();
  return <Reasons pieceId={piece.id} verdict={verdictFor(useShop(), piece.id, { act: ACTS[stage] })} />;
}
