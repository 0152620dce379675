import { type Cost, costOf, isBetter, type Operation, type Problem } from './problem';
import { endBefore, readyAt, timeOrder } from './time-order';

/** An order of all operations, when they start in it, and what that costs. */
export interface Ordered {
  readonly order: readonly number[];
  readonly starts: Float64Array;
  readonly cost: Cost;
}

/** How many beginnings of an order are looked at before the search for the best one is given up. */
const MOST_NODES = 20_000;

/**
 * The best order there is, by branch and bound, and whether the search was finished and so proves it.
 * @param known an order found by other means; it is given back if none is better
 */
export function searchExact(problem: Problem, known: Ordered): { best: Ordered; isProved: boolean } {
  const size = problem.operations.length;
  const search: Search = {
    problem,
    starts: new Float64Array(size),
    floors: new Float64Array(size),
    next: problem.chains.map(() => 0),
    twins: earlierTwins(problem),
    order: [],
    best: known,
    nodes: 0,
  };
  branch(search);
  return { best: search.best, isProved: search.nodes <= MOST_NODES };
}

interface Search {
  readonly problem: Problem;
  readonly starts: Float64Array;
  readonly floors: Float64Array;
  readonly next: number[];
  readonly twins: readonly (number | undefined)[];
  readonly order: number[];
  best: Ordered;
  nodes: number;
}

function branch(search: Search): void {
  const { problem, order, next, starts, floors, twins } = search;
  for (const [piece, chain] of problem.chains.entries()) {
    const id = chain.operations[next[piece] as number];
    if (id === undefined) continue;
    const twin = twins[piece];
    if (next[piece] === 0 && twin !== undefined && next[twin] === 0) continue; // only the names would differ
    if (++search.nodes > MOST_NODES) return;
    order.push(id);
    next[piece] = (next[piece] as number) + 1;
    if (timeOrder(problem, order, starts, floors) && isBetter(leastCost(search), search.best.cost))
      if (order.length < problem.operations.length) branch(search);
      else search.best = { order: [...order], starts: starts.slice(), cost: costOf(problem, starts) };
    next[piece] = (next[piece] as number) - 1;
    order.pop();
  }
}

/** No plan that begins with this order costs less: every piece goes on as if it had the person to itself. */
function leastCost({ problem, order, next, starts }: Search): Cost {
  const least = Float64Array.from(starts);
  const { minutes, moveMinutes } = problem.operations[order.at(-1) as number] as Operation;
  const free = (starts[order.at(-1) as number] as number) + minutes + moveMinutes;
  for (const [piece, chain] of problem.chains.entries())
    for (const id of chain.operations.slice(next[piece])) {
      const operation = problem.operations[id] as Operation;
      const ready = readyAt(problem, operation, endBefore(problem, operation, least), least);
      least[id] = operation.openings.fit(Math.max(ready, free), operation.minutes);
    }
  const [late, lastEnd, ends, sum] = costOf(problem, least);
  return [late, Math.max(lastEnd, free + restMinutes(problem, next)), ends, sum];
}

/** From when the person is free to the last end of all it takes at least so long; the very last move does not count. */
function restMinutes(problem: Problem, next: readonly number[]): number {
  let work = 0;
  let longestMove = 0;
  let shortestWait = Number.POSITIVE_INFINITY;
  for (const [piece, chain] of problem.chains.entries())
    for (const id of chain.operations.slice(next[piece])) {
      const { minutes, moveMinutes } = problem.operations[id] as Operation;
      work += minutes + moveMinutes;
      longestMove = Math.max(longestMove, moveMinutes);
      shortestWait = Math.min(shortestWait, chain.finalLagMinutes);
    }
  return work === 0 ? Number.NEGATIVE_INFINITY : work - longestMove + shortestWait;
}

/** For each piece the last earlier one that is the same but for its name. */
function earlierTwins(problem: Problem): (number | undefined)[] {
  const seen = new Map<string, number>();
  const openings = [...new Set(problem.operations.map((operation) => operation.openings))];
  return problem.chains.map((chain, piece) => {
    const operations = chain.operations.map((id) => {
      const it = problem.operations[id] as Operation;
      const dayAfter = it.dayAfter < 0 ? -1 : id - it.dayAfter;
      const lags = [
        it.lagMinutes,
        it.latestMinutes,
        it.notBefore,
        it.waitUntil,
        dayAfter,
        openings.indexOf(it.openings),
      ];
      return [it.minutes, it.moveMinutes, ...lags];
    });
    const signature = [
      chain.anchor,
      chain.finalLagMinutes,
      chain.finalUntil,
      chain.promised,
      ...operations,
    ].join();
    const twin = seen.get(signature);
    seen.set(signature, piece);
    return twin;
  });
}
