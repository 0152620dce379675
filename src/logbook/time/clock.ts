import { DAY_MS, MINUTE_MS } from '../../units';
import type { Shop } from '../fold/fold';

/** Two phones of one shop may differ by so much (judgement, no source). */
export const CLOCKS_DIFFER_MS = 10 * MINUTE_MS;

/** When an entry was logged, by its id (RFC 9562, 5.7: the first 48 bits are milliseconds since 1970). */
export const loggedMs = (id: string): number => Number.parseInt(id.slice(0, 8) + id.slice(9, 13), 16) || 0;

/** When the clock said the latest of what is logged, by its entry or by when it was logged; a clock that goes on is never before it. */
export const clockSaidMs = ({ newest, last }: Pick<Shop, 'newest' | 'last'>): number =>
  Math.max(loggedMs(newest), last ? Date.parse(last.at) : 0);

/** Whether the clock is behind what it said before: it was wrong then, or is now. */
export const isClockBehind = (saidMs: number, nowMs: number): boolean => saidMs > nowMs + CLOCKS_DIFFER_MS;

/** Nothing in a logbook tells a shorter rest, a holiday, from a clock that has jumped (judgement, no source). */
const ANY_REST_MS = 14 * DAY_MS;
/** A bench that rests for longer is rare (judgement, no source), and is asked about even if it has rested so before. */
const LONGEST_REST_MS = 180 * DAY_MS;

/** Whether more has gone by since the clock was last known to be right than between any two entries before: it may have jumped forward. */
export function isClockFarOn(entries: Shop['entries'], saidMs: number, nowMs: number): boolean {
  const restMs = nowMs - saidMs;
  if (entries.size === 0 || restMs <= ANY_REST_MS) return false;
  return restMs > Math.min(longestRestMs(entries), LONGEST_REST_MS);
}

/** The longest time between one thing that happened and the next, ms. */
function longestRestMs(entries: Shop['entries']): number {
  let longest = 0;
  let before = Number.POSITIVE_INFINITY;
  for (const { at } of entries.values()) {
    const atMs = Date.parse(at);
    longest = Math.max(longest, atMs - before);
    before = atMs;
  }
  return longest;
}
