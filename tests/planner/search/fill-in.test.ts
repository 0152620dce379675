import fc from 'fast-check';
import { expect, test } from 'vitest';
import { compile } from '../../../src/planner/compile';
import { fillIn } from '../../../src/planner/search/fill-in';
import { timeOrder } from '../../../src/planner/search/time-order';
import type { Bench, Piece } from '../../../src/planner/step';
import { createOpeningTimes } from '../../../src/planner/windows/opening-times';
import { bench, clock, coat, piece, utc, wait, window, working } from '../a-bench';
import { slotBench, toBench } from '../best/slots';

const NINE = utc('2026-03-02 09:00');
const problemOf = (asked: Bench) => compile(asked, createOpeningTimes(asked.working, asked.now), 'likely');

/** When each operation begins, pieces wanted in the order of the list. */
function filled(pieces: readonly Piece[]): string[] | undefined {
  const found = fillIn(problemOf({ now: NINE, working: working(9, 17), pieces }), (index) => -index);
  return found.ok ? Array.from(found.starts, clock) : undefined;
}

test('one piece alone has every step as early as can be, its windows kept', () => {
  let kept = 0;
  fc.assert(
    fc.property(slotBench, (slots) => {
      const problem = problemOf(toBench({ ...slots, pieces: slots.pieces.slice(0, 1) }));
      const soonest = new Float64Array(problem.operations.length);
      const order = Array.from(soonest.keys());
      const isKept = timeOrder(problem, order, soonest, new Float64Array(order.length));
      const found = fillIn(problem, () => 0);
      expect(found.ok).toBe(isKept);
      if (!found.ok) return;
      kept++;
      expect(Array.from(found.starts)).toEqual(Array.from(soonest));
    }),
    { numRuns: 1000 },
  );
  expect(kept).toBeGreaterThan(300);
});

test('the most wanted has the first free time for all of its steps, the next one what is left between them', () => {
  const resting = piece('a', [bench('1', 10), wait('w', 30), bench('2', 10)]);
  // Half an hour is free between the two of the first: 30 minutes fit in, 31 do not.
  expect(filled([resting, piece('b', [bench('3', 30)])])).toEqual(['09:00', '09:40', '09:10']);
  expect(filled([resting, piece('b', [bench('3', 31)])])).toEqual(['09:00', '09:40', '09:50']);
  // A piece is moved away for five minutes after its coat, and then the next may begin.
  expect(filled([piece('a', [coat('1')]), piece('b', [coat('2')])])).toEqual(['09:00', '09:15']);
});

// Closing at 09:50 and 09:40: by the longer window, and by the coat that was laid earlier.
test.each([
  { laid: [10, 10], until: [60, 50] },
  { laid: [10, 20], until: [60, 60] },
])(
  'of two open windows the one that closes first comes first, before all that is wanted',
  ({ laid, until }) => {
    const open = (name: string, ago: number, untilMinutes: number) => {
      const done = { from: NINE - ago - 10, to: NINE - ago };
      return piece(name, [
        coat(`${name}1`, { done }),
        window(`${name}w`, 5, untilMinutes),
        coat(`${name}2`, { moveMinutes: 0 }),
      ]);
    };
    const [later, sooner] = laid.map((ago, k) => open(`p${k}`, ago, until[k] as number)) as [Piece, Piece];
    expect(filled([piece('a', [bench('1', 60)]), later, sooner])).toEqual(['09:20', '09:10', '09:00']);
  },
);

test('coats that a window joins are placed together: a work between them must not push the second out of it', () => {
  const joined = piece('b', [coat('2'), window('w', 45, 60), coat('3')]);
  // From ten o'clock on the person is busy for an hour: the first waits until the second can follow.
  const busy = piece('a', [bench('1', 60, { notBefore: NINE + 45 })]);
  expect(filled([busy, joined])).toEqual(['09:45', '10:45', '11:40']);
  expect(filled([joined, busy])).toEqual(['09:00', '09:55', '10:10']);
});
