import { crosses } from '../../science/outline';
import type { Entry, Kind } from '../entry';
import type { Shop } from '../fold/fold';
import { documented, zonesOf } from '../fold/piece/zones';

/** Why an entry about a place on a piece does not fit the shop. */
export type ZoneGround =
  | 'unknown-piece'
  | 'unknown-jar'
  | 'unknown-zone'
  | 'unknown-photo'
  | 'photo-there-already'
  | 'outline-crosses';

type Rules = {
  readonly [K in Kind]?: (entry: Extract<Entry, { kind: K }>, shop: Shop) => ZoneGround | undefined;
};

// Whether or not it is finished: a photo, a note or an outline may come years later.
const onPiece = ({ piece }: { readonly piece: string }, { pieces }: Shop): ZoneGround | undefined =>
  pieces.has(piece) ? undefined : 'unknown-piece';

/** Whether the zone that an entry names, if it names one, is on its piece. */
export function onZone(entry: Entry, shop: Shop): 'unknown-zone' | undefined {
  if (entry.kind === 'zone-described' || !('zoneId' in entry) || entry.piece === undefined) return undefined;
  const { piece, zoneId } = entry;
  const isThere = zoneId === undefined || zonesOf(piece, shop).some((zone) => zone.zoneId === zoneId);
  return isThere ? undefined : 'unknown-zone';
}

const havePhotos = (piece: string, ids: readonly string[], shop: Shop): ZoneGround | undefined => {
  const there = new Set(documented(piece, shop).photos.map(({ photo }) => photo));
  return ids.every((id) => there.has(id)) ? undefined : 'unknown-photo';
};

/** What the entries about zones, photos and the record need of the shop. */
export const ZONE_RULES: Rules = {
  'zone-described': onPiece,
  'zone-drawn': (entry, shop) =>
    onPiece(entry, shop) ??
    havePhotos(entry.piece, [entry.photo], shop) ??
    (crosses(entry.outline) ? 'outline-crosses' : undefined),
  photographed: (entry, shop) =>
    onPiece(entry, shop) ??
    (havePhotos(entry.piece, [entry.photo], shop) ? undefined : 'photo-there-already'),
  'photos-aligned': (entry, shop) =>
    onPiece(entry, shop) ?? havePhotos(entry.piece, [entry.under, entry.over], shop),
  'piece-noted': onPiece,
  'record-worded': onPiece,
  'toner-described': (entry, shop) =>
    onPiece(entry, shop) ?? (shop.jars.has(entry.jar) ? undefined : 'unknown-jar'),
};

/** Whether striking this entry would leave work on a zone that is not there, or an outline on no photo. */
export function zoneLeansOn(entry: Entry, shop: Shop): 'still-used' | undefined {
  const names = (test: (other: Entry) => boolean): 'still-used' | undefined =>
    'piece' in entry &&
    (shop.records.get(entry.piece ?? '') ?? []).some(
      (other) => other.id !== entry.id && !shop.struck.has(other.id) && test(other),
    )
      ? 'still-used'
      : undefined;
  if (entry.kind === 'zone-described') {
    const { zoneId } = entry;
    const isChanged = names((other) => other.kind === 'zone-described' && other.zoneId === zoneId);
    return isChanged ? undefined : names((other) => 'zoneId' in other && other.zoneId === zoneId);
  }
  if (entry.kind !== 'photographed') return undefined;
  const { photo } = entry;
  return names(
    (other) =>
      (other.kind === 'zone-drawn' && other.photo === photo) ||
      (other.kind === 'photos-aligned' && (other.under === photo || other.over === photo)),
  );
}
