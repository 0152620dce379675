import { atLocal, localDay, toInstantMs, type ZoneOffset } from '../../../planner/local-day';
import { DAY_MINUTES } from '../../../units';

/** A day on the axis. */
export interface DayTick {
  readonly at: number;
  readonly label: string;
}

export interface DayAxis {
  readonly from: number;
  readonly to: number;
  readonly ticks: readonly DayTick[];
}

const STEPS_DAYS = [1, 2, 7, 14, 28, 56, 112];
const MOST_TICKS = 6;
const WEEK_DAYS = 7;
const WEEKDAY = new Intl.DateTimeFormat('en-GB', { weekday: 'short', day: 'numeric' });
const DATE = new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'short' });

/** An axis of whole days of the wall calendar, from today until everything is in, with a few days named. Minutes since 1970. */
export function dayAxis(now: number, latest: number, zone: ZoneOffset): DayAxis {
  const today = localDay(now, zone);
  const last = Math.max(localDay(latest, zone) + 1, today + 2);
  const days = last - today;
  const step = STEPS_DAYS.find((one) => days / one <= MOST_TICKS) ?? (STEPS_DAYS.at(-1) as number);
  const ticks: DayTick[] = [];
  for (let day = today; day < last; day += step) {
    const at = atLocal(day, 0, zone);
    // Noon has the day's own date wherever the clocks change.
    const noonMs = toInstantMs(at + DAY_MINUTES / 2);
    ticks.push({ at, label: (step < WEEK_DAYS ? WEEKDAY : DATE).format(noonMs) });
  }
  return { from: atLocal(today, 0, zone), to: atLocal(last, 0, zone), ticks };
}
