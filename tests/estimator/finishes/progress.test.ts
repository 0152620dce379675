import { describe, expect, test } from 'vitest';
import { progress, reachedS, valueAt } from '../../../src/estimator/finishes/progress';
import { dryingRate } from '../../../src/estimator/finishes/rates';
import { law } from './cases';

const NEVER = Number.POSITIVE_INFINITY;
const run = { timeS: [100, 110, 130], dried: [0, 1, 5], cured: [0, 0, 0.5] };

test.each([
  { value: 0, is: 100 },
  { value: 0.5, is: 105 },
  { value: 1, is: 110 },
  { value: 3, is: 120 },
  { value: 5, is: 130 },
  { value: 5.1, is: NEVER },
])('a column that goes 0, 1, 5 reaches $value at $is s', ({ value, is }) => {
  expect(reachedS(run, run.dried, value)).toBe(is);
});

test.each([
  { atS: 0, is: 0 },
  { atS: 100, is: 0 },
  { atS: 105, is: 0.5 },
  { atS: 110, is: 1 },
  { atS: 125, is: 4 },
  { atS: 500, is: 5 },
])('and is $is at $atS s', ({ atS, is }) => {
  expect(valueAt(run, run.dried, atS)).toBe(is);
});

describe('a coat that comes on through the air', () => {
  const HOUR_S = 3600;
  const air = (fromH: number, relativeHumidity: number) => ({
    fromS: fromH * HOUR_S,
    temperatureK: 294.15,
    relativeHumidity,
  });
  const rate = (relativeHumidity: number) =>
    dryingRate(law('waterborne'), { temperatureK: 294.15, relativeHumidity });
  const dried = (spans: Parameters<typeof progress>[1], fromH: number, forH: number, drying = 1) =>
    progress(law('waterborne'), spans, fromH * HOUR_S, { drying, cure: 1 }, forH * HOUR_S).dried.at(
      -1,
    ) as number;

  test('dries by the rate of every span for as long as that lasts, from when it was laid', () => {
    const spans = [air(0, 0.5), air(10, 0.75), air(12, 0.9)];
    expect(dried(spans, 9, 4) / HOUR_S).toBeCloseTo(rate(0.5) + 2 * rate(0.75) + rate(0.9), 9);
    expect(dried(spans, 10, 1) / HOUR_S).toBeCloseTo(rate(0.75), 9);
    // Before the first span the air is as it is then; without any it is that of the usual shop.
    expect(dried([air(5, 0.75)], 0, 2) / HOUR_S).toBeCloseTo(2 * rate(0.75), 9);
    expect(dried([], 0, 2) / HOUR_S).toBeCloseTo(2, 9);
  });

  test('slower by as much as it is stretched', () => {
    expect(dried([air(0, 0.5)], 0, 4, 2) / HOUR_S).toBeCloseTo(2, 9);
  });

  test('is looked at soon at first, and never more than six hours apart', () => {
    const { timeS } = progress(law('urethane'), [air(0, 0.5)], 0, undefined, 20 * 24 * HOUR_S);
    const steps = timeS.slice(1).map((s, k) => s - (timeS[k] as number));
    expect(steps[0]).toBe(30);
    for (const [k, step] of steps.slice(1, -1).entries())
      expect(step).toBeCloseTo(Math.min(6 * HOUR_S, (steps[k] as number) * 1.06), 6);
    expect(timeS.at(-1)).toBe(20 * 24 * HOUR_S);
  });

  test('stretched in its cure by two it has cured after a day what it would in half of one', () => {
    const cured = (cure: number, hours: number) =>
      progress(law('urethane'), [air(0, 0.5)], 0, { drying: 1, cure }, hours * HOUR_S).cured.at(-1) as number;
    expect(cured(2, 24) / cured(1, 12)).toBeCloseTo(1, 3);
  });
});
