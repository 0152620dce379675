import 'fake-indexeddb/auto';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { batchMassKg } from '../../../src/science/mixing/ingredient';
import { pourWords, scaleWords } from '../../../src/screens/mix/grams';
import { sized } from '../../../src/screens/mix/weigh/use-sized-batch';
import { batchOfLines } from '../../../src/shop/recipe/batch';
import { mixIngredients } from '../../../src/shop/recipe/ingredients';
import { aShop, done } from '../../actions/a-shop';
import { aBench, line } from '../../actions/mix/a-bench';

// 200 g of white come to 173.9 mL and 5.881 fl oz, rounded: what is poured for them is 200 g all the same.
test.each([
  { text: '173.9', unit: 'mL' },
  { text: '5.881', unit: 'fl-oz-us' },
  { text: '6.121', unit: 'fl-oz-imperial' },
  { text: '200', unit: 'g' },
] as const)(
  'the size of the recipe itself, rounded to $text $unit, pours the recipe as written',
  async (size) => {
    const open = await aShop();
    const { white } = await aBench(open);
    const batch = done(batchOfLines([line(white, '200', 'g')], open.shop.value));
    const ingredients = mixIngredients(open.shop.value.ingredients);
    expect(batchMassKg(done(sized(batch, size, ingredients)))).toBe(batchMassKg(batch));
    const twice = done(sized(batch, { ...size, text: String(Number(size.text) * 2) }, ingredients));
    expect(batchMassKg(twice) / batchMassKg(batch)).toBeCloseTo(2, 3);
  },
);

test('what is to be poured and what the scale then shows are one number, wherever it is many divisions', () => {
  expect(pourWords(0.19993, 1e-5)).toBe('199.93'); // not 199.9 beside 199.93
  expect(pourWords(0.08764, 1e-4)).toBe('87.6');
  expect(pourWords(0.094e-3, 1e-5)).toBe('0.094'); // few divisions: as it is
  fc.assert(
    fc.property(fc.double({ min: 1e-3, max: 0.9, noNaN: true }), (massKg) => {
      const said = Number(pourWords(massKg, 1e-5));
      expect(said).toBeCloseTo(Number(scaleWords(massKg, 1e-5)), 9);
    }),
  );
});
