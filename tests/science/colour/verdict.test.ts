import { describe, expect, test } from 'vitest';
import { colourDifference, deltaE00 } from '../../../src/science/colour/delta-e-00';
import type { Lab } from '../../../src/science/colour/lab';
import { painterSize, paintersWords } from '../../../src/science/colour/painters-words';
import { meanReading } from '../../../src/science/colour/readings/readings';
import { type Judged, TOLERANCE_E00, verdict } from '../../../src/science/colour/verdict';
import thresholds from '../../reference/colour-difference-thresholds.json';

const lab = (L: number, a: number, b: number): Lab<'D65/10'> => ({ white: 'D65/10', L, a, b });
const words = (sample: Lab<'D65/10'>, target: Lab<'D65/10'>): string =>
  paintersWords(colourDifference(sample, target))
    .map(({ size, direction }) => `${size} ${direction}`)
    .join(', ');

// The radio cabinet, an invented piece: values expected by a competent finisher (common practice, no source).
const TARGET = lab(86.5, -0.6, 14.8);
const CABINET = [
  { what: 'the base', sample: lab(95.5, -0.8, 2.2), dE00: 10.75, directions: ['blue', 'light'] },
  { what: 'the first trial', sample: lab(88.9, -1.1, 12.1), dE00: 2.4, directions: ['blue', 'light'] },
  { what: 'the second trial', sample: lab(86.1, 0.3, 15.9), dE00: 1.32, directions: ['red', 'yellow'] },
  { what: 'the third trial', sample: lab(86.7, -0.5, 14.4), dE00: 0.3, directions: ['blue'] },
  {
    what: 'the third under clear',
    sample: lab(86.1, -0.6, 16.6),
    dE00: 1.09,
    directions: ['yellow', 'dark'],
  },
];

describe('the radio cabinet', () => {
  test.each(CABINET)('$what is $dE00 away', ({ sample, dE00 }) => {
    expect(deltaE00(sample, TARGET)).toBeCloseTo(dE00, 2);
  });

  test.each(CABINET)('$what in words', ({ sample, directions }) => {
    const said = paintersWords(colourDifference(sample, TARGET)).map(({ direction }) => direction);
    expect(said).toEqual(directions);
  });
});

describe("painter's words", () => {
  // Limits 0.7, 1.5, 3: common practice, no source.
  test.each([
    { amount: 0.69, size: 'hint' },
    { amount: 0.7, size: 'little' },
    { amount: 1.5, size: 'little' },
    { amount: 1.51, size: 'clearly' },
    { amount: 3, size: 'clearly' },
    { amount: 3.01, size: 'far' },
  ])('$amount is $size', ({ amount, size }) => {
    expect(painterSize(amount)).toBe(size);
  });

  test.each([
    { why: 'black or umber: darker and greyer', sample: lab(83.5, -0.5, 12), said: 'clearly dirty' },
    { why: 'the opposite', sample: lab(89.5, -0.6, 17.8), said: 'clearly clean' },
    { why: 'only lighter', sample: lab(87.6, -0.6, 14.8), said: 'little light' },
    { why: 'only greener', sample: lab(86.5, -1.2, 14.8), said: 'little green' },
    { why: 'nothing to tell', sample: lab(86.5, -0.55, 14.8), said: '' },
    {
      why: 'much lighter and hardly stronger',
      sample: lab(90.5, -0.6, 15.4),
      said: 'clearly light, hint yellow',
    },
    { why: 'cleaner and redder', sample: lab(89.5, 1.4, 17.8), said: 'clearly clean, clearly red' },
    { why: 'cleaner and greener', sample: lab(89.5, -2.8, 17.8), said: 'clearly clean, clearly green' },
  ])('$why', ({ sample, said }) => {
    expect(words(sample, TARGET)).toBe(said);
  });
});

test.each([
  { why: 'red', target: lab(50, 20, 1), sample: lab(54, 24, 6), hue: 'yellow' },
  { why: 'red', target: lab(50, 20, -1), sample: lab(54, 24, -6), hue: 'blue' },
  { why: 'blue', target: lab(50, 1.5, -20), sample: lab(54, 7, -23.5), hue: 'red' },
  { why: 'green', target: lab(50, -20, 1), sample: lab(54, -24, 6), hue: 'yellow' },
])(
  'of a cleaner $why the hue that it moved to is said, as far as it moved: $hue',
  ({ target, sample, hue }) => {
    const difference = colourDifference(sample, target);
    const said = paintersWords(difference);
    expect(said.map(({ direction }) => direction).sort()).toEqual(['clean', hue].sort());
    // Under 15 degrees from the axis nearly all of the hue's part lies along the other one.
    const along = (said.find(({ direction }) => direction === hue)?.amountE00 ?? 0) / Math.abs(difference.dH);
    expect(along).toBeGreaterThan(0.96);
    expect(along).toBeLessThanOrEqual(1);
  },
);

