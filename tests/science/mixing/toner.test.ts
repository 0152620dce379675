import { expect, test } from 'vitest';
import { wholeDrops } from '../../../src/science/mixing/amount';
import type { Ingredients } from '../../../src/science/mixing/ingredient';
import { lacquerShare, tonerStrength } from '../../../src/science/mixing/toner';

const INGREDIENTS: Ingredients = new Map([
  ['clear', { id: 'clear', kind: 'clear', densityKgM3: 950 }],
  ['thinner', { id: 'thinner', kind: 'thinner', densityKgM3: 840 }],
  ['dye', { id: 'dye', kind: 'dye', densityKgM3: 920 }],
]);
const mL = (ingredient: string, volume: number) => ({
  ingredient,
  massKg: volume * 1e-6 * (INGREDIENTS.get(ingredient)?.densityKgM3 ?? Number.NaN),
});

// A toner of 100 mL: 25 mL lacquer, 74.5 thinner, 0.5 dye concentrate, is at the limit (common practice, no source).
test('a toner of a quarter lacquer is at its limit', () => {
  const share = lacquerShare([mL('clear', 25), mL('thinner', 74.5), mL('dye', 0.5)], INGREDIENTS);
  expect(share).toBeCloseTo(0.25, 9);
  expect(tonerStrength(share ?? Number.NaN)).toBe('at-limit');
});

test.each([
  { share: 0.1, is: 'thin-enough' },
  { share: 0.22, is: 'thin-enough' },
  { share: 0.23, is: 'at-limit' },
  { share: 0.27, is: 'at-limit' },
  { share: 0.4, is: 'over-limit' },
] as const)('a share of $share is $is', ({ share, is }) => expect(tonerStrength(share)).toBe(is));

test('0.5 mL at 0.03 mL a drop are about 17 drops', () => expect(wholeDrops(0.5 / 0.03).drops).toBe(17));

test.each([
  { why: 'a density that nobody gave', known: [{ id: 'clear', kind: 'clear' }] },
  { why: 'an ingredient that nobody knows', known: [] },
] as const)('with $why no share is said', ({ known }) =>
  expect(
    lacquerShare([{ ingredient: 'clear', massKg: 1 }], new Map(known.map((one) => [one.id, one]))),
  ).toBeUndefined(),
);

test('white base counts as lacquer, dye and thinner do not', () => {
  const white = new Map([
    ...INGREDIENTS,
    ['white', { id: 'white', kind: 'white-base', densityKgM3: 1200 }] as const,
  ]);
  const batch = [mL('clear', 10), { ingredient: 'white', massKg: 12e-3 }, mL('thinner', 60), mL('dye', 20)];
  expect(lacquerShare(batch, white)).toBeCloseTo(0.2, 9);
});

test('of nothing there is no share', () => expect(lacquerShare([], INGREDIENTS)).toBeUndefined());
