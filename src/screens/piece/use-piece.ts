import type { Outlook } from '../../actions/outlook/outlook';
import type { Piece } from '../../logbook/fold/pieces';
import { route } from '../../parts/frame/route';
import { useShop } from '../../parts/frame/shop-context';

/** The piece that the address names, and its outlook. Only for pages behind a piece that is there. */
export function usePiece(): { readonly piece: Piece; readonly outlook: Outlook | undefined } {
  const { shop, outlooks } = useShop();
  const [id = ''] = route.value.rest;
  const piece = shop.value.pieces.get(id);
  if (!piece) throw new Error('This page was shown without its piece.');
  return { piece, outlook: outlooks.value.get(id) };
}
