import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Amount, wholeDrops } from '../../../src/science/mixing/amount';
import { batchMassKg, type Ingredient } from '../../../src/science/mixing/ingredient';
import { batchOf } from '../../../src/science/mixing/recipe';
import { rescaled } from '../../../src/science/mixing/weigh/over-pour';
import { batchVolumeM3, scaledToVolume } from '../../../src/science/mixing/weigh/scaling';
import { weighOrder } from '../../../src/science/mixing/weigh/weigh-order';
import {
  letDown,
  usefulLetDown,
  weighing,
  weighingUncertainty,
} from '../../../src/science/mixing/weigh/weighing';
import { anyMix, got } from './any-mix';

const G = 1e-3;
const plan = [
  { ingredient: 'white', massKg: 100 * G },
  { ingredient: 'ochre', massKg: 2 * G },
  { ingredient: 'thinner', massKg: 50 * G },
];

describe('an over-pour, by hand', () => {
  test('of the second line: the first is topped up, the third grows, 10 % more in all', () => {
    const { factor, lines, moreKg } = rescaled(plan, [100 * G, 2.2 * G, undefined], 0.01 * G);
    expect(factor).toBeCloseTo(1.1, 12);
    expect(lines.map(({ toPourKg }) => toPourKg / G)).toEqual([
      expect.closeTo(10, 9),
      0,
      expect.closeTo(55, 9),
    ]);
    expect(lines.map(({ isTopUp }) => isTopUp)).toEqual([true, false, false]);
    expect(moreKg / G).toBeCloseTo(15.2, 9);
  });
  test('of the first line: only what is still to come grows', () => {
    const { lines } = rescaled(plan, [120 * G, undefined, undefined], 0.01 * G);
    expect(lines.map(({ toPourKg }) => toPourKg / G)).toEqual([
      0,
      expect.closeTo(2.4, 9),
      expect.closeTo(60, 9),
    ]);
    expect(lines.some(({ isTopUp }) => isTopUp)).toBe(false);
  });
  test('makes the batch grow once: a small line rounded up by the scale after it does not make it grow again', () => {
    // 100 g over by a tenth; 2.204 g where 2.2 is asked for is within half a division, though it is 0.2 % of its own line
    const { factor, lines } = rescaled(plan, [110 * G, 2.204 * G, undefined], 0.01 * G);
    expect(factor).toBeCloseTo(1.1, 12);
    expect(lines.map(({ toPourKg }) => toPourKg / G)).toEqual([0, 0, expect.closeTo(55, 9)]);
  });
  test('of a line that the scale hardly sees does not make the batch grow by what it hardly sees', () => {
    // 0.014 g where 0.011 is asked for of a batch that grows by a tenth: under half a division.
    const small = [{ ingredient: 'black', massKg: 0.01 * G }, ...plan];
    expect(rescaled(small, [0.014 * G, 110 * G, undefined, undefined], 0.01 * G).factor).toBeCloseTo(1.1, 12);
  });
  test('is topped up where the scale sees it; what is still to come is poured however little it is', () => {
    const small = [...plan, { ingredient: 'black', massKg: 0.004 * G }];
    const { lines } = rescaled(small, [99.996 * G, undefined, 50 * G, undefined], 0.01 * G);
    expect(lines.map(({ toPourKg }) => toPourKg / G)).toEqual([
      0,
      expect.closeTo(2, 9),
      0,
      expect.closeTo(0.004, 9),
    ]);
    expect(lines.map(({ isTopUp }) => isTopUp)).toEqual([false, false, false, false]);
  });
  test('that the scale cannot see is none; a short pour is finished', () => {
    expect(rescaled(plan, [100.004 * G, undefined, undefined], 0.01 * G)).toMatchObject({ factor: 1 });
    const { lines } = rescaled(plan, [60 * G, undefined, undefined], 0.01 * G);
    expect(lines[0]).toMatchObject({ toPourKg: expect.closeTo(40 * G, 12), isTopUp: false });
  });
});

