import { wholeKey } from '../../actions/outlook/awaited';
import type { Outlook } from '../../actions/outlook/outlook';
import type { Piece } from '../../logbook/fold/piece/pieces';
import type { Zone } from '../../logbook/fold/piece/zones';
import { usePieceId } from '../../parts/frame/beside';
import { linkTo, route } from '../../parts/frame/route';
import { useShop } from '../../parts/frame/shop-context';
import { standsOf } from '../../shop/zone/stands';

interface OnPage {
  readonly piece: Piece;
  readonly outlook: Outlook | undefined;
  /** The place on it that the address names by `?zone=`; the piece and its outlook are then as that place sees them. */
  readonly zone: Zone | undefined;
  /** What an entry of this page names its place by. */
  readonly place: { readonly zoneId?: string };
  /** The page of the piece, or of the place. */
  readonly home: string;
}

/** The piece that the address names, and its outlook. Only for pages behind a piece that is there. */
export function usePiece(): OnPage {
  const { shop, outlooks } = useShop();
  const { query } = route.value;
  const id = usePieceId();
  const piece = shop.value.pieces.get(id);
  if (!piece) throw new Error('This page was shown without its piece.');
  const stand = standsOf(piece, shop.value).find(({ zone }) => zone?.zoneId === query.get('zone'));
  const zone = stand?.zone;
  if (!stand || !zone)
    return { piece, outlook: outlooks.value.get(id), zone: undefined, place: {}, home: linkTo('piece', id) };
  const { zoneId } = zone;
  const outlook = outlooks.value.get(zoneId) ?? outlooks.value.get(wholeKey(id));
  return { piece: stand.piece, outlook, zone, place: { zoneId }, home: linkTo('piece', id, 'zone', zoneId) };
}
