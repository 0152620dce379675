import { crosses } from '../../science/outline';
import type { Entry, EntryOf, Kind } from '../entry';
import type { Shop } from '../fold/fold';
import { documented, zonesOf } from '../fold/piece/zones';
import { onJar, onPiece } from './piece-or-jar';

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
  'toner-described': (entry, shop) => onPiece(entry, shop) ?? onJar(entry, shop),
};

/** Whether striking this entry would leave work on a zone that is not there. What was drawn of it goes with it, as with a photo. */
export function zoneLeansOn(entry: Entry, { records, struck }: Shop): 'still-used' | undefined {
  if (entry.kind !== 'zone-described') return undefined;
  const others = (records.get(entry.piece) ?? []).filter(({ id }) => id !== entry.id && !struck.has(id));
  const isUsed =
    others.some((other) => isOfZone(other, entry.zoneId)) && !others.some((other) => isSame(other, entry));
  return isUsed ? 'still-used' : undefined;
}

const isOfZone = (entry: Entry, zoneId: string): boolean =>
  'zoneId' in entry && entry.zoneId === zoneId && entry.kind !== 'zone-drawn';
const isSame = (entry: Entry, { kind, zoneId }: EntryOf<'zone-described'>): boolean =>
  entry.kind === kind && entry.zoneId === zoneId;
