import { fail, type Result, succeed } from '../../result';
import { DAY_MINUTES } from '../local-day';
import { fillIn, type Urgency } from './fill-in';
import { improve } from './improve';
import { chainEnd, costOf, isBetter, type Operation, type Problem } from './problem';
import { type Ordered, searchExact } from './search-exact';
import { endBefore, readyAt } from './time-order';

/** Up to so many operations the best order of all is looked for. */
const MOST_EXACT = 14;

/** How many operations may be filled in, in all, while the urgency of the pieces is varied. */
const MOST_FILLED = 45_000;

/** The order found, and whether it is proved that there is no better. */
export interface Found extends Ordered {
  readonly isProved: boolean;
}

/** A good order for the operations, the best one if they are few; or the piece whose windows cannot be kept. */
export function search(problem: Problem): Result<Found, { readonly piece: number }> {
  const rest = aloneRest(problem);
  let best: Ordered | undefined;
  let bestRule: Urgency | undefined;
  for (const urgency of rules(rest)) {
    const tried = attempt(problem, urgency);
    if (!tried.ok) return tried;
    if (best && !isBetter(tried.value.cost, best.cost)) continue;
    best = tried.value;
    bestRule = urgency;
  }
  if (problem.operations.length <= MOST_EXACT) {
    const exact = searchExact(problem, best as Ordered);
    return succeed({ ...exact.best, isProved: exact.isProved });
  }
  const varied = vary(problem, bestRule as Urgency, best as Ordered);
  return succeed({ ...improve(problem, varied), isProved: false });
}

/** The longest way to go first; the latest to end first; who is ready first; the order of the list. */
function rules(rest: Float64Array): Urgency[] {
  const restOf = (operation: number) => rest[operation] as number;
  return [
    (_, operation) => restOf(operation),
    (_, operation, ready) => ready + restOf(operation),
    (_, operation, ready) => restOf(operation) / 10_000 - ready,
    (piece) => -piece,
  ];
}

function attempt(problem: Problem, urgency: Urgency): Result<Ordered, { readonly piece: number }> {
  const filled = fillIn(problem, urgency);
  if (!filled.ok) return fail({ piece: filled.piece });
  const { order, starts } = filled;
  return succeed({ order, starts, cost: costOf(problem, starts) });
}

/** Makes one piece at a time more or less urgent, by up to ten days, and keeps what makes the plan better. */
function vary(problem: Problem, urgency: Urgency, known: Ordered): Ordered {
  const extra = problem.chains.map(() => 0);
  const pick = numbers();
  let best = known;
  for (let left = MOST_FILLED; left > 0; left -= problem.operations.length) {
    const piece = pick(extra.length);
    const before = extra[piece] as number;
    extra[piece] = before + (pick(21) - 10) * DAY_MINUTES;
    const tried = attempt(
      problem,
      (index, id, ready) => urgency(index, id, ready) + (extra[index] as number),
    );
    if (tried.ok && isBetter(tried.value.cost, best.cost)) best = tried.value;
    else extra[piece] = before;
  }
  return best;
}

/** The same row of numbers every time, so that the same bench gives the same plan (Numerical Recipes' quick generator). */
function numbers(): (most: number) => number {
  let state = 1;
  return (most) => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return Math.floor((state / 2 ** 32) * most);
  };
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
