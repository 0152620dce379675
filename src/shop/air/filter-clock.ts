import type { Filter } from '../../logbook/fold/shop/shop-air';
import { DAY_S } from '../../units';

export type FilterState = 'fresh' | 'soon' | 'due' | 'no-schedule';

/** How far a filter has run against the schedule that the person set. */
export interface FilterClock {
  readonly wornS: number;
  readonly openS: number;
  readonly state: FilterState;
}

/** From this share of its schedule on, a change is near (common practice, no source). */
const SOON = 0.8;

/** The clock of a filter: wear from logged sprayings, and days since it was opened. Never by smell. */
export function filterClock({ wornS, openedMs, wear, open }: Filter, nowMs: number): FilterClock {
  const openS = Math.max(0, (nowMs - openedMs) / 1000);
  const shares = [wear && wornS / wear.si, open && openS / open.si].filter((share) => share !== undefined);
  const used = Math.max(0, ...shares);
  if (shares.length === 0) return { wornS, openS, state: 'no-schedule' };
  return { wornS, openS, state: used >= 1 ? 'due' : used >= SOON ? 'soon' : 'fresh' };
}

/** The filters in use, the one opened first first. */
export const filtersInUse = (filters: ReadonlyMap<string, Filter>): readonly Filter[] =>
  [...filters.values()].filter(({ thrownOutMs }) => thrownOutMs === undefined);

/** Days since a filter was opened, whole. */
export const openDays = ({ openS }: FilterClock): number => Math.floor(openS / DAY_S);
