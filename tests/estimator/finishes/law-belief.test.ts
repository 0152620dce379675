import { expect, test } from 'vitest';
import { bandAfter } from '../../../src/estimator/finishes/law-belief';

// Where a normal variable has a twentieth, a quarter and 45 % of its chance below it: NIST/SEMATECH e-Handbook, 1.3.6.7.1.
const [TWENTIETH, QUARTER, NEAR_HALF] = [-1.645, -0.674, -0.126];

test('evidence that a product is no slower than the mean leaves the lower half of the belief, to a hundredth of its spread', () => {
  // The mean lies where one slowness that is looked at ends and the next begins, or half a one would be left.
  const first = { mean: 0.025, spread: 1 };
  const sure = { margin: (slow: number) => 1e6 * (first.mean - slow), passes: true };
  const { low, typical, high } = bandAfter(first, [sure]);
  expect(Math.abs(low - first.mean - TWENTIETH)).toBeLessThan(0.01);
  expect(Math.abs(typical - first.mean - QUARTER)).toBeLessThan(0.01);
  expect(Math.abs(high - first.mean - NEAR_HALF)).toBeLessThan(0.01);
});
