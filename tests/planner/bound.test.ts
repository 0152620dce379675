import fc from 'fast-check';
import { expect, test } from 'vitest';
import { planBench } from '../../src/planner/plan-bench';
import { largeBench } from './large-bench';
import { lowerBound, workingMinutes } from './lower-bound';

// Five working days a week: an end that slips over a weekend is two days later and half an hour of work.
test('ends a large bench within 5 % of working time of an end that no plan can beat', () => {
  fc.assert(
    fc.property(fc.nat(), fc.integer({ min: 5, max: 40 }), (seed, pieces) => {
      const bench = largeBench(seed, pieces);
      const plan = planBench(bench);
      const end = plan.ok ? Math.max(...plan.value.pieces.map(({ likely }) => likely)) : Number.NaN;
      const bound = lowerBound(bench);
      expect(end).toBeGreaterThanOrEqual(bound);
      expect(workingMinutes(bench, end)).toBeLessThanOrEqual(1.05 * workingMinutes(bench, bound));
    }),
    { numRuns: 60 },
  );
});

// Seventeen days of work for one person, and hardly a rest to do it in: most of the distance is the bound's, which fills every day to the
// minute. What is held here is that nobody stands idle while the first films rest.
test('ends a bench of forty pieces that rest only days within 10 % of it, on the mean of eight', () => {
  const over = Array.from({ length: 8 }, (_, n) => {
    const bench = largeBench(n + 1, 40, [3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14]);
    const plan = planBench(bench);
    const end = plan.ok ? Math.max(...plan.value.pieces.map(({ likely }) => likely)) : Number.NaN;
    return workingMinutes(bench, end) / workingMinutes(bench, lowerBound(bench)) - 1;
  });
  expect(over.reduce((sum, one) => sum + one, 0) / over.length).toBeLessThan(0.1);
});
