import { describe, expect, test } from 'vitest';
import {
  beliefOf,
  between,
  chancesOf,
  factorOf,
  logChance,
  PRIOR,
  quantile,
  RUN_AT,
  weigh,
} from '../../src/estimator/belief';

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

describe('what is believed', () => {
  const AT = [-1, 0, 1];

  test('sums to one, and is the first belief where nothing was found', () => {
    const spread = 1 / Math.sqrt(2 * Math.LN2); // so that one away is half as likely
    expect(weigh({ mean: 0, spread }, [], AT)).toEqual([0.25, 0.5, 0.25].map((w) => expect.closeTo(w, 12)));
    expect(weigh({ mean: 1, spread }, [], AT)).toEqual(
      [1 / 25, 8 / 25, 16 / 25].map((w) => expect.closeTo(w, 12)),
    );
  });

  test('goes by Bayes’ rule: each weight times the chance of what was found', () => {
    const spread = 1 / Math.sqrt(2 * Math.LN2);
    const chances = [4, 1, 2].map(Math.log);
    expect(weigh({ mean: 0, spread }, chances, AT)).toEqual(
      [0.5, 0.25, 0.25].map((w) => expect.closeTo(w, 12)),
    );
  });

  test('has its mean and its spread', () => {
    const { mean, spread } = beliefOf([0.5, 0, 0.5], AT);
    expect(mean).toBeCloseTo(0, 12);
    expect(spread).toBeCloseTo(1, 12);
    expect(beliefOf([0, 0.25, 0.75], AT).mean).toBeCloseTo(0.75, 12);
  });

  // Diffusivity within a factor 2.5 either way in eight of ten (calibration to common practice).
  test('is told as the factor that eight of ten lie within', () => {
    expect(factorOf(PRIOR)).toBeCloseTo(2.5, 9);
    expect(factorOf({ mean: 3, spread: 0 })).toBe(1);
  });

  test('a film that just meets what is asked passes as often as it fails; one far past it always does', () => {
    expect(Math.exp(logChance(0, true))).toBeCloseTo(0.5, 12);
    expect(Math.exp(logChance(0, false))).toBeCloseTo(0.5, 12);
    // The logistic function at 2.
    expect(Math.exp(logChance(2, true))).toBeCloseTo(0.8807970779, 9);
    expect(Math.exp(logChance(2, false))).toBeCloseTo(0.119202922, 9);
  });

  test('a test is the sharper the narrower it tells: four kelvin by thumb or paper, ten by nose (judgement, no source)', () => {
    const margins = RUN_AT.map(() => 20);
    const of = (test_: 'print' | 'gum' | 'smell') =>
      chancesOf([{ atS: 0, test: test_, passes: false }], [margins])[0] as number;
    expect(of('print')).toBeCloseTo(logChance(5, false), 9);
    expect(of('gum')).toBeCloseTo(logChance(5, false), 9);
    expect(of('smell')).toBeCloseTo(logChance(2, false), 9);
  });
});