describe('meanReading', () => {
  test('averages, with the spread from the mean', () => {
    const mean = meanReading([lab(86.3, -0.6, 14.8), lab(86.7, -0.6, 14.8), lab(86.5, -0.6, 14.8)]);
    expect(deltaE00(mean.lab, TARGET)).toBeCloseTo(0, 12);
    expect(mean.count).toBe(3);
    // Standard deviation of L* is 0.2; SL at L* 86.5 is 1.544 (equation 18), so 0.1295 deltaE00.
    expect(mean.spreadE00).toBeCloseTo(0.1295, 3);
    expect(mean.uncertaintyE00).toBeCloseTo(0.1295 / Math.sqrt(3), 3);
  });

  test('a single reading has no spread, and an assumed uncertainty', () => {
    expect(meanReading([TARGET])).toMatchObject({ spreadE00: undefined, uncertaintyE00: 0.3 });
    expect(() => meanReading([])).toThrow(RangeError);
  });

  test('readings that agree to the digit are as sure as an instrument repeats itself: 0.05 (common practice, no source)', () => {
    expect(meanReading([TARGET, TARGET, TARGET, TARGET])).toMatchObject({
      spreadE00: 0,
      uncertaintyE00: 0.05 / 2,
    });
  });

  test('will not average under two lights', () => {
    const mixed: Lab[] = [TARGET, { white: 'D50/2', L: 86, a: 0, b: 14 }];
    expect(() => meanReading(mixed)).toThrow(RangeError);
  });
});

const judged = (reading: Lab<'D65/10'>, uncertaintyE00 = 0.1): Judged<'D65/10'> => ({
  lab: reading,
  count: 3,
  spreadE00: uncertaintyE00 * Math.sqrt(3),
  uncertaintyE00,
  isDry: true,
  by: 'instrument',
});

describe('verdict', () => {
  const third = lab(86.7, -0.5, 14.4);
  const underClear = lab(86.1, -0.6, 16.6);
  test.each([
    { why: 'third trial bare, on an edge', sample: judged(third), kind: 'pass' },
    { why: 'third trial under clear', sample: judged(underClear), kind: 'not-yet' },
    { why: 'a limit inside the spread', sample: judged(underClear, 0.4), kind: 'measure-again' },
    { why: 'a wet film', sample: { ...judged(third), isDry: false }, kind: 'wet' },
    { why: 'a photograph', sample: { ...judged(third), by: 'camera' as const }, kind: 'camera-ranks-only' },
  ])('$why: $kind', ({ sample, kind }) => {
    expect(verdict(sample, judged(TARGET), TOLERANCE_E00.edge).kind).toBe(kind);
  });

  test.each([
    { why: 'a wet target', target: { ...judged(TARGET), isDry: false }, kind: 'wet' },
    {
      why: 'a photographed target',
      target: { ...judged(TARGET), by: 'camera' as const },
      kind: 'camera-ranks-only',
    },
  ])('$why: $kind', ({ target, kind }) => {
    expect(verdict(judged(third), target, TOLERANCE_E00.edge).kind).toBe(kind);
  });

  test('a difference of just the tolerance passes, and a doubt that just reaches the limit is no reason to measure again', () => {
    const half = judged(lab(50.25, 0, 0), 0.25); // 0.5 from the other, as SL is 1 at L* 50
    const other = judged(lab(49.75, 0, 0));
    expect(verdict({ ...half, uncertaintyE00: 0 }, other, 0.5).kind).toBe('pass');
    expect(verdict(half, other, 0.75).kind).toBe('pass');
    expect(verdict(half, other, 0.25).kind).toBe('not-yet');
  });

  test('a single reading of the target leaves no trial open: only the trial’s own doubt does', () => {
    const target = judged(TARGET, 0.3);
    expect(verdict(judged(underClear, 0.05), target, TOLERANCE_E00.edge).kind).toBe('not-yet');
    expect(verdict(judged(underClear, 0.3), target, TOLERANCE_E00.edge).kind).toBe('measure-again');
  });

  // Source: published thresholds in the reference file; the plain panel is common practice without one.
  const [strict, lenient] = thresholds.plain_panel.dE00 as [number, number];
  test.each([
    { place: 'open-panel', passes: strict, fails: lenient },
    { place: 'edge', passes: thresholds.perceptibility_50_50_dE00, fails: 0.801 },
    { place: 'hidden', passes: thresholds.acceptability_50_50_dE00, fails: 1.801 },
  ] as const)('on $place a difference of $passes passes, and of $fails does not', ({ place, ...dE00 }) => {
    // Two greys alike far from L* 50, where one unit of lightness is one of difference (equation 18).
    const apart = (by: number) =>
      verdict(judged(lab(50 + by / 2, 0, 0), 0), judged(lab(50 - by / 2, 0, 0)), TOLERANCE_E00[place]).kind;
    expect(apart(dE00.passes - 1e-9)).toBe('pass');
    expect(apart(dE00.fails)).toBe('not-yet');
  });

  test.each([
    { dE: 'just within', L: TARGET.L - 0.6, kind: 'pass' },
    { dE: 'just beyond', L: TARGET.L - 1.6, kind: 'not-yet' },
  ])('$dE the limit: $kind', ({ L, kind }) => {
    const sample = judged({ ...TARGET, L }, 0.02);
    expect(verdict(sample, judged(TARGET), TOLERANCE_E00.edge).kind).toBe(kind);
  });
});
