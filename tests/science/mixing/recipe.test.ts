import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Amount, dropMassKg, type Measure, wholeDrops } from '../../../src/science/mixing/amount';
import { expressed } from '../../../src/science/mixing/expressed';
import type { Ingredient } from '../../../src/science/mixing/ingredient';
import { batchMassKg } from '../../../src/science/mixing/ingredient';
import type { Recipe } from '../../../src/science/mixing/line';
import { batchOf } from '../../../src/science/mixing/recipe';
import {
  batchVolumeM3,
  scaled,
  scaledToMass,
  scaledToVolume,
} from '../../../src/science/mixing/weigh/scaling';
import { anyMix, got } from './any-mix';

const shelf: Ingredient[] = [
  { id: 'clear', kind: 'clear', densityKgM3: 950 },
  { id: 'white', kind: 'white-base', densityKgM3: 1150 },
  { id: 'thinner', kind: 'thinner', densityKgM3: 840 },
  { id: 'retarder', kind: 'retarder', densityKgM3: 900 },
  { id: 'ochre', kind: 'tinter', dropMassKg: 0.034e-3 },
  { id: 'unweighed', kind: 'tinter' },
];
const ingredients = new Map(shelf.map((each) => [each.id, each]));
const line = (ingredient: string, amount: Amount) => ({ ingredient, amount });
const grams = (recipe: Recipe) => got(batchOf(recipe, ingredients)).map(({ massKg }) => massKg * 1000);
const ofMix = (value: number, by: 'mass' | 'volume'): Amount => ({ unit: 'share', of: 'mix', by, value });

describe('a line in every measure, masses by hand', () => {
  test.each([
    { amount: { unit: 'g', value: 12.5 }, expected: 12.5 },
    { amount: { unit: 'mL', value: 40 }, expected: 38 }, // 40 x 0.95
    { amount: { unit: 'fl-oz-us', value: 1 }, expected: 28.094853 }, // 29.5735295625 x 0.95
    { amount: { unit: 'fl-oz-imperial', value: 1 }, expected: 26.992409 }, // 28.4130625 x 0.95
  ] as const)('$amount of clear is $expected g', ({ amount, expected }) => {
    expect(grams([line('clear', amount)])[0]).toBeCloseTo(expected, 6);
  });
  test('20 drops that weigh 0.68 g are 0.034 g each; 12 drops are 0.408 g', () => {
    expect(dropMassKg(0.68e-3, 20)).toBeCloseTo(0.034e-3, 12);
    expect(grams([line('ochre', { unit: 'drops', value: 12 })])[0]).toBeCloseTo(0.408, 9);
  });
});

describe('parts and shares, masses by hand', () => {
  const lacquer = line('clear', { unit: 'mL', value: 100 });
  test.each([
    // 2 : 1 by volume: 2 mL clear, 1 mL thinner.
    {
      recipe: [
        line('clear', { unit: 'parts', by: 'volume', value: 2 }),
        line('thinner', { unit: 'parts', by: 'volume', value: 1 }),
      ],
      expected: [1.9, 0.84],
    },
    // 2 : 1 by mass.
    {
      recipe: [
        line('clear', { unit: 'parts', by: 'mass', value: 2 }),
        line('thinner', { unit: 'parts', by: 'mass', value: 1 }),
      ],
      expected: [2, 1],
    },
    // 10 % of 100 mL lacquer: 10 mL thinner.
    {
      recipe: [lacquer, line('thinner', { unit: 'share', of: 'lacquer', by: 'volume', value: 0.1 })],
      expected: [95, 8.4],
    },
    // 10 % of the mix: 100/9 mL thinner.
    { recipe: [lacquer, line('thinner', ofMix(0.1, 'volume'))], expected: [95, 9.33333] },
    // 5 % of 95 g.
    {
      recipe: [lacquer, line('retarder', { unit: 'share', of: 'lacquer', by: 'mass', value: 0.05 })],
      expected: [95, 4.75],
    },
    // 5 % of the mix by mass: 95 x 5/95.
    { recipe: [lacquer, line('retarder', ofMix(0.05, 'mass'))], expected: [95, 5] },
    // 60 + 40 % of the mix and nothing else: a ratio.
    {
      recipe: [line('clear', ofMix(0.6, 'mass')), line('thinner', ofMix(0.4, 'mass'))],
      expected: [0.6, 0.4],
    },
    // 5 % of two parts.
    {
      recipe: [
        line('clear', { unit: 'parts', by: 'mass', value: 2 }),
        line('retarder', { unit: 'share', of: 'lacquer', by: 'mass', value: 0.05 }),
      ],
      expected: [2, 0.1],
    },
    // Of the lacquer that is weighed: 5 g; the clear is a fifth of all, so a quarter of the other 105 g.
    {
      recipe: [
        line('white', { unit: 'g', value: 100 }),
        line('clear', ofMix(0.2, 'mass')),
        line('retarder', { unit: 'share', of: 'lacquer', by: 'mass', value: 0.05 }),
      ],
      expected: [100, 26.25, 5],
    },
    // 50 mL thinner is not lacquer: 10 % of the lacquer stays 10 mL of retarder.
    {
      recipe: [
        lacquer,
        line('thinner', { unit: 'mL', value: 50 }),
        line('retarder', { unit: 'share', of: 'lacquer', by: 'volume', value: 0.1 }),
      ],
      expected: [95, 42, 9],
    },
  ] as const)('%#: $expected g', ({ recipe, expected }) => {
    grams(recipe).forEach((found, i) => {
      expect(found).toBeCloseTo(expected[i] as number, 4);
    });
  });
});

