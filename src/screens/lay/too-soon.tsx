import { verdictFor } from '../../actions/verdicts/verdict-for';
import { Icon } from '../../parts/frame/icons';
import { useShop } from '../../parts/frame/shop-context';
import { CureNotes } from '../../parts/time/cure-notes';
import { Reasons } from '../../parts/verdict/reasons';
import { signOf } from '../../parts/verdict/sign';
import type { CoatWay } from './coat-draft';

interface TooSoonProps {
  readonly piece: string | undefined;
  readonly jar: string | undefined;
  readonly how: CoatWay;
}

/** What the judge says of this coat, with what speaks against it; it forbids nothing. */
export function TooSoon({ piece: id, jar: jarId, how: way }: TooSoonProps) {
  const open = useShop();
  const { shop, outlooks, nowMs } = open;
  const piece = shop.value.pieces.get(id ?? '');
  const verdict = verdictFor(open, id, { act: way === 'flash' ? 'flash-coat' : 'coat', way, jarId });
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
