import type { Zone } from '../../logbook/fold/piece/zones';
import { dropFillApplications } from '../../science/film/drop-fill';
import { HOUR_MS } from '../../units';
import type { Stand } from './stands';

/** Height of a drop over what is still open: level, usual, and the most that stays put (common practice, no source). */
export const MOUNDS = { level: 1, usual: 1.25, most: 1.5 } as const;
/** So much of the depth may stay open at the end; levelling takes the rest (common practice, no source). */
const REST = 0.05;
/** A brush cannot take less than this up evenly; so much is poured at the least, m3 (common practice, no source). */
export const SMALLEST_POUR_M3 = 1e-6;

/** How a chip or fissure is filled drop by drop. */
export interface DropFill {
  /** With the highest mound, as usual, and level. */
  readonly drops: { readonly few: number; readonly usual: number; readonly many: number };
  /** What is open, m3. */
  readonly voidM3: number;
  /** Liquid that fills it with the rest allowed, m3. */
  readonly wetM3: number;
  /** Drops that are in. */
  readonly done: number;
  /** Dry film that the next drop leaves, m. */
  readonly nextDryM: number;
}

/** Area of a zone: as said, or length times width; undefined where neither is known, m2. */
const zoneAreaM2 = ({ area, length, width }: Zone): number | undefined =>
  area?.si ?? (length && width && length.si * width.si);

/** Drops laid in a zone itself, oldest first. */
export const dropsOf = ({ piece, zone }: Stand) =>
  piece.coats.filter(({ how, zoneId }) => how === 'brush-fill' && zoneId === zone?.zoneId);

/**
 * The drop fill of a zone with a liquid of so much solids; undefined where the size or depth of the zone is not known.
 *
 * Source: n = ln(rest) / ln(1 - m s), as `dropFillApplications`; the mounds are common practice, no source.
 */
export function dropFillOf(stand: Stand, volumeSolids: number): DropFill | undefined {
  const { zone } = stand;
  const areaM2 = zone && zoneAreaM2(zone);
  const depthM = zone?.depth?.si;
  if (areaM2 === undefined || depthM === undefined || volumeSolids <= 0 || volumeSolids > 0.65)
    return undefined;
  const drops = (moundFactor: number): number =>
    dropFillApplications({ moundFactor, volumeSolids, rest: REST });
  const done = dropsOf(stand).length;
  const share = MOUNDS.usual * volumeSolids;
  return {
    drops: { few: drops(MOUNDS.most), usual: drops(MOUNDS.usual), many: drops(MOUNDS.level) },
    voidM3: areaM2 * depthM,
    wetM3: (areaM2 * depthM * (1 - REST)) / volumeSolids,
    done,
    nextDryM: depthM * (1 - share) ** done * share,
  };
}

/** How many drops a day go in, and how long after the one before (common practice, no source). */
export const DROPS_A_DAY = { few: 2, many: 3 } as const;
export const DROP_GAP_MS = 3 * HOUR_MS;

/**
 * The day of the last of so many drops, from a day on which some may be in already.
 * @param today the day to go on from, as a count of days; @param inToday drops that are in on it
 * @param isWorkday whether drops are laid on that day
 */
export function lastDropDay(
  drops: number,
  aDay: number,
  today: number,
  inToday: number,
  isWorkday: (day: number) => boolean,
): number {
  let day = today;
  let left = drops;
  let room = Math.max(0, aDay - inToday);
  const A_YEAR = 366;
  while (left > 0 && day < today + A_YEAR) {
    left -= isWorkday(day) ? Math.min(left, room) : 0;
    room = aDay;
    if (left > 0) day++;
  }
  return day;
}

/** Days of rest after the last drop before it is levelled, and after levelling before the sink is looked for (common practice, no source). */
export const REST_DAYS = { earliest: 7, usualFrom: 14, usualTo: 21, deep: 30, sinkCheck: 7 } as const;
