import { verdictFor } from '../../actions/verdicts/verdict-for';
import type { Piece } from '../../logbook/fold/piece/pieces';
import { useShop } from '../../parts/frame/shop-context';
import { Reasons } from '../../parts/verdict/reasons';
import { SetAside } from '../../parts/verdict/why-anyway';

/** What holds a promise, or was set aside, each with the way to where it is cleared. */
export function Held({ piece }: { readonly piece: Piece }) {
  const open = useShop();
  const about = { pieceId: piece.id, verdict: verdictFor(open, piece.id, { act: 'promise' }) };
  return (
    <>
      <Reasons {...about} />
      <SetAside {...about} />
    </>
  );
}
