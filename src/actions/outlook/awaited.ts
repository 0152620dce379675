import type { Shop } from '../../logbook/fold/fold';
import type { Piece } from '../../logbook/fold/piece/pieces';
import { asItStands } from '../../shop/stack/layers-left';
import { type Stand, standsOf } from '../../shop/zone/stands';
import type { Outlook } from './outlook';

type Outlooks = ReadonlyMap<string, Outlook>;
type Ready = Extract<Outlook, { state: 'ready' }>;

/** Under this key stands the outlook of what is no zone, where a piece has zones; under the piece's own, the one that it waits for. */
export const wholeKey = (piece: string): string => `whole ${piece}`;

const isFilm = ({ how }: Piece['coats'][number]): boolean => how !== 'flash';

/** The stands of a piece that dry on their own: the whole if anything was laid on it, and every zone with work of its own. */
export function dryingStands(piece: Piece, shop: Shop): readonly Stand[] {
  return standsOf(piece, shop).filter(
    ({ zone, piece: seen }) => asItStands(seen, shop).coats.some(isFilm) && isOwn(zone, seen),
  );
}

const isOwn = (zone: Stand['zone'], { coats, sandings, checks }: Piece): boolean =>
  zone === undefined || [...coats, ...sandings, ...checks].some(({ zoneId }) => zoneId === zone.zoneId);

/** Of those stands, the one that the piece waits for: what is to be rubbed out last. Undefined while none is worked out. */
export function awaitedStand(piece: Piece, shop: Shop, own: Outlooks): Stand | undefined {
  const at = ({ id }: Stand): Outlook | undefined => own.get(id);
  return dryingStands(piece, shop)
    .filter((stand) => at(stand)?.state === 'ready')
    .sort((one, other) => rubbedOutMs(at(other) as Ready) - rubbedOutMs(at(one) as Ready))[0];
}

const rubbedOutMs = ({ startMs, estimate }: Ready): number =>
  startMs + estimate.milestones.rubOut.likelyS * 1000;

/** The outlooks of each stand again, out of those that the screens read. */
export function ownOutlooks(piece: Piece, all: Outlooks): Outlooks {
  const whole = all.get(wholeKey(piece.id));
  return whole ? new Map(all).set(piece.id, whole) : all;
}

/** The outlooks as the screens read them: by zone, and by piece that of the place that it waits for. */
export function published(shop: Shop, own: Outlooks): Outlooks {
  const all = new Map(own);
  const zoned = new Set([...own.keys()].flatMap((id) => shop.zonePieces.get(id) ?? []));
  for (const piece of [...zoned].flatMap((id) => shop.pieces.get(id) ?? [])) {
    const whole = own.get(piece.id);
    if (whole) all.set(wholeKey(piece.id), whole);
    const awaited = awaitedOutlook(piece, shop, own);
    if (awaited) all.set(piece.id, awaited);
  }
  return all;
}

function awaitedOutlook(piece: Piece, shop: Shop, own: Outlooks): Outlook | undefined {
  const outlooks = dryingStands(piece, shop).flatMap(({ id }) => own.get(id) ?? []);
  const failed = outlooks.find(({ state }) => state === 'failed');
  const latest = own.get(awaitedStand(piece, shop, own)?.id ?? '');
  if (failed || latest?.state !== 'ready') return failed ?? outlooks[0];
  const isAll = outlooks.every((one) => one.state === 'ready' && !one.stale);
  return isAll ? latest : { ...latest, stale: true };
}
