import { fail, type Result, succeed } from '../result';
import { fillIn, type Urgency } from './fill-in';
import { improve } from './improve';
import { chainEnd, costOf, isBetter, type Operation, type Problem } from './problem';
import { type Ordered, searchExact } from './search-exact';
import { endBefore, readyAt, timeOrder } from './time-order';

/** Up to so many operations the best order of all is looked for. */
const MOST_EXACT = 14;

/** How many operations may be filled in, in all, while the urgency of pieces is learned. */
const MOST_FILLED = 9_000;

/** The order found, and whether it is proved that there is no better. */
export interface Found extends Ordered {
  readonly isProved: boolean;
}

/** A good order for the operations, the best one if they are few; or the piece whose windows cannot be kept. */
export function search(problem: Problem): Result<Found, { readonly piece: number }> {
  const rest = aloneRest(problem);
  let best: Ordered | undefined;
  for (const urgency of rules(problem, rest)) {
    const tried = attempt(problem, urgency);
    if (!tried.ok) return tried;
    if (!best || isBetter(tried.value.cost, best.cost)) best = tried.value;
  }
  const improved = improve(problem, learned(problem, rest, best as Ordered));
  if (problem.operations.length > MOST_EXACT) return succeed({ ...improved, isProved: false });
  const exact = searchExact(problem, improved);
  return succeed({ ...exact.best, isProved: exact.isProved });
}

function rules({ chains }: Problem, rest: Float64Array): Urgency[] {
  const restOf = (operation: number) => rest[operation] as number;
  return [
    (_, operation) => restOf(operation),
    (_, operation, ready) => ready + restOf(operation),
    (_, operation, ready) => restOf(operation) / 10_000 - ready,
    (piece, operation) => restOf(operation) - Math.min(chains[piece]?.promised ?? 0, Number.MAX_SAFE_INTEGER),
  ];
}

function attempt(problem: Problem, urgency: Urgency): Result<Ordered, { readonly piece: number }> {
  const filled = fillIn(problem, urgency);
  if (!filled.ok) return fail({ piece: filled.piece });
  const { order } = filled;
  const starts = new Float64Array(order.length);
  const isKept = timeOrder(problem, order, starts, new Float64Array(order.length));
  if (!isKept) starts.set(filled.starts);
  return succeed({ order, starts, cost: costOf(problem, starts) });
}

/**
 * Fills in again and again, each time with more urgency for the pieces that came out worst.
 * Source: D. E. Joslin and D. P. Clements, "Squeaky Wheel" Optimization, J. Artif. Intell. Res. 10 (1999) 353.
 */
function learned(problem: Problem, rest: Float64Array, known: Ordered): Ordered {
  const extra = problem.chains.map(() => 0);
  let best = known;
  for (
    let left = MOST_FILLED;
    left >= problem.operations.length && left > 0;
    left -= Math.max(problem.operations.length, 400)
  ) {
    const tried = attempt(
      problem,
      (piece, id, ready) => ready + (rest[id] as number) + (extra[piece] as number),
    );
    if (!tried.ok) break;
    if (isBetter(tried.value.cost, best.cost)) best = tried.value;
    const lastEnd = tried.value.cost[1];
    for (const [piece, chain] of problem.chains.entries()) {
      const spare = lastEnd - chainEnd(problem, chain, tried.value.starts);
      extra[piece] = (extra[piece] as number) + (spare < 240 ? 240 - spare : 0);
    }
  }
  return best;
}

/** For every operation the minutes from its start to the end of its piece, if the piece had the person to itself. */
function aloneRest(problem: Problem): Float64Array {
  const starts = new Float64Array(problem.operations.length);
  const rest = new Float64Array(problem.operations.length);
  for (const chain of problem.chains) {
    for (const id of chain.operations) {
      const operation = problem.operations[id] as Operation;
      const ready = readyAt(problem, operation, endBefore(problem, operation, starts), starts);
      starts[id] = operation.openings.fit(Math.max(ready, problem.personFree), operation.minutes);
    }
    const end = chainEnd(problem, chain, starts);
    for (const id of chain.operations) rest[id] = end - (starts[id] as number);
  }
  return rest;
}
