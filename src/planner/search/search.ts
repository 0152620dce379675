import { fail, type Result, succeed } from '../../result';
import { DAY_MINUTES } from '../../units';
import { fillIn, type Served, type Urgency } from './fill-in';
import { improve } from './improve';
import { chainEnd, costOf, isBetter, type Operation, type Problem } from './problem';
import { type Ordered, searchExact } from './search-exact';
import { endBefore, readyAt } from './time-order';

/** Up to so many operations the best order of all is looked for. */
const MOST_EXACT = 14;

/** How many operations may be filled in, in all, while the urgency of the pieces is varied. */
const MOST_FILLED = 25_000;

/** The order found, and whether it is proved that there is no better. */
export interface Found extends Ordered {
  readonly isProved: boolean;
}

/** A good order for the operations, the best one if they are few; or the piece whose windows cannot be kept. */
export function search(problem: Problem): Result<Found, { readonly piece: number }> {
  const rest = aloneRest(problem);
  let best: Ordered | undefined;
  let bestRule: Rule | undefined;
  for (const rule of rules(problem, rest)) {
    const tried = attempt(problem, rule);
    if (!tried.ok) {
      if (rule.served === 'soonest') continue; // a window missed in haste is kept by the others
      return tried;
    }
    if (best && !isBetter(tried.value.cost, best.cost)) continue;
    best = tried.value;
    bestRule = rule;
  }
  if (problem.operations.length <= MOST_EXACT) {
    const exact = searchExact(problem, best as Ordered);
    return succeed({ ...exact.best, isProved: exact.isProved });
  }
  const varied = vary(problem, bestRule as Rule, best as Ordered);
  return succeed({ ...improve(problem, varied), isProved: false });
}

interface Rule {
  readonly urgency: Urgency;
  readonly served: Served;
}

/**
 * The longest way to go first; the latest to end first; who is ready first; the order of the list. And of those that can begin soonest
 * the one with the longest way to go, some of the short ones among the long.
 */
function rules(problem: Problem, rest: Float64Array): Rule[] {
  const restOf = (operation: number) => rest[operation] as number;
  const urgencies: Urgency[] = [
    (_, operation) => restOf(operation),
    (_, operation, ready) => ready + restOf(operation),
    (_, operation, ready) => restOf(operation) / 10_000 - ready,
    (piece) => -piece,
  ];
  return [
    ...urgencies.map((urgency) => ({ urgency, served: 'most-urgent' }) as const),
    ...EARLY_SHARES.map(
      (share) => ({ urgency: someEarly(problem, rest, share), served: 'soonest' }) as const,
    ),
  ];
}

/** How many of the pieces with the shortest way to go are begun among the longer ones. */
const EARLY_SHARES = [0, 0.05, 0.1, 0.15, 0.2] as const;
/** They are begun as if only so many of all had a shorter way to go. */
const AMONG = 0.6;

/** With all short ones last, nothing is ready in the middle, while the coats are done and the films rest. */
function someEarly({ chains }: Problem, rest: Float64Array, share: number): Urgency {
  const ways = chains.map(({ operations: [first = -1] }) => rest[first] ?? 0);
  const sorted = ways.toSorted((one, other) => one - other);
  const among = sorted[Math.floor(AMONG * (sorted.length - 1))] as number;
  const early = sorted[Math.round(share * sorted.length) - 1] ?? -1;
  return (piece, operation) => {
    const way = ways[piece] as number;
    return (rest[operation] as number) + (way <= early ? among - way : 0);
  };
}

function attempt(problem: Problem, { urgency, served }: Rule): Result<Ordered, { readonly piece: number }> {
  const filled = fillIn(problem, urgency, served);
  if (!filled.ok) return fail({ piece: filled.piece });
  const { order, starts } = filled;
  return succeed({ order, starts, cost: costOf(problem, starts) });
}

/** Makes one piece at a time more or less urgent, by up to ten days, and keeps what makes the plan better. */
function vary(problem: Problem, { urgency, served }: Rule, known: Ordered): Ordered {
  const extra = problem.chains.map(() => 0);
  const pick = numbers();
  let best = known;
  for (let left = MOST_FILLED; left > 0; left -= problem.operations.length) {
    const piece = pick(extra.length);
    const before = extra[piece] as number;
    extra[piece] = before + (pick(21) - 10) * DAY_MINUTES;
    const varied: Urgency = (index, id, ready) => urgency(index, id, ready) + (extra[index] as number);
    const tried = attempt(problem, { urgency: varied, served });
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
