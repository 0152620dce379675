import type { Signal } from '@preact/signals';
import type { Shop } from '../../../logbook/fold/fold';
import { Tick } from '../../../parts/fields/tick';
import { useShop } from '../../../parts/frame/shop-context';
import { cardFor, type TestCard } from '../../../shop/card/cards';
import { LAY_CARD } from '../../../words/piece/coat/lay';
import type { CoatDraft } from '../coat-draft';

/** The test card that this coat goes on too; undefined where none lies there, or it is left out. */
export function cardCoated(draft: CoatDraft, shop: Shop): TestCard | undefined {
  const card = cardFor(draft.piece, draft.jar, shop);
  return card && (draft.card ?? hasEvery(card, draft, shop)) ? card : undefined;
}

/** Whether the card got every coat of its piece since it was made: then it gets this one as well, unless it is said otherwise. */
const hasEvery = ({ madeMs, withCoats }: TestCard, { piece }: CoatDraft, { pieces }: Shop): boolean =>
  (pieces.get(piece ?? '')?.coats ?? []).every(({ id, atMs }) => atMs < madeMs || withCoats.has(id));

/** Where a test card lies beside the piece: the same coat on it, in the same act. */
export function CardToo({ draft }: { readonly draft: Signal<CoatDraft> }) {
  const { shop } = useShop();
  if (!cardFor(draft.value.piece, draft.value.jar, shop.value)) return null;
  return (
    <Tick
      label={LAY_CARD}
      isTicked={cardCoated(draft.value, shop.value) !== undefined}
      onTick={(card) => {
        draft.value = { ...draft.value, card };
      }}
    />
  );
}
