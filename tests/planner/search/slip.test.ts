import { expect, test } from 'vitest';
import { compile } from '../../../src/planner/compile';
import { slippedEnds } from '../../../src/planner/search/slip';
import type { Step } from '../../../src/planner/step';
import { createOpeningTimes } from '../../../src/planner/windows/opening-times';
import { bench, coat, piece, utc, wait, window, working } from '../a-bench';

const NINE = utc('2026-03-02 09:00');
const till = (id: string, minutes: number): Step => ({
  ...wait(id, 0),
  ends: { earliest: NINE + minutes, likely: NINE + minutes, late: NINE + minutes },
});

/** Minutes after nine at which both pieces end when a step of the first slips by an hour. */
function endsAfter(steps: readonly Step[], step: number): number[] | undefined {
  const pieces = [piece('a', steps), piece('b', [bench('z', 20)])];
  const asked = { now: NINE, working: working(9, 17), pieces };
  const problem = compile(asked, createOpeningTimes(asked.working, NINE), 'likely');
  const slip = { piece: 0, step, minutes: 60 };
  return slippedEnds(problem, [...problem.operations.keys()], slip)?.map((end) => end - NINE);
}

test.each<{ what: string; steps: readonly Step[]; step: number; ends: readonly number[] }>([
  { what: 'a wait', steps: [bench('1', 10), wait('w', 30), bench('2', 10)], step: 1, ends: [110, 130] },
  {
    what: 'the work after it',
    steps: [bench('1', 10), wait('w', 30), bench('2', 10)],
    step: 2,
    ends: [110, 130],
  },
  {
    what: 'the first work',
    steps: [bench('1', 10), wait('w', 30), bench('2', 10)],
    step: 0,
    ends: [110, 130],
  },
  { what: 'a last wait', steps: [bench('1', 10), wait('w', 30)], step: 1, ends: [100, 30] },
  // A wait for a moment ends an hour after that moment, where that is later than an hour after the work before.
  {
    what: 'a wait for a moment',
    steps: [bench('1', 10), till('w', 50), bench('2', 10)],
    step: 1,
    ends: [120, 140],
  },
  { what: 'a last wait for a moment', steps: [bench('1', 10), till('w', 50)], step: 1, ends: [110, 30] },
])('$what that slips by an hour', ({ steps, step, ends }) => {
  expect(endsAfter(steps, step)).toEqual(ends);
});

test('a slip out of a window is told', () => {
  const steps = [coat('1', { done: { from: NINE - 10, to: NINE } }), window('w', 5, 30), coat('2')];
  expect(endsAfter(steps, 1)).toBeUndefined();
});
