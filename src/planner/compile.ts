import { HOUR_MINUTES } from '../units';
import { nextDayStart } from './local-day';
import type { Chain, Operation, Problem } from './search/problem';
import type { Band, Bench, GateStep, Piece, Step, WorkStep } from './step';
import type { OpeningTimes } from './windows/opening-times';
import type { Weather } from './windows/working-times';

/** Which of a wait's three durations to plan with. */
export type Pick = keyof Band;

/** A step the person does. */
export type Handwork = WorkStep | GateStep;

/** Whether a step needs the person. */
export const isHandwork = (step: Step): step is Handwork => step.kind === 'work' || step.kind === 'gate';

/** Index of the first step that is still to do; what stands before a step that is done counts as done. */
export const firstOpen = (steps: readonly Step[]): number => steps.findLastIndex(({ done }) => done) + 1;

/** When what went before the open steps of a piece ended. */
export function anchorOf({ steps, notBefore = 0 }: Piece, now: number): number {
  return steps.findLast(({ done }) => done)?.done?.to ?? Math.max(now, notBefore);
}

/** Puts a bench into numbers. */
export function compile(bench: Bench, openingTimes: OpeningTimes, pick: Pick): Problem {
  const operations: Operation[] = [];
  const chains = bench.pieces.map((piece, index) => {
    const made = compilePiece(piece, index, { bench, openingTimes, pick, firstId: operations.length });
    operations.push(...made.operations);
    return made.chain;
  });
  return {
    now: bench.now,
    personFree: personFree(bench),
    operations,
    chains,
    nextDayStart: rememberDays((minute) => nextDayStart(minute, bench.working.zone)),
  };
}

interface Around {
  readonly bench: Bench;
  readonly openingTimes: OpeningTimes;
  readonly pick: Pick;
  readonly firstId: number;
}

function compilePiece(
  piece: Piece,
  index: number,
  around: Around,
): { chain: Chain; operations: Operation[] } {
  const { bench, openingTimes, pick, firstId } = around;
  const operations: Operation[] = [];
  const coats = coatsDone(piece);
  let gap = NO_GAP;
  let isScuffed = false;
  for (let at = firstOpen(piece.steps); at < piece.steps.length; at++) {
    const step = piece.steps[at] as Step;
    if (!isHandwork(step)) {
      gap = widen(gap, step, pick);
      continue;
    }
    const id = firstId + operations.length;
    const rule = coatRule(piece, step, id, coats, bench);
    operations.push({
      piece: index,
      step: at,
      previous: operations.length === 0 ? -1 : id - 1,
      isInBooth: placeOf(step) === 'booth',
      minutes: step.minutes,
      moveMinutes: moveMinutes(step),
      lagMinutes: gap.lagMinutes,
      latestMinutes:
        isScuffed && isCoating(step) ? Math.min(gap.latestMinutes, SCUFF_HOLDS_MINUTES) : gap.latestMinutes,
      waitUntil: gap.waitUntil,
      notBefore: Math.max(notBefore(step), rule.notBefore),
      dayAfter: rule.dayAfter,
      openings: openingTimes(placeOf(step), placeOf(step) === 'booth' ? gap.against : []),
    });
    gap = NO_GAP;
    isScuffed = step.kind === 'work' && step.task === 'scuff' && piece.mayScuffAhead !== true;
  }
  const ids = operations.map((_, place) => firstId + place);
  const anchor = anchorOf(piece, bench.now);
  const promised = piece.promised ?? Number.POSITIVE_INFINITY;
  return {
    chain: { operations: ids, anchor, finalLagMinutes: gap.lagMinutes, finalUntil: gap.waitUntil, promised },
    operations,
  };
}

/** What lies between two operations of a piece: waits, windows and holds in one. */
interface Gap {
  readonly lagMinutes: number;
  readonly latestMinutes: number;
  readonly against: readonly Weather[];
  readonly waitUntil: number;
}
/** A scuff lies this long before its coat at most, minutes: no dust and no handling in between (common practice, no source). */
const SCUFF_HOLDS_MINUTES = 12 * HOUR_MINUTES;

const isCoating = (step: Step): boolean =>
  step.kind === 'work' && (step.isCoat === true || step.task === 'flash-coat');

const NO_GAP: Gap = { lagMinutes: 0, waitUntil: 0, latestMinutes: Number.POSITIVE_INFINITY, against: [] };

function widen(gap: Gap, step: Exclude<Step, Handwork>, pick: Pick): Gap {
  switch (step.kind) {
    case 'wait':
      return step.ends
        ? { ...gap, waitUntil: Math.max(gap.waitUntil, step.ends[pick]) }
        : { ...gap, lagMinutes: gap.lagMinutes + step.minutes[pick] };
    case 'window':
      return {
        ...gap,
        lagMinutes: gap.lagMinutes + step.fromMinutes,
        latestMinutes: Math.min(gap.latestMinutes, gap.lagMinutes + step.untilMinutes),
      };
    case 'hold':
      return { ...gap, against: [...gap.against, step.against] };
  }
}

/** A coat that is done, by its start, or one that is to come, by its operation. */
type CoatOnDay = { readonly start: number } | { readonly id: number };

function coatsDone({ steps }: Piece): CoatOnDay[] {
  const done = steps.filter((step) => step.kind === 'work' && step.isCoat && step.done);
  return done.map((step) => ({ start: step.done?.from ?? 0 })).sort((a, b) => a.start - b.start);
}

function coatRule(
  { coatsADay }: Piece,
  step: Handwork,
  id: number,
  coats: CoatOnDay[],
  { working }: Bench,
): { notBefore: number; dayAfter: number } {
  if (step.kind !== 'work' || !step.isCoat) return { notBefore: 0, dayAfter: -1 };
  const earlier = coats.at(-coatsADay); // none yet when there are fewer
  coats.push({ id });
  if (earlier === undefined) return { notBefore: 0, dayAfter: -1 };
  if ('id' in earlier) return { notBefore: 0, dayAfter: earlier.id };
  return { notBefore: nextDayStart(earlier.start, working.zone), dayAfter: -1 };
}

const placeOf = (step: Handwork): 'bench' | 'booth' => (step.kind === 'work' ? step.place : 'bench');

const moveMinutes = (step: Step): number => (step.kind === 'work' ? (step.moveMinutes ?? 0) : 0);

/** When a step may begin for reasons of its own: a set date, or the next try after a check that did not pass; before all time without one. */
export const notBefore = (step: Handwork): number =>
  step.kind === 'work' ? (step.notBefore ?? 0) : Math.max(...step.failedAt) + step.againAfterMinutes;

function personFree({ now, pieces }: Bench): number {
  const ends = pieces.flatMap(({ steps }) =>
    steps.map((step) => (step.done && isHandwork(step) ? step.done.to + moveMinutes(step) : now)),
  );
  return Math.max(now, ...ends);
}

/** Asks only once for every quarter of an hour: the zone may be slow to tell. */
function rememberDays(nextDay: (minute: number) => number): (minute: number) => number {
  const known = new Map<number, number>();
  return (minute) => {
    const quarter = Math.floor(minute / 15); // every zone's days begin on a quarter of an hour
    const found = known.get(quarter);
    if (found !== undefined) return found;
    const day = nextDay(quarter * 15);
    known.set(quarter, day);
    return day;
  };
}