describe('any weigh-up', () => {
  const pours = fc.array(fc.option(fc.double({ min: 0, max: 1.5, noNaN: true }), { nil: undefined }), {
    minLength: 7,
    maxLength: 7,
  });
  test('ends on the recipe’s ratios, and conserves mass', () => {
    fc.assert(
      fc.property(anyMix, pours, ({ batch }, shares) => {
        const poured = batch.map(({ massKg }, i) =>
          shares[i] === undefined ? undefined : massKg * shares[i],
        );
        const { factor, lines, totalKg, moreKg } = rescaled(batch, poured, 0);
        expect(factor).toBeGreaterThanOrEqual(1);
        lines.forEach(({ pouredKg, toPourKg }, i) => {
          const wanted = factor * (batch[i]?.massKg as number);
          expect(Math.abs((pouredKg + toPourKg) / wanted - 1)).toBeLessThan(1e-9);
        });
        expect(Math.abs(totalKg / (factor * batchMassKg(batch)) - 1)).toBeLessThan(1e-9);
        expect(Math.abs(moreKg - (totalKg - batchMassKg(batch)))).toBeLessThan(1e-12);
      }),
    );
  });

  test('poured on a real scale by a shaky hand ends within half a division of the ratios', () => {
    const hand = fc.array(fc.double({ min: 0, max: 0.3, noNaN: true }), { minLength: 7, maxLength: 7 });
    const divisionKg = 0.01 * G;
    fc.assert(
      fc.property(anyMix, hand, ({ batch }, excess) => {
        const poured: (number | undefined)[] = batch.map(() => undefined);
        // Once through with over-pours, then topped up exactly for as long as the scale still sees a difference.
        batch.forEach((_, i) => {
          poured[i] =
            (rescaled(batch, poured, divisionKg).lines[i]?.toPourKg as number) * (1 + (excess[i] as number));
        });
        const end = rescaled(batch, poured, divisionKg);
        end.lines.forEach(({ pouredKg, toPourKg }, i) => {
          const missingKg = end.factor * (batch[i]?.massKg as number) - pouredKg - toPourKg;
          expect(Math.abs(missingKg)).toBeLessThanOrEqual(divisionKg / 2 + 1e-15);
        });
      }),
    );
  });
});

describe('a 0.01 g scale, a batch of 30 g', () => {
  test.each([
    { grams: 0.135, uncertainty: 0.037, verdict: 'fine' },
    { grams: 0.105, uncertainty: 0.048, verdict: 'fine' },
    { grams: 0.1, uncertainty: 0.05, verdict: 'fine' },
    { grams: 0.03, uncertainty: 0.17, verdict: 'coarse' },
    { grams: 0.01, uncertainty: 0.5, verdict: 'coarse' },
    { grams: 0.0099, uncertainty: 0.505, verdict: 'not-weighable' },
    { grams: 0.003, uncertainty: 1.67, verdict: 'not-weighable' },
  ])('$grams g: $verdict', ({ grams, uncertainty, verdict }) => {
    expect(Math.abs(weighingUncertainty(grams * G, 0.01 * G) - uncertainty)).toBeLessThan(0.005);
    expect(weighing(grams * G, 0.01 * G)).toBe(verdict);
  });

  test.each([
    // By hand: 0.03 g as 10 % is 0.3 g with 0.27 g of clear; 0.003 g as 10 % is 0.03 g, still coarse, as 1 % 0.3 g with 0.297 g.
    { grams: 0.03, clear: 40, strength: 0.1, letDownG: 0.3, leaveOutG: 0.27 },
    { grams: 0.003, clear: 40, strength: 0.01, letDownG: 0.3, leaveOutG: 0.297 },
  ])('$grams g is weighed as a let-down', ({ grams, clear, strength, letDownG, leaveOutG }) => {
    const offered = usefulLetDown(grams * G, 0.01 * G, clear * G);
    expect(offered).toMatchObject({ strength });
    expect((offered?.letDownKg as number) / G).toBeCloseTo(letDownG, 9);
    expect((offered?.clearToLeaveOutKg as number) / G).toBeCloseTo(leaveOutG, 9);
  });

  test('no let-down is offered that brings more clear than the recipe holds, or that the scale cannot weigh', () => {
    expect(usefulLetDown(0.03 * G, 0.01 * G, 0.1 * G)).toBeUndefined();
    expect(usefulLetDown(0.0003 * G, 0.01 * G, 40 * G)).toBeUndefined();
    expect(usefulLetDown(0.5, 0.01, 4.5)?.strength).toBe(0.1); // brings just the 4.5 of clear that there are
    expect(usefulLetDown(0.5, 0.01, 4.4)).toBeUndefined();
  });

  test('a let-down and the clear left out carry the same tinter and the same clear', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e-6, max: 1, noNaN: true }),
        fc.constantFrom(0.1, 0.01),
        (tinterKg, strength) => {
          const { letDownKg, clearToLeaveOutKg } = letDown(tinterKg, strength);
          expect(letDownKg * strength).toBeCloseTo(tinterKg, 12);
          expect(letDownKg - clearToLeaveOutKg).toBeCloseTo(tinterKg, 12);
        },
      ),
    );
  });
});

