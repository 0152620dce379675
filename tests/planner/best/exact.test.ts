import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Plan } from '../../../src/planner/plan';
import { planBench } from '../../../src/planner/plan-bench';
import { bruteForce, type SlotCost } from './brute-force';
import { SLOT, type SlotBench, START, slotBench, toBench } from './slots';

const ENDLESS: SlotCost = [
  Number.POSITIVE_INFINITY,
  24 * 7,
  Number.POSITIVE_INFINITY,
  Number.POSITIVE_INFINITY,
];

/** What a plan costs, counted from what it shows. */
function costShown({ pieces, steps }: Plan, bench: SlotBench): SlotCost {
  const ends = pieces.map(({ likely }) => (likely - START) / SLOT);
  const late = ends.map((end, i) => Math.max(0, end - (bench.pieces[i]?.promised ?? end)));
  const starts = steps.filter(({ kind }) => kind === 'work').map(({ start }) => (start - START) / SLOT);
  const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);
  return [sum(late), Math.max(...ends), sum(ends), sum(starts)];
}

// The expected value is what a search over every start on every hour finds (brute-force.ts).
test('is as good as trying everything, for up to three pieces and nine steps', () => {
  let planned = 0;
  fc.assert(
    fc.property(slotBench, (bench) => {
      const plan = planBench(toBench(bench));
      if (!plan.ok) {
        // There must be a piece that cannot be finished even alone.
        const alone = bench.pieces.map((piece) => bruteForce({ ...bench, pieces: [piece] }, ENDLESS));
        expect(alone).toContain(undefined);
        return;
      }
      planned++;
      const cost = costShown(plan.value, bench);
      expect(plan.value.isProved).toBe(true);
      expect(bruteForce(bench, cost)).toEqual(cost);
    }),
    { numRuns: 2000 },
  );
  expect(planned).toBeGreaterThan(1000);
});
