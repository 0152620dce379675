import { costOf, isBetter, type Operation, type Problem } from './problem';
import type { Ordered } from './search-exact';
import { timeOrder } from './time-order';

/** How many operations may be timed in all while neighbours are tried. */
const MOST_TIMINGS = 30_000;

/** The order after neighbours of different pieces have changed places wherever that makes the plan better. */
export function improve(problem: Problem, known: Ordered): Ordered {
  const size = problem.operations.length;
  const starts = new Float64Array(size);
  const floors = new Float64Array(size);
  const pieceAt = (order: readonly number[], place: number) =>
    (problem.operations[order[place] as number] as Operation).piece;
  let best = retimed(problem, known);
  let left = MOST_TIMINGS;
  for (let hasImproved = true; hasImproved && left > size; ) {
    hasImproved = false;
    for (let place = 1; place < size && left > size; place++) {
      if (pieceAt(best.order, place - 1) === pieceAt(best.order, place)) continue;
      left -= size;
      const order = swapped(best.order, place);
      if (!timeOrder(problem, order, starts, floors)) continue;
      const cost = costOf(problem, starts);
      if (!isBetter(cost, best.cost)) continue;
      best = { order, starts: starts.slice(), cost };
      hasImproved = true;
    }
  }
  return best;
}

function swapped(order: readonly number[], place: number): number[] {
  const other = [...order];
  other[place] = order[place - 1] as number;
  other[place - 1] = order[place] as number;
  return other;
}

/** The same order with every operation as early as it can be. */
function retimed(problem: Problem, known: Ordered): Ordered {
  const starts = new Float64Array(problem.operations.length);
  const isKept = timeOrder(problem, known.order, starts, new Float64Array(starts.length));
  return isKept ? { order: known.order, starts, cost: costOf(problem, starts) } : known;
}
