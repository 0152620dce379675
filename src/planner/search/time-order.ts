import type { Operation, Problem } from './problem';

/** Rounds of pushing a coat later so that its window does not close before the next one; each skips at least a day or so. */
const MOST_ROUNDS = 200;

/**
 * Gives the earliest start of every operation when the person takes them in that order, into `starts`; false if a window cannot be kept.
 *
 * Every rule says "not before" something that only moves later when another start does, also the window's: the coat before
 * may not begin earlier than its window allows for the coat after. So pushing starts later until all rules hold ends at the one
 * earliest answer, and no idle time needs to be tried (a least fixed point; Cuninghame-Green, Minimax Algebra, 1979, for lags alone).
 * @param floors scratch space, as long as `starts`
 */
export function timeOrder(
  problem: Problem,
  order: readonly number[],
  starts: Float64Array,
  floors: Float64Array,
): boolean {
  floors.fill(0);
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const outcome = pass(problem, order, starts, floors);
    if (outcome !== 'again') return outcome === 'kept';
  }
  return false;
}

function pass(
  problem: Problem,
  order: readonly number[],
  starts: Float64Array,
  floors: Float64Array,
): 'kept' | 'again' | 'impossible' {
  let free = problem.personFree;
  let isKept = true;
  for (const id of order) {
    const operation = problem.operations[id] as Operation;
    const before = endBefore(problem, operation, starts);
    const ready = readyAt(problem, operation, before, starts);
    const start = operation.openings.fit(Math.max(ready, free, floors[id] as number), operation.minutes);
    if (start === Number.POSITIVE_INFINITY) return 'impossible';
    starts[id] = start;
    free = start + operation.minutes + operation.moveMinutes;
    const over = start - before - operation.latestMinutes;
    if (over > 0) {
      if (operation.previous < 0) return 'impossible';
      floors[operation.previous] = (starts[operation.previous] as number) + over;
      isKept = false;
    }
  }
  return isKept ? 'kept' : 'again';
}

/** When what comes before the operation on its piece has ended. */
export function endBefore(
  { operations, chains }: Problem,
  { previous, piece }: Operation,
  starts: ArrayLike<number>,
): number {
  if (previous < 0) return (chains[piece] as Problem['chains'][number]).anchor;
  return (starts[previous] as number) + (operations[previous] as Operation).minutes;
}

/** When the piece itself is ready for the operation, whoever is busy and whatever is closed. */
export function readyAt(
  problem: Problem,
  { lagMinutes, waitUntil, notBefore, dayAfter }: Operation,
  before: number,
  starts: ArrayLike<number>,
): number {
  const ready = Math.max(before + lagMinutes, waitUntil, notBefore, problem.now);
  return dayAfter < 0 ? ready : Math.max(ready, problem.nextDayStart(starts[dayAfter] as number));
}
