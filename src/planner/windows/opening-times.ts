import { atLocal, localDay, weekday } from '../local-day';
import { createOpenings, type Openings } from '../search/openings';
import { joined, overlap, type Span, without } from '../span';
import type { DayHours, Hours, Weather, WorkingTimes } from './working-times';

/** How far the planner looks ahead, days: longer than any stack is looked at (judgement, no source). */
const HORIZON_DAYS = 750;

/** When work of one sort may be done; in the booth also when the air is fit in every way asked for. */
export type OpeningTimes = (place: 'bench' | 'booth', against?: readonly Weather[]) => Openings;

/** The opening times of a shop from today on; what was worked out once is kept. */
export function createOpeningTimes(working: WorkingTimes, now: number): OpeningTimes {
  const firstDay = localDay(now, working.zone) - 1; // yesterday's late hours may run on into today
  const known = new Map<string, Openings>();
  return (place, against = []) => {
    const key = [place, ...against].join();
    const found = known.get(key);
    if (found) return found;
    const spansOfDay = place === 'bench' ? benchSpans(working) : boothSpans(working, against);
    const made = createOpenings(spansOfDay, firstDay, firstDay + HORIZON_DAYS);
    known.set(key, made);
    return made;
  };
}

/** When the opening that this minute lies in ends; undefined where the shop is not open then. */
export function closingAfter(working: WorkingTimes, minute: number): number | undefined {
  const day = localDay(minute, working.zone);
  const spans = [day - 1, day].flatMap(benchSpans(working)); // late hours run on into the next day
  return spans.find(({ from, to }) => from <= minute && minute < to)?.to;
}

/** The longest opening that a usual week has, minutes; closures and weather left aside. */
export function longestUsualMinutes(working: WorkingTimes, place: 'bench' | 'booth'): number {
  const usual = { ...working, closures: [], unfitAir: [], zone: () => 0 };
  const spansOfDay = place === 'bench' ? benchSpans(usual) : boothSpans(usual, []);
  const fortnight = joined(Array.from({ length: 14 }, (_, day) => spansOfDay(day)).flat());
  return Math.max(0, ...fortnight.map(({ from, to }) => to - from));
}

function benchSpans(working: WorkingTimes): (day: number) => readonly Span[] {
  const closures = working.closures.filter(({ closes }) => closes === 'everything');
  return (day) => without(spansAt(working, day, dayHours(working, day).work), closures);
}

function boothSpans(working: WorkingTimes, against: readonly Weather[]): (day: number) => readonly Span[] {
  const shut = [...working.closures, ...working.unfitAir.filter(({ because }) => against.includes(because))];
  const quiet = working.quiet ? [working.quiet] : [];
  return (day) => {
    const { work, booth = work } = dayHours(working, day);
    const open = overlap(spansAt(working, day, work), spansAt(working, day, booth));
    const silent = [-1, 0, 1].flatMap((away) => spansAt(working, day + away, quiet));
    return without(open, [...silent, ...shut]);
  };
}

const dayHours = (working: WorkingTimes, day: number): DayHours => working.week[weekday(day)] as DayHours;

function spansAt({ zone }: WorkingTimes, day: number, hours: readonly Hours[]): Span[] {
  return hours
    .map(({ open, close }) => ({ from: atLocal(day, open, zone), to: atLocal(day, close, zone) }))
    .sort((a, b) => a.from - b.from);
}
