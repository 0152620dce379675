import { DAY_MINUTES, MINUTE_MS } from '../units';

/** Minutes by which the wall clock is ahead of UTC at that minute: 60 for Berlin in winter. */
export type ZoneOffset = (utcMinute: number) => number;

/** Whole minutes since 1970-01-01T00:00Z of an instant in milliseconds; seconds are dropped. */
export const toMinute = (instantMs: number): number => Math.floor(instantMs / MINUTE_MS);

/** The instant in milliseconds at which a minute begins. */
export const toInstantMs = (minute: number): number => minute * MINUTE_MS;

/** The day of the calendar on the wall, as days since 1970-01-01. */
export function localDay(minute: number, zone: ZoneOffset): number {
  return Math.floor((minute + zone(minute)) / DAY_MINUTES);
}

/** Monday is 0, Sunday 6. */
export function weekday(day: number): number {
  return (((day + 3) % 7) + 7) % 7; // 1970-01-01 was a Thursday
}

/**
 * The UTC minute at which the wall clock shows that minute of that day.
 * A time that comes twice means the first; a time that the clocks jump over means as long after the jump.
 */
export function atLocal(day: number, minuteOfDay: number, zone: ZoneOffset): number {
  const wall = day * DAY_MINUTES + minuteOfDay;
  // No zone is more than 14 h from UTC, so a day either way stands on either side of a change of the clocks.
  const before = zone(wall - DAY_MINUTES);
  const after = zone(wall + DAY_MINUTES);
  const first = wall - Math.max(before, after);
  const second = wall - Math.min(before, after);
  if (wall - first === zone(first)) return first;
  if (wall - second === zone(second)) return second;
  return wall - before;
}

/** The UTC minute at which the next day of the wall calendar begins. */
export function nextDayStart(minute: number, zone: ZoneOffset): number {
  return atLocal(localDay(minute, zone) + 1, 0, zone);
}