describe('what cannot be known is said', () => {
  const clear = line('clear', { unit: 'g', value: 100 });
  const part = (by: 'mass' | 'volume') => ({ unit: 'parts', by, value: 1 }) as const;
  test.each([
    { recipe: [], failure: { kind: 'empty' } },
    { recipe: [clear, line('thinner', { unit: 'g', value: 0 })], failure: { kind: 'not-positive', line: 1 } },
    { recipe: [line('clear', { unit: 'g', value: -1 })], failure: { kind: 'not-positive', line: 0 } },
    { recipe: [line('clear', { unit: 'g', value: Number.NaN })], failure: { kind: 'not-positive', line: 0 } },
    {
      recipe: [line('clear', { unit: 'g', value: Number.POSITIVE_INFINITY })],
      failure: { kind: 'not-positive', line: 0 },
    },
    {
      recipe: [line('gone', { unit: 'g', value: 1 })],
      failure: { kind: 'unknown-ingredient', ingredient: 'gone' },
    },
    {
      recipe: [line('unweighed', { unit: 'mL', value: 1 })],
      failure: { kind: 'no-density', ingredient: 'unweighed' },
    },
    {
      recipe: [line('unweighed', { unit: 'drops', value: 1 })],
      failure: { kind: 'no-drop-mass', ingredient: 'unweighed' },
    },
    { recipe: [clear, line('thinner', part('mass'))], failure: { kind: 'parts-with-amounts' } },
    {
      recipe: [line('clear', part('volume')), line('thinner', part('mass'))],
      failure: { kind: 'parts-of-two-kinds' },
    },
    {
      recipe: [line('clear', ofMix(0.5, 'volume')), line('thinner', ofMix(0.5, 'mass'))],
      failure: { kind: 'parts-of-two-kinds' },
    },
    {
      recipe: [
        line('thinner', { unit: 'g', value: 1 }),
        line('retarder', { unit: 'share', of: 'lacquer', by: 'mass', value: 0.1 }),
      ],
      failure: { kind: 'no-lacquer' },
    },
    {
      recipe: ['clear', 'thinner'].map((id) =>
        line(id, { unit: 'share', of: 'lacquer', by: 'mass', value: 0.5 }),
      ),
      failure: { kind: 'no-lacquer' },
    },
    { recipe: [clear, line('thinner', ofMix(1, 'mass'))], failure: { kind: 'shares-over-whole' } },
    { recipe: [clear, line('unweighed', ofMix(1, 'volume'))], failure: { kind: 'shares-over-whole' } },
    {
      recipe: [clear, line('thinner', ofMix(0.5, 'volume')), line('thinner', ofMix(0.5, 'mass'))],
      failure: { kind: 'shares-over-whole' },
    },
    {
      recipe: [clear, line('thinner', ofMix(0.6, 'volume')), line('retarder', ofMix(0.5, 'mass'))],
      failure: { kind: 'shares-over-whole' },
    },
    {
      recipe: [line('clear', ofMix(0.5, 'mass')), line('thinner', ofMix(0.4, 'mass'))],
      failure: { kind: 'shares-do-not-add-up', sum: 0.9 },
    },
    {
      recipe: [clear, line('unweighed', { unit: 'g', value: 1 }), line('thinner', ofMix(0.1, 'volume'))],
      failure: { kind: 'no-density', ingredient: 'unweighed' },
    },
  ] as const)('$failure', ({ recipe, failure }) => {
    expect(batchOf(recipe, ingredients)).toEqual({ ok: false, failure });
  });
});

