import fc from 'fast-check';
import { expect, test } from 'vitest';
import { compile } from '../../../src/planner/compile';
import { fillIn } from '../../../src/planner/search/fill-in';
import { type Cost, costOf, isBetter, type Problem } from '../../../src/planner/search/problem';
import { searchExact } from '../../../src/planner/search/search-exact';
import { timeOrder } from '../../../src/planner/search/time-order';
import { createOpeningTimes } from '../../../src/planner/windows/opening-times';
import { type SlotBench, slotBench, toBench } from '../best/slots';

const problemOf = (bench: SlotBench): Problem => {
  const asked = toBench(bench);
  return compile(asked, createOpeningTimes(asked.working, asked.now), 'likely');
};

/** Every order in which the operations of each piece keep theirs. */
function orders({ chains }: Problem): number[][] {
  const grown = (order: readonly number[], next: readonly number[]): number[][] => {
    const begun = chains.flatMap(({ operations }, piece) => {
      const id = operations[next[piece] as number];
      return id === undefined ? [] : grown([...order, id], next.with(piece, (next[piece] as number) + 1));
    });
    return begun.length > 0 ? begun : [[...order]];
  };
  return grown(
    [],
    chains.map(() => 0),
  );
}

function timed(problem: Problem, order: readonly number[]): Cost | undefined {
  const starts = new Float64Array(order.length);
  return timeOrder(problem, order, starts, new Float64Array(order.length))
    ? costOf(problem, starts)
    : undefined;
}

const ENDLESS: Cost = [Number.POSITIVE_INFINITY, 0, 0, 0];

// The search is told of no plan to begin with, so that nothing but its own reasoning finds the best.
test('the exact search finds the best of all orders, pieces that are the same among them', () => {
  let found = 0;
  fc.assert(
    fc.property(slotBench, fc.boolean(), (slots, hasTwin) => {
      const [first] = slots.pieces;
      const pieces = hasTwin && first ? [first, ...slots.pieces.slice(0, 2)] : slots.pieces;
      const problem = problemOf({ ...slots, pieces });
      const costs = orders(problem)
        .map((order) => timed(problem, order))
        .filter((cost) => cost !== undefined);
      const starts = new Float64Array(problem.operations.length);
      const { best, isProved } = searchExact(problem, { order: [], starts, cost: ENDLESS });
      const least = costs.reduce((one, other) => (isBetter(other, one) ? other : one), ENDLESS);
      expect(best.cost).toEqual(least);
      expect(isProved).toBe(true);
      if (costs.length === 0) return;
      found++;
      expect(timed(problem, best.order)).toEqual(least);
      expect(costOf(problem, best.starts)).toEqual(least);
    }),
    { numRuns: 120 },
  );
  expect(found).toBeGreaterThan(40);
});

test('filling in keeps every rule, and names a piece only where its windows cannot be kept alone', () => {
  let filled = 0;
  fc.assert(
    fc.property(slotBench, fc.array(fc.nat(100), { minLength: 3, maxLength: 3 }), (slots, wishes) => {
      const problem = problemOf(slots);
      const outcome = fillIn(problem, (piece) => wishes[piece] as number);
      if (!outcome.ok) {
        const alone = problemOf({ ...slots, pieces: slots.pieces.slice(outcome.piece, outcome.piece + 1) });
        expect(fillIn(alone, () => 0).ok).toBe(false);
        return;
      }
      filled++;
      const { starts } = outcome;
      const order = Array.from(starts.keys()).sort((a, b) => (starts[a] as number) - (starts[b] as number));
      const soonest = new Float64Array(starts.length);
      expect(timeOrder(problem, order, soonest, new Float64Array(starts.length))).toBe(true);
      expect(soonest.every((start, id) => start <= (starts[id] as number))).toBe(true);
    }),
    { numRuns: 1000 },
  );
  expect(filled).toBeGreaterThan(300);
});
