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
