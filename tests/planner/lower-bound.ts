import type { Bench, Step } from '../../src/planner/step';

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
function dayOf({ working }: Bench, day: number, place: 'bench' | 'booth') {
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
  readonly minutes: number;
  readonly move: number;
  readonly after: readonly Step[];
  readonly tail: number;
  readonly coatsADay: number;
}

/** All work at those places with at least so much time to come after it is done first; one of it is the last, and goes on from there. */
function loadBound(bench: Bench, places: readonly ('bench' | 'booth')[]): number {
  const jobs = bench.pieces.flatMap(({ steps, coatsADay }) =>
    steps.flatMap((step, at): Job[] => {
      if (step.kind !== 'work' || !places.includes(step.place)) return [];
      const after = steps.slice(at + 1);
      const tail = after.reduce((sum, it) => sum + minutesOf(it), 0);
      return [{ minutes: step.minutes, move: moveOf(step), after, tail, coatsADay }];
    }),
  );
  jobs.sort((a, b) => b.tail - a.tail);
  const longestMove = Math.max(...jobs.map(({ move }) => move));
  const place = places.includes('bench') ? 'bench' : 'booth';
  const load = (until: number) =>
    jobs.slice(0, until).reduce((sum, { minutes, move }) => sum + minutes + move, 0);
  // Every tenth set of jobs is enough for a bound.
  const sets = jobs.map((_, at) => at + 1).filter((size) => size % 10 === 0 || size === jobs.length);
  const bounds = sets.map((size) => {
    const from = workedOff(bench, place, load(size), longestMove) - longestMove;
    return Math.min(
      ...jobs.slice(0, size).map(({ after, coatsADay }) => goneThrough(bench, after, coatsADay, from)),
    );
  });
  return Math.max(...bounds);
}

/** When so many minutes of work have been done; every day one move may be made after closing time. */
function workedOff(bench: Bench, place: 'bench' | 'booth', load: number, longestMove: number): number {
  let left = load;
  for (let day = Math.floor(bench.now / DAY); ; day++) {
    const stretch = dayOf(bench, day, place);
    if (!stretch) continue;
    const from = Math.max(bench.now, stretch.from);
    const to = stretch.to + longestMove;
    if (from + left <= to) return from + left;
    left -= Math.max(0, to - from);
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
