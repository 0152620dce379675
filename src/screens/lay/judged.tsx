import { verdictFor } from '../../actions/verdicts/verdict-for';
import { Icon } from '../../parts/frame/icons';
import { useShop } from '../../parts/frame/shop-context';
import { CureNotes } from '../../parts/time/cure-notes';
import { Reasons } from '../../parts/verdict/reasons';
import { signOf } from '../../parts/verdict/sign';
import type { Verdict } from '../../verdicts/verdict';
import type { CoatDraft } from './coat-draft';

/** What the judge says of the coat as it is being said. */
export const useVerdictOnCoat = ({ piece, zone, jar: jarId, how: way }: CoatDraft): Verdict | undefined =>
  verdictFor(useShop(), zone ?? piece, { act: way === 'flash' ? 'flash-coat' : 'coat', way, jarId });

interface JudgedProps {
  readonly pieceId: string | undefined;
  readonly verdict: Verdict | undefined;
}

/** The verdict on this coat, with what speaks against it; it forbids nothing. */
export function Judged({ pieceId, verdict }: JudgedProps) {
  const { shop, outlooks, nowMs } = useShop();
  const piece = shop.value.pieces.get(pieceId ?? '');
  if (!piece || !verdict) return null;
  const { kind, icon, word } = signOf(verdict, nowMs.value);
  return (
    <>
      {verdict.word !== 'ready' && (
        <p class="state" data-kind={kind}>
          <Icon name={icon} />
          {word}
        </p>
      )}
      <Reasons pieceId={piece.id} verdict={verdict} />
      <CureNotes piece={piece} outlook={outlooks.value.get(piece.id)} isWarningOnly />
    </>
  );
}
