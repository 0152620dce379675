import { DAY_MINUTES } from '../units';
import { compile, firstOpen } from './compile';
import type { Bound, Dominant, PlannedPiece, PlannedStep, PromiseState } from './plan';
import { type Chain, chainEnd } from './search/problem';
import { slippedEnds } from './search/slip';
import { timeOrder } from './search/time-order';
import type { Timed } from './spell-out';
import type { Piece, Step } from './step';

/** When every piece is ready, what may be promised, and what most of the time goes on. */
export function summaries(timed: Timed, steps: readonly PlannedStep[]): PlannedPiece[] {
  const soonest = soonestEnds(timed);
  return timed.bench.pieces.map((piece, index) => {
    const likely = chainEnd(timed.problem, timed.problem.chains[index] as Chain, timed.starts);
    const reserveMinutes = reserve(piece);
    const promise = isFinished(piece)
      ? likely
      : timed.openingTimes('bench').fit(Math.max(likely + reserveMinutes, timed.bench.now), 1);
    return {
      pieceId: piece.id,
      earliest: Math.min(soonest[index] as number, likely),
      likely,
      reserveMinutes,
      promise,
      dominant: dominantOf(timed, index, steps),
      promiseState: promiseState(piece, timed.bench.now, likely, promise),
      isHeld: piece.isHeld === true && !isFinished(piece),
      missedWindows: [],
    };
  });
}

/** Ends of all pieces when every wait is as short as it may be and the work is done in the same order. */
function soonestEnds({ bench, openingTimes, order }: Timed): number[] {
  const problem = compile(bench, openingTimes, 'earliest');
  const starts = new Float64Array(problem.operations.length);
  // A shorter wait can push a coat over closing time and out of its window; then the likely end is the soonest known.
  const isKept = timeOrder(problem, order, starts, new Float64Array(starts.length));
  return problem.chains.map((chain) =>
    isKept ? chainEnd(problem, chain, starts) : Number.POSITIVE_INFINITY,
  );
}

/**
 * Minutes held back so that a promise is kept although waits run late: the root of the sum of squares of what each may run over.
 *
 * Source: R. C. Newbold, Project Management in the Fast Lane (1998), from memory; waits are taken to run late independently.
 * Left out: that one cold week makes them all late at once.
 */
function reserve({ steps }: Piece): number {
  const squares = steps.slice(firstOpen(steps)).map((step) => overrunMinutes(step) ** 2);
  return Math.ceil(Math.sqrt(squares.reduce((sum, square) => sum + square, 0)));
}

function overrunMinutes(step: Step): number {
  if (step.kind === 'wait') return step.minutes.late - step.minutes.likely;
  return step.kind === 'gate' ? step.againAfterMinutes : 0;
}

function dominantOf(timed: Timed, piece: number, steps: readonly PlannedStep[]): Dominant | undefined {
  const { bench, problem, order } = timed;
  const asked = bench.pieces[piece] as Piece;
  const left = steps
    .filter(({ pieceId, isDone }) => pieceId === asked.id && !isDone)
    .map(({ stepId, start, end }) => ({ stepId, minutes: end - Math.max(start, bench.now) }));
  const longest = left.reduce((best, it) => (it.minutes > best.minutes ? it : best), {
    stepId: '',
    minutes: 0,
  });
  if (longest.stepId === '') return undefined;
  const place = asked.steps.findIndex(({ id }) => id === longest.stepId);
  const ends = slippedEnds(problem, order, { piece, step: place, minutes: DAY_MINUTES });
  const end = chainEnd(problem, problem.chains[piece] as Chain, timed.starts);
  const costOfADay = ends && (ends[piece] as number) - end;
  return { ...longest, costOfADay, absorbedBy: absorbing(longest.stepId, steps) };
}

/** What takes up a day more: the first thing after a step that work on its piece waits for besides the step before it. */
function absorbing(stepId: string, steps: readonly PlannedStep[]): Bound | undefined {
  const at = steps.findIndex((step) => step.stepId === stepId);
  const later = steps.slice(at + 1).filter(({ pieceId }) => pieceId === steps[at]?.pieceId);
  return later.find(({ kind, bound }) => (kind === 'work' || kind === 'gate') && bound.by !== 'step')?.bound;
}

const isFinished = ({ steps }: Piece): boolean => firstOpen(steps) === steps.length;

/** A padded film is soft until its rest is over at the latest. */
const isPadded = ({ steps }: Piece): boolean =>
  steps.some((step) => step.kind === 'work' && step.task === 'pad');

function promiseState(piece: Piece, now: number, likely: number, promise: number): PromiseState {
  const { promised } = piece;
  if (promised === undefined || isFinished(piece)) return 'none';
  if (piece.isHeld) return 'held';
  if (promised < now) return 'past';
  if (promised < likely) return 'missed';
  if (promised >= promise) return 'kept';
  return isPadded(piece) ? 'soft' : 'tight';
}
