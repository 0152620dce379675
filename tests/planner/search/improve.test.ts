import { expect, test } from 'vitest';
import { compile } from '../../../src/planner/compile';
import { improve } from '../../../src/planner/search/improve';
import { costOf, isBetter, type Problem } from '../../../src/planner/search/problem';
import { search } from '../../../src/planner/search/search';
import { timeOrder } from '../../../src/planner/search/time-order';
import type { Bench } from '../../../src/planner/step';
import { createOpeningTimes } from '../../../src/planner/windows/opening-times';
import { bench, coat, piece, utc, wait, window, working } from '../a-bench';
import { largeBench } from '../best/large-bench';

const problemOf = (asked: Bench): Problem =>
  compile(asked, createOpeningTimes(asked.working, asked.now), 'likely');

function inOrder(problem: Problem, order: readonly number[]) {
  const starts = new Float64Array(order.length);
  expect(timeOrder(problem, order, starts, new Float64Array(order.length))).toBe(true);
  return { order, starts, cost: costOf(problem, starts) };
}

// Ten minutes each, and the first piece rests for a hundred after: begun second it is ready at 120, begun first at 110.
test('pieces change places where that makes the last end sooner', () => {
  const now = utc('2026-03-02 09:00');
  const problem = problemOf({
    now,
    working: working(9, 17),
    pieces: [piece('slow', [bench('a', 10), wait('w', 100)]), piece('quick', [bench('b', 10)])],
  });
  const better = improve(problem, inOrder(problem, [1, 0]));
  expect(better.order).toEqual([0, 1]);
  expect(better.cost[1] - now).toBe(110);
  expect(Array.from(better.starts, (start) => start - now)).toEqual([0, 10]);
  expect(improve(problem, inOrder(problem, [0, 1])).order).toEqual([0, 1]);
});

test('what is on one piece keeps its order, and begins as early as it can', () => {
  const now = utc('2026-03-02 09:00');
  const problem = problemOf({
    now,
    working: working(9, 17),
    pieces: [piece('a', [bench('1', 30), bench('2', 10)]), piece('b', [bench('3', 5)])],
  });
  const late = Float64Array.from([now + 60, now + 120, now + 180]);
  const better = improve(problem, { order: [0, 1, 2], starts: late, cost: costOf(problem, late) });
  expect(better.order).toEqual([2, 0, 1]);
  expect(Array.from(better.starts, (start) => start - now)).toEqual([5, 35, 0]);
  expect(better.cost).toEqual(costOf(problem, better.starts));
});

test('an order that cannot be kept is given back as it was', () => {
  const now = utc('2026-03-02 09:00');
  const done = { from: now - 20, to: now - 10 };
  const problem = problemOf({
    now,
    working: working(9, 17),
    pieces: [piece('a', [coat('1', { done }), window('w', 5, 15), coat('2')]), piece('b', [bench('3', 60)])],
  });
  const starts = Float64Array.from([now, now + 15]);
  const known = { order: [1, 0], starts, cost: costOf(problem, starts) };
  expect(improve(problem, known)).toEqual(known);
});

test.each([3, 4, 5, 6])(
  'of a large bench, seed %i, no two neighbours are left that had better change places',
  (seed) => {
    const problem = problemOf(largeBench(seed, 8));
    const found = search(problem);
    if (!found.ok) throw new Error(`Piece ${found.failure.piece} does not fit.`);
    expect(isBetter(improve(problem, found.value).cost, found.value.cost)).toBe(false);
  },
);
