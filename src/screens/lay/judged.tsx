import { useShop } from '../../parts/frame/shop-context';
import { CureNotes } from '../../parts/time/cure-notes';
import { JudgedLine } from '../../parts/verdict/judged-line';
import { Reasons } from '../../parts/verdict/reasons';
import type { Reason } from '../../verdicts/reason';
import type { JudgedCoat } from './judged-coat';

/** The verdict on this coat for each piece, with what speaks against it; what holds for several is said once. It forbids nothing. */
export function Judged({ judged }: { readonly judged: readonly JudgedCoat[] }) {
  const { shop, outlooks } = useShop();
  const told = new Set<string>();
  return (
    <>
      {judged.map(({ pieceId, verdict }) => {
        const piece = shop.value.pieces.get(pieceId);
        if (!piece || !verdict) return null;
        const reasons = verdict.reasons.filter((reason) => isNew(reason, told));
        return (
          <div key={pieceId} class="stack" data-piece={pieceId}>
            <JudgedLine verdict={verdict} name={judged.length > 1 ? piece.name : undefined} />
            <Reasons pieceId={pieceId} verdict={{ ...verdict, reasons }} />
            <CureNotes piece={piece} outlook={outlooks.value.get(pieceId)} isWarningOnly />
          </div>
        );
      })}
    </>
  );
}

/** Whether nobody was told this yet; what is held or set aside on a piece is told for each. */
function isNew({ rule, says, weight }: Reason, told: Set<string>): boolean {
  const key = `${rule} ${says}`;
  const isTold = told.has(key) && weight !== 'hold';
  told.add(key);
  return !isTold;
}
