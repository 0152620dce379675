import type { WorkingHours } from '../../logbook/fold/shop/plans';
import type { DayHours, Hours } from '../../planner/windows/working-times';
import { DAY_MINUTES, HOUR_MINUTES } from '../../units';

type ClockSpan = { readonly open: string; readonly close: string };

/** Minutes after midnight of a clock time such as "06:30". */
export function clockMinutes(clock: string): number {
  const [hours = 0, minutes = 0] = clock.split(':').map(Number);
  return hours * HOUR_MINUTES + minutes;
}

/** The hours of a span by the clock; an end that is not after the beginning is on the next day. */
export function hoursOf({ open, close }: ClockSpan): Hours {
  const from = clockMinutes(open);
  const to = clockMinutes(close);
  return { open: from, close: to > from ? to : to + DAY_MINUTES };
}

/** Monday to Friday, nine to five: common practice, no source; held until the person sets their own. */
export const USUAL_WEEK: WorkingHours['week'] = Array.from({ length: 7 }, (_, day) => ({
  work: day < 5 ? [{ open: '09:00', close: '17:00' }] : [],
}));

/** The week as the planner reads it, Monday first. */
export const weekOf = (week: WorkingHours['week']): readonly DayHours[] =>
  week.map(({ work, booth }) => ({ work: work.map(hoursOf), ...(booth && { booth: booth.map(hoursOf) }) }));
