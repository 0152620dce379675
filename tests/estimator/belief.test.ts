import { describe, expect, test } from 'vitest';
import { between, quantile, RUN_AT } from '../../src/estimator/belief';

const NEVER = Number.POSITIVE_INFINITY;

describe('a value known at the runs', () => {
  const rising = RUN_AT.map((x) => 10 + x);
  test.each([
    { x: -1.8, is: 8.2 },
    { x: -0.9, is: 9.1 },
    { x: 0, is: 10 },
    { x: 1.8, is: 11.8 },
    // No further out than the last run.
    { x: -5, is: 8.2 },
    { x: 5, is: 11.8 },
  ])('is $is at $x', ({ x, is }) => {
    expect(between(rising, x)).toBeCloseTo(is, 9);
  });

  // Slower than at the third run it is never reached in the time looked at.
  const reached = [NEVER, NEVER, NEVER, 5, 4, 3, 2];
  test.each([
    { x: -1.8, is: NEVER },
    { x: -1.5, is: NEVER },
    { x: -0.3, is: NEVER },
    { x: 0, is: 5 },
    { x: 0.3, is: 4.5 },
  ])('is without end beside one that is: $is at $x', ({ x, is }) => {
    const value = between(reached, x);
    if (is === NEVER) expect(value).toBe(NEVER);
    else expect(value).toBeCloseTo(is, 9);
  });
});

test('a share of the weight that is never reached gives no number', () => {
  const rows = [
    { value: NEVER, weight: 0.3 },
    { value: 2, weight: 0.3 },
    { value: NEVER, weight: 0.2 },
    { value: 1, weight: 0.2 },
  ];
  expect([0.1, 0.2, 0.4, 0.6, 0.9].map((share) => quantile(rows, share))).toEqual([1, 1, 2, NEVER, NEVER]);
});