describe('scaling drops', () => {
  const dropMassKg = 0.034 * G;
  const shelf: Ingredient[] = [
    { id: 'white', kind: 'white-base', densityKgM3: 1150 },
    { id: 'thinner', kind: 'thinner', densityKgM3: 840 },
    { id: 'ochre', kind: 'tinter', dropMassKg, densityKgM3: 1500 },
    { id: 'umber', kind: 'tinter', dropMassKg, densityKgM3: 1500 },
    { id: 'black', kind: 'tinter', dropMassKg, densityKgM3: 1500 },
  ];
  const ingredients = new Map(shelf.map((each) => [each.id, each]));
  const line = (ingredient: string, value: number, unit: 'mL' | 'drops') => ({
    ingredient,
    amount: { unit, value } satisfies Amount,
  });
  const batch = got(
    batchOf(
      [
        line('white', 40, 'mL'),
        line('thinner', 20, 'mL'),
        line('ochre', 12, 'drops'),
        line('umber', 5, 'drops'),
        line('black', 1, 'drops'),
      ],
      ingredients,
    ),
  );
  const wanted = got(scaledToVolume(batch, 165e-6, ingredients));
  const grams = wanted.map(({ massKg }) => massKg / G);

  test('about 60 mL becomes 165 mL by the factor 2.75, a little less for the tinters’ own volume', () => {
    expect(got(batchVolumeM3(batch, ingredients)) * 1e6).toBeCloseTo(60.4, 1); // 60 + 18 x 0.034/1.5
    expect(batchMassKg(wanted) / batchMassKg(batch)).toBeCloseTo(165 / 60.408, 4);
  });
  test('1.12, 0.47 and 0.094 g of tinter, within 1.5 % (the factor is a little under 2.75)', () => {
    [1.12, 0.47, 0.094].forEach((expected, i) => {
      expect(Math.abs((grams[2 + i] as number) / expected - 1)).toBeLessThan(0.015);
    });
  });
  test('3 drops of black are 9 % too much, and 0.094 g is coarse: a 10 % let-down is offered', () => {
    expect(wholeDrops(2.75).error).toBeCloseTo(0.09, 2);
    expect(weighing(0.094 * G, 0.01 * G)).toBe('coarse'); // 0.005/0.094 = 5.3 %
    expect(usefulLetDown(0.094 * G, 0.01 * G, 40 * G)?.strength).toBe(0.1);
  });
});

test('white and clear come first, tinters from weak to strong, thinner last', () => {
  const shelf: Ingredient[] = [
    { id: 'thinner', kind: 'thinner' },
    { id: 'black', kind: 'tinter', strength: 9 },
    { id: 'ochre', kind: 'tinter', strength: 2 },
    { id: 'clear', kind: 'clear' },
    { id: 'retarder', kind: 'retarder' },
    { id: 'white', kind: 'white-base' },
    { id: 'unmeasured', kind: 'dye' },
  ];
  const batch = [...shelf, { id: 'deleted' }].map(({ id }) => ({ ingredient: id, massKg: 1 }));
  const order = weighOrder(batch, new Map(shelf.map((each) => [each.id, each])));
  expect(order.map(({ ingredient }) => ingredient)).toEqual([
    'white',
    'clear',
    'deleted',
    'unmeasured',
    'ochre',
    'black',
    'retarder',
    'thinner',
  ]);
});

test('a line that lies half a division over what the scale shows is whole: nothing is to be topped up', () => {
  const plan = [
    { ingredient: 'lacquer', massKg: 23.75e-3 },
    { ingredient: 'dye', massKg: 0.5e-3 },
    { ingredient: 'thinner', massKg: 63.325e-3 },
  ];
  const poured = [23.75e-3, 0.5e-3, 87.57e-3 - 24.25e-3]; // as a scale of 0.01 g shows the whole cup
  expect(rescaled(plan, poured, 1e-5).lines.map(({ toPourKg }) => toPourKg)).toEqual([0, 0, 0]);
  const short = rescaled(plan, [23.75e-3, 0.5e-3, 63.31e-3], 1e-5).lines.at(-1);
  expect(short?.toPourKg).toBeCloseTo(0.015e-3, 9);
});
