import { useShop } from '../../parts/frame/shop-context';
import { type RowStanding, rowStanding } from '../../parts/time/row-standing';

/** Where every piece stands, finished ones too. */
export function useRows(): readonly RowStanding[] {
  const { shop, outlooks, standings } = useShop();
  return [...shop.value.pieces.values()].map((piece) =>
    rowStanding(piece, standings.value.get(piece.id), outlooks.value.get(piece.id)),
  );
}
