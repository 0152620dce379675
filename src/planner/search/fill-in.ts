import { type Busy, createBusy } from './busy';
import type { Chain, Operation, Problem } from './problem';
import { endBefore, readyAt } from './time-order';

/** Rounds of pushing the first coats of a run later until all its windows are kept. */
const MOST_ROUNDS = 200;

/** How much a piece wants its next operation placed; the piece that wants it most is served first. */
export type Urgency = (piece: number, operation: number, readyMinute: number) => number;

/** A window that is open already comes before everything else, the one that closes first before the others. */
const AHEAD_OF_ALL = Number.MAX_SAFE_INTEGER;

/** When all operations begin, or the piece whose windows cannot be kept. */
export type Filled =
  | { readonly ok: true; readonly starts: Float64Array }
  | { readonly ok: false; readonly piece: number };

/**
 * A plan made by giving one piece after another the first free time for its next operation, again and again.
 * Coats joined by windows are placed together, so that closing time never falls between them.
 */
export function fillIn(problem: Problem, urgency: Urgency): Filled {
  const starts = new Float64Array(problem.operations.length);
  const scratch = { busy: createBusy(), starts, floors: new Float64Array(starts.length) };
  const next = problem.chains.map(() => 0);
  const idOf = (piece: number) => problem.chains[piece]?.operations[next[piece] ?? 0];
  const wants = (piece: number) => wanted(problem, urgency, starts, idOf(piece));
  const wish = Float64Array.from(problem.chains.keys(), wants);
  for (let piece = largest(wish); piece >= 0; piece = largest(wish)) {
    const run = runFrom(problem, problem.chains[piece] as Chain, next[piece] as number);
    if (!placeRun(problem, run, scratch)) return { ok: false, piece };
    next[piece] = (next[piece] as number) + run.length;
    wish[piece] = wants(piece); // what the others want does not change
  }
  return { ok: true, starts };
}

/** How much an operation is wanted; minus infinity when there is none left. */
function wanted(problem: Problem, urgency: Urgency, starts: Float64Array, id: number | undefined): number {
  if (id === undefined) return Number.NEGATIVE_INFINITY;
  const operation = problem.operations[id] as Operation;
  const before = endBefore(problem, operation, starts);
  // Only the first of a piece can be: all others that a window joins are placed with the one before.
  if (Number.isFinite(operation.latestMinutes)) return AHEAD_OF_ALL - before - operation.latestMinutes;
  return urgency(operation.piece, id, readyAt(problem, operation, before, starts));
}

/** The index of the largest value, the first of equals; -1 when all are minus infinity. */
function largest(values: Float64Array): number {
  let best = -1;
  let most = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < values.length; i++)
    if ((values[i] as number) > most) {
      best = i;
      most = values[i] as number;
    }
  return best;
}

/** The operations from that one on that windows join together. */
function runFrom(problem: Problem, { operations }: Chain, from: number): readonly number[] {
  let to = from + 1;
  while (Number.isFinite(problem.operations[operations[to] ?? -1]?.latestMinutes ?? Number.NaN)) to++;
  return operations.slice(from, to);
}

interface Scratch {
  readonly busy: Busy;
  readonly starts: Float64Array;
  readonly floors: Float64Array;
}

function placeRun(problem: Problem, run: readonly number[], scratch: Scratch): boolean {
  const { busy, starts } = scratch;
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const outcome = tryRun(problem, run, scratch);
    if (outcome === 'impossible') return false;
    if (outcome === 'again') continue;
    for (const id of run) {
      const { minutes, moveMinutes } = problem.operations[id] as Operation;
      const start = starts[id] as number;
      busy.take(start, start + minutes + moveMinutes);
    }
    return true;
  }
  return false;
}

function tryRun(
  problem: Problem,
  run: readonly number[],
  { busy, starts, floors }: Scratch,
): 'kept' | 'again' | 'impossible' {
  let free = problem.personFree;
  for (const id of run) {
    const operation = problem.operations[id] as Operation;
    const { minutes, moveMinutes, latestMinutes, previous } = operation;
    const before = endBefore(problem, operation, starts);
    const from = Math.max(readyAt(problem, operation, before, starts), free, floors[id] as number);
    const start = busy.fit(operation.openings, from, minutes, moveMinutes);
    if (start === Number.POSITIVE_INFINITY) return 'impossible';
    starts[id] = start;
    free = start + minutes + moveMinutes;
    const over = start - before - latestMinutes;
    if (over <= 0) continue;
    if (previous < 0) return 'impossible';
    floors[previous] = (starts[previous] as number) + over;
    return 'again';
  }
  return 'kept';
}
