import type { Bench, Step } from '../../../src/planner/step';

// No plan can end before this, whatever the order. Written without the planner.

const DAY = 1440;

/** A UTC minute before which the last piece cannot be finished, for a shop on UTC with one stretch of work a day. */
export function lowerBound(bench: Bench): number {
  const alone = bench.pieces.map(({ steps, coatsADay }) => goneThrough(bench, steps, coatsADay, bench.now));
  return Math.max(...alone, loadBound(bench, ['bench', 'booth']), loadBound(bench, ['booth']));
}

const minutesOf = (step: Step) =>
  step.kind === 'work'
    ? step.minutes
    : step.kind === 'wait'
      ? step.minutes.likely
      : step.kind === 'window'
        ? step.fromMinutes
        : 0;
const moveOf = (step: Step) => (step.kind === 'work' ? (step.moveMinutes ?? 0) : 0);

/** The stretch of work of a day; empty on a free day. */
function dayOf({ working }: Bench, day: number, place: Place) {
  const it = working.week[(day + 3) % 7]; // 1970-01-01 was a Thursday
  const stretch = (place === 'booth' ? (it?.booth ?? it?.work) : it?.work)?.[0];
  return stretch && { from: day * DAY + stretch.open, to: day * DAY + stretch.close };
}

/** When steps are done that begin at a minute and have the person to themselves; closures and windows left aside, which only makes it sooner. */
function goneThrough(bench: Bench, steps: readonly Step[], coatsADay: number, from: number): number {
  let at = from;
  const coatDays: number[] = [];
  for (const step of steps) {
    if (step.kind === 'work') {
      for (let isPlaced = false; !isPlaced; ) {
        const day = Math.floor(at / DAY);
        const stretch = dayOf(bench, day, step.place);
        const isFull = step.isCoat && coatDays.filter((it) => it === day).length >= coatsADay;
        const start = Math.max(at, stretch?.from ?? 0);
        isPlaced = stretch !== undefined && !isFull && start + step.minutes <= stretch.to;
        at = isPlaced ? start : (day + 1) * DAY;
      }
      if (step.isCoat) coatDays.push(Math.floor(at / DAY));
    }
    at += minutesOf(step);
  }
  return at;
}

interface Job {
  readonly place: Place;
  readonly minutes: number;
  readonly move: number;
  /** When it could begin if its piece had the person to itself. */
  readonly head: number;
  readonly after: readonly Step[];
  readonly tail: number;
  readonly coatsADay: number;
}
type Place = 'bench' | 'booth';

/** So many beginnings of sets, and so many ends, are enough for a bound. */
const MOST_HEADS = 6;
const MOST_TAILS = 60;

/**
 * All work at those places that cannot begin before a minute and has at least so much time to come after it: from that minute on all of
 * it is to be done, one of it is the last, and its piece goes on from there (Carlier 1982, from memory: heads, work and tails of a set).
 */
function loadBound(bench: Bench, places: readonly Place[]): number {
  const jobs = bench.pieces
    .flatMap((piece) => jobsOf(bench, piece))
    .filter(({ place }) => places.includes(place));
  if (jobs.length === 0) return bench.now;
  jobs.sort((a, b) => a.tail - b.tail);
  const heads = thinned(
    jobs.map(({ head }) => head).sort((a, b) => a - b),
    MOST_HEADS,
  );
  const tails = thinned(
    jobs.map(({ tail }) => tail),
    MOST_TAILS,
  );
  const bounds = heads.flatMap((head) => {
    const late = jobs.filter((job) => job.head >= head);
    return tails.map((tail) =>
      setBound(
        bench,
        head,
        late.filter((job) => job.tail >= tail),
      ),
    );
  });
  return Math.max(...bounds);
}

/** Some of the values, evenly spread, each once. */
function thinned(values: readonly number[], most: number): number[] {
  const step = Math.max(1, Math.ceil(values.length / most));
  return [...new Set(values.filter((_, at) => at % step === 0))];
}

function jobsOf(bench: Bench, { steps, coatsADay }: Bench['pieces'][number]): Job[] {
  return steps.flatMap((step, at): Job[] => {
    if (step.kind !== 'work') return [];
    const after = steps.slice(at + 1);
    const tail = after.reduce((sum, it) => sum + minutesOf(it), 0);
    const head = goneThrough(bench, steps.slice(0, at + 1), coatsADay, bench.now) - step.minutes;
    return [{ place: step.place, minutes: step.minutes, move: moveOf(step), head, after, tail, coatsADay }];
  });
}

/** The soonest end of all, whichever of the set is the last; the set comes with the shortest tail first. */
function setBound(bench: Bench, head: number, set: readonly Job[]): number {
  if (set.length === 0) return bench.now;
  const done = workedOff(bench, head, set);
  let soonest = Number.POSITIVE_INFINITY;
  for (const { move, tail, after, coatsADay } of set)
    if (done - move + tail < soonest)
      soonest = Math.min(soonest, goneThrough(bench, after, coatsADay, done - move));
  return soonest;
}

/** When the last move of a set is made that nothing is done of before a minute; each day a move may be made after its place has closed. */
function workedOff(bench: Bench, head: number, set: readonly Job[]): number {
  const longestMove = (place: Place) =>
    Math.max(0, ...set.filter((job) => job.place === place).map(({ move }) => move));
  const places = (['bench', 'booth'] as const).filter((place) => set.some((job) => job.place === place));
  const moves = { bench: longestMove('bench'), booth: longestMove('booth') };
  let left = set.reduce((sum, { minutes, move }) => sum + minutes + move, 0);
  for (let day = Math.floor(head / DAY); ; day++) {
    const open = places.flatMap((place) => {
      const stretch = dayOf(bench, day, place);
      return stretch ? [{ from: stretch.from, to: stretch.to + moves[place] }] : [];
    });
    const from = Math.max(head, Math.min(...open.map((it) => it.from)));
    const to = Math.max(...open.map((it) => it.to));
    if (open.length > 0 && from + left <= to) return from + left;
    if (open.length > 0) left -= Math.max(0, to - from);
  }
}

/** Working minutes from now to a minute: while the shop is closed nothing can end, so distances between ends are measured in these. */
export function workingMinutes(bench: Bench, until: number): number {
  let sum = 0;
  for (let day = Math.floor(bench.now / DAY); day * DAY < until; day++) {
    const stretch = dayOf(bench, day, 'bench');
    if (stretch) sum += Math.max(0, Math.min(stretch.to, until) - Math.max(stretch.from, bench.now));
  }
  return sum;
}
