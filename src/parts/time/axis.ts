import { HOUR_MS, MINUTE_MS } from '../../units';

const DAY_MS = 24 * HOUR_MS;
/** Below it the axis runs nearly evenly, beyond it by equal ratios. */
const BEND_MS = 20 * MINUTE_MS;
const END_MS = 45 * DAY_MS;

/** The marks of the axis, as long from now: now, an hour, a day, a week, a month. */
export const AXIS_MARKS_MS = [0, HOUR_MS, DAY_MS, 7 * DAY_MS, 30 * DAY_MS] as const;

/** Where a moment so long from now lies on the one time axis of the shop, 0 (now or past) to 1 (six weeks or more). */
export const alongAxis = (aheadMs: number): number =>
  Math.min(1, Math.log1p(Math.max(0, aheadMs) / BEND_MS) / Math.log1p(END_MS / BEND_MS));
