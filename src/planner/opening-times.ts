import { atLocal, localDay, weekday } from './local-day';
import { createOpenings, type Openings } from './search/openings';
import { joined, overlap, type Span, without } from './span';
import type { DayHours, Hours, Shop, Weather } from './working-times';

/** How far the planner looks ahead, days. */
const HORIZON_DAYS = 750;

/** When work of one sort may be done; in the booth also when the air is fit in every way asked for. */
export type OpeningTimes = (place: 'bench' | 'booth', against?: readonly Weather[]) => Openings;

/** The opening times of a shop from today on; what was worked out once is kept. */
export function createOpeningTimes(shop: Shop, now: number): OpeningTimes {
  const firstDay = localDay(now, shop.zone) - 1; // yesterday's late hours may run on into today
  const known = new Map<string, Openings>();
  return (place, against = []) => {
    const key = [place, ...against].join();
    const found = known.get(key);
    if (found) return found;
    const spansOfDay = place === 'bench' ? benchSpans(shop) : boothSpans(shop, against);
    const made = createOpenings(spansOfDay, firstDay, firstDay + HORIZON_DAYS);
    known.set(key, made);
    return made;
  };
}

/** When the opening that this minute lies in ends; undefined where the shop is not open then. */
export function closingAfter(shop: Shop, minute: number): number | undefined {
  const day = localDay(minute, shop.zone);
  const spans = [day - 1, day].flatMap(benchSpans(shop)); // late hours run on into the next day
  return spans.find(({ from, to }) => from <= minute && minute < to)?.to;
}

/** The longest opening that a usual week has, minutes; closures and weather left aside. */
export function longestUsualMinutes(shop: Shop, place: 'bench' | 'booth'): number {
  const usual = { ...shop, closures: [], unfitAir: [], zone: () => 0 };
  const spansOfDay = place === 'bench' ? benchSpans(usual) : boothSpans(usual, []);
  const fortnight = joined(Array.from({ length: 14 }, (_, day) => spansOfDay(day)).flat());
  return Math.max(0, ...fortnight.map(({ from, to }) => to - from));
}

function benchSpans(shop: Shop): (day: number) => readonly Span[] {
  const closures = shop.closures.filter(({ closes }) => closes === 'everything');
  return (day) => without(spansAt(shop, day, dayHours(shop, day).work), closures);
}

function boothSpans(shop: Shop, against: readonly Weather[]): (day: number) => readonly Span[] {
  const shut = [...shop.closures, ...shop.unfitAir.filter(({ because }) => against.includes(because))];
  const quiet = shop.quiet ? [shop.quiet] : [];
  return (day) => {
    const { work, booth = work } = dayHours(shop, day);
    const open = overlap(spansAt(shop, day, work), spansAt(shop, day, booth));
    const silent = [-1, 0, 1].flatMap((away) => spansAt(shop, day + away, quiet));
    return without(open, [...silent, ...shut]);
  };
}

const dayHours = (shop: Shop, day: number): DayHours => shop.week[weekday(day)] ?? { work: [] };

function spansAt({ zone }: Shop, day: number, hours: readonly Hours[]): Span[] {
  return hours
    .map(({ open, close }) => ({ from: atLocal(day, open, zone), to: atLocal(day, close, zone) }))
    .filter(({ from, to }) => from < to)
    .sort((a, b) => a.from - b.from);
}