describe('any mix', () => {
  const near = (found: number, expected: number) => expect(Math.abs(found / expected - 1)).toBeLessThan(1e-9);
  const MEASURES: readonly Measure[] = [
    { unit: 'g' },
    { unit: 'mL' },
    { unit: 'drops' },
    { unit: 'fl-oz-us' },
    { unit: 'fl-oz-imperial' },
  ];
  const RATIOS: readonly Measure[] = [
    { unit: 'parts', by: 'mass' },
    { unit: 'parts', by: 'volume' },
    { unit: 'share', of: 'mix', by: 'mass' },
    { unit: 'share', of: 'mix', by: 'volume' },
  ];

  test('comes back from any unit, line by line', () => {
    fc.assert(
      fc.property(
        anyMix,
        fc.array(fc.constantFrom(...MEASURES), { minLength: 7, maxLength: 7 }),
        (mix, measures) => {
          const recipe = mix.batch.map(({ ingredient }, i) =>
            line(ingredient, got(expressed(mix.batch, i, measures[i] as Measure, mix.ingredients))),
          );
          got(batchOf(recipe, mix.ingredients)).forEach(({ massKg }, i) => {
            near(massKg, mix.batch[i]?.massKg as number);
          });
        },
      ),
    );
  });

  test('keeps its ratios as parts and as shares of the mix', () => {
    fc.assert(
      fc.property(anyMix, fc.constantFrom(...RATIOS), (mix, measure) => {
        const recipe = mix.batch.map(({ ingredient }, i) =>
          line(ingredient, got(expressed(mix.batch, i, measure, mix.ingredients))),
        );
        const back = scaledToMass(got(batchOf(recipe, mix.ingredients)), batchMassKg(mix.batch));
        back.forEach(({ massKg }, i) => {
          near(massKg, mix.batch[i]?.massKg as number);
        });
      }),
    );
  });

  test('holds the shares of lacquer and mix that were asked for, by mass and by volume at once', () => {
    const share = fc.double({ min: 0.001, max: 0.3, noNaN: true });
    const by = fc.constantFrom('mass', 'volume');
    fc.assert(
      fc.property(anyMix, fc.tuple(share, by), fc.tuple(share, by), fc.tuple(share, by), (mix, ...asked) => {
        const amounts: Amount[] = asked.map(([value, way], i) => ({
          unit: 'share',
          of: i === 0 ? 'lacquer' : 'mix',
          by: way,
          value,
        }));
        // Three more of the kinds that are no lacquer; densities near enough that every pair of shares leaves room.
        const extra: Ingredient[] = ['a', 'b', 'c'].map((id, i) => ({
          id,
          kind: 'thinner',
          densityKgM3: 800 + 100 * i,
        }));
        const all = new Map([...mix.ingredients, ...extra.map((each) => [each.id, each] as const)]);
        const recipe = [
          ...mix.batch.map(({ ingredient, massKg }) => line(ingredient, { unit: 'g', value: massKg * 1000 })),
          ...extra.map(({ id }, i) => line(id, amounts[i] as Amount)),
        ];
        const batch = got(batchOf(recipe, all));
        amounts.forEach((amount, i) => {
          near(got(expressed(batch, mix.batch.length + i, amount, all)).value, amount.value);
        });
      }),
    );
  });

  test('scales as a batch, to a mass and to a volume', () => {
    fc.assert(
      fc.property(anyMix, fc.double({ min: 0.01, max: 100, noNaN: true }), (mix, factor) => {
        const larger = scaled(mix.batch, factor);
        near(batchMassKg(larger), factor * batchMassKg(mix.batch));
        near(
          got(batchVolumeM3(got(scaledToVolume(mix.batch, factor * 1e-3, mix.ingredients)), mix.ingredients)),
          factor * 1e-3,
        );
        scaled(larger, 1 / factor).forEach(({ massKg }, i) => {
          near(massKg, mix.batch[i]?.massKg as number);
        });
      }),
    );
  });
});

test('parts are counted in the first line', () => {
  const batch = [
    { ingredient: 'clear', massKg: 0.19 },
    { ingredient: 'thinner', massKg: 0.084 },
  ];
  const parts = [0, 1].map(
    (i) => got(expressed(batch, i, { unit: 'parts', by: 'volume' }, ingredients)).value,
  );
  expect(parts[0]).toBe(1);
  expect(parts[1]).toBeCloseTo(0.5, 12); // 100 mL to 200 mL
});

test('drops are poured whole: 2.75 as 3 is 9 % more, 0.3 as 1 more than three times', () => {
  expect(wholeDrops(2.75)).toEqual({ drops: 3, error: expect.closeTo(0.0909, 4) });
  expect(wholeDrops(0.3)).toEqual({ drops: 1, error: expect.closeTo(2.3333, 4) });
});
