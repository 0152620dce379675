import { Notice } from '../../parts/frame/notice';
import { useShop } from '../../parts/frame/shop-context';
import { CureNotes } from '../../parts/time/cure-notes';
import { momentsOf } from '../../parts/time/moments';
import { LAY_WORDS } from '../../words/piece/lay';
import { whenWords } from '../../words/times';

/** Says so when the film below is, by the estimate, not ready for a wet coat; it forbids nothing. */
export function TooSoon({ piece: id }: { readonly piece: string | undefined }) {
  const { shop, outlooks, nowMs } = useShop();
  const piece = shop.value.pieces.get(id ?? '');
  if (!piece) return null;
  const outlook = outlooks.value.get(piece.id);
  const recoat = momentsOf(piece, outlook, nowMs.value).find(({ name }) => name === 'recoat');
  const isTooSoon = recoat !== undefined && nowMs.value < recoat.earliestMs;
  return (
    <>
      {isTooSoon && (
        <Notice kind="caution">
          <p>{LAY_WORDS.tooSoon(whenWords(recoat.likelyMs, nowMs.value))}</p>
        </Notice>
      )}
      <CureNotes piece={piece} outlook={outlook} isWarningOnly />
    </>
  );
}
