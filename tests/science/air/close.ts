import { expect } from 'vitest';

/** Holds a value to another within a tolerance in the same unit. NaN is close to nothing. */
export function expectWithin(actual: number, expected: number, tolerance: number): void {
  const isClose = Math.abs(actual - expected) <= tolerance;
  expect(isClose, `${actual} is not within ${tolerance} of ${expected}`).toBe(true);
}
