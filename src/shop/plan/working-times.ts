import type { Shop } from '../../logbook/fold/fold';
import { zoneOffset } from '../../logbook/time/zone-offset';
import { toMinute } from '../../planner/local-day';
import type { WorkingTimes } from '../../planner/windows/working-times';
import { hoursOf, USUAL_WEEK, weekOf } from './clock-hours';
import { unfitAir } from './unfit-air';

/** Where and when work may be done, as the planner reads it. */
export function workingTimes(shop: Shop, nowMs: number, zone: string): WorkingTimes {
  const { hours, closures } = shop;
  return {
    week: weekOf(hours?.week ?? USUAL_WEEK),
    ...(hours?.quiet && { quiet: hoursOf(hours.quiet) }),
    closures: closures.map(({ span, closes }) => ({
      from: toMinute(Date.parse(span.from)),
      to: toMinute(Date.parse(span.to)),
      closes,
    })),
    unfitAir: unfitAir(shop, nowMs),
    zone: zoneOffset(zone),
  };
}
