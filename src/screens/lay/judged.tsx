import { verdictFor } from '../../actions/verdicts/verdict-for';
import { Icon } from '../../parts/frame/icons';
import { useShop } from '../../parts/frame/shop-context';
import { CureNotes } from '../../parts/time/cure-notes';
import { Reasons } from '../../parts/verdict/reasons';
import { signOf } from '../../parts/verdict/sign';
import type { Reason } from '../../verdicts/reason';
import type { Verdict } from '../../verdicts/verdict';
import type { CoatDraft } from './coat-draft';

/** What the judge says of a coat on a piece. */
export interface JudgedCoat {
  readonly pieceId: string;
  readonly verdict: Verdict | undefined;
}

/** What the judge says of the coat as it is being said, on each piece of the round. */
export function useVerdictsOnCoat({
  piece,
  also,
  zone,
  jar: jarId,
  how: way,
}: CoatDraft): readonly JudgedCoat[] {
  const open = useShop();
  const question = { act: way === 'flash' ? 'flash-coat' : 'coat', way, jarId } as const;
  const round = piece === undefined ? [] : [piece, ...also];
  return round.map((pieceId) => ({
    pieceId,
    verdict: verdictFor(open, pieceId === piece ? (zone ?? piece) : pieceId, question),
  }));
}

/** The verdict on this coat for each piece, with what speaks against it; what holds for several is said once. It forbids nothing. */
export function Judged({ judged }: { readonly judged: readonly JudgedCoat[] }) {
  const { shop, outlooks, nowMs } = useShop();
  const told = new Set<string>();
  return (
    <>
      {judged.map(({ pieceId, verdict }) => {
        const piece = shop.value.pieces.get(pieceId);
        if (!piece || !verdict) return null;
        const { kind, icon, word } = signOf(verdict, nowMs.value);
        const reasons = verdict.reasons.filter((reason) => isNew(reason, told));
        return (
          <div key={pieceId} class="stack" data-piece={pieceId}>
            {verdict.word !== 'ready' && (
              <p class="state" data-kind={kind}>
                <Icon name={icon} />
                {judged.length > 1 ? `${piece.name}: ${word}` : word}
              </p>
            )}
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
