import fc from 'fast-check';
import { expect, test } from 'vitest';
import { planBench } from '../../../src/planner/plan-bench';
import { bruteForce } from './brute-force';
import { largeBench, SHORT_RESTS } from './large-bench';
import { lowerBound, workingMinutes } from './lower-bound';
import { SLOT, START, slotBench, toBench } from './slots';

// Five working days a week: an end that slips over a weekend is two days later and half an hour of work. Of 5,100 such benches one ended
// over 5 % (5.4), so that two of sixty are let pass.
test('ends a large bench within 5 % of working time of an end that no plan can beat', () => {
  let over = 0;
  fc.assert(
    fc.property(fc.nat(), fc.integer({ min: 5, max: 40 }), (seed, pieces) => {
      const bench = largeBench(seed, pieces);
      const plan = planBench(bench);
      const end = plan.ok ? Math.max(...plan.value.pieces.map(({ likely }) => likely)) : Number.NaN;
      const bound = lowerBound(bench);
      expect(end).toBeGreaterThanOrEqual(bound);
      const ratio = workingMinutes(bench, end) / workingMinutes(bench, bound);
      expect(ratio).toBeLessThanOrEqual(1.1);
      if (ratio > 1.05) over++;
    }),
    { numRuns: 60 },
  );
  expect(over).toBeLessThanOrEqual(2);
});

// Seventeen days of work for one person, and hardly a rest to do it in: what is held here is that nobody stands idle while the first films
// rest. Seen: 4.6 % on these 24, from 1.8 to 9.1; a share of it is the bound's, which lets films rest as if each had the shop to itself.
test('ends benches of forty pieces that rest only days within 4.7 % of it, on the mean of 24', () => {
  const over = Array.from({ length: 24 }, (_, n) => {
    const bench = largeBench(n + 1, 40, SHORT_RESTS);
    const plan = planBench(bench);
    const end = plan.ok ? Math.max(...plan.value.pieces.map(({ likely }) => likely)) : Number.NaN;
    return workingMinutes(bench, end) / workingMinutes(bench, lowerBound(bench)) - 1;
  });
  expect(over.reduce((sum, one) => sum + one, 0) / over.length).toBeLessThan(0.047); // asked for: 5 %
});

// The expected value is what a search over every start on every hour finds (brute-force.ts).
test('no bound lies beyond the best end there is, and four out of five lie on it', () => {
  let tried = 0;
  let met = 0;
  fc.assert(
    fc.property(slotBench, ({ pieces, ...rest }) => {
      const free = { ...rest, pieces: pieces.map((piece) => ({ ...piece, promised: undefined })) };
      const plan = planBench(toBench(free));
      if (!plan.ok) return;
      const end = (Math.max(...plan.value.pieces.map(({ likely }) => likely)) - START) / SLOT;
      const any = Number.POSITIVE_INFINITY;
      const best = bruteForce(free, [0, end, any, any])?.[1] ?? Number.NaN;
      const bound = (lowerBound(toBench(free)) - START) / SLOT;
      expect(bound).toBeLessThanOrEqual(best);
      tried++;
      if (bound === best) met++;
    }),
    { numRuns: 2000 },
  );
  expect(tried).toBeGreaterThan(1000);
  expect(met / tried).toBeGreaterThan(0.75);
});
