import { describe, expect, test } from 'vitest';
import type { EntryBody } from '../../../src/logbook/entry';
import { fold } from '../../../src/logbook/fold/fold';
import { mixedProduct } from '../../../src/shop/jar/mixed-product';
import { entry, id } from '../../logbook/entries';

type Described = Extract<EntryBody, { kind: 'ingredient-described' }>;
const fact = <U extends string>(text: string, unit: U) =>
  ({ value: { text, unit }, from: 'measured' }) as const;
const described = (n: number, more: object): EntryBody =>
  ({
    kind: 'ingredient-described',
    ingredient: id(n),
    name: `Ingredient ${n}`,
    is: 'clear',
    density: fact('1', 'g/mL'),
    volumeSolids: fact('20', '%'),
    solvents: { value: [{ solvent: 'toluene', share: 1 }], from: 'measured' },
    ...more,
  }) as Described;

function mixOf(grams: readonly number[], ...more: readonly object[]) {
  const shop = fold(more.map((one, n) => entry(n + 1, described(n + 1, one))));
  const batch = grams.map((mass, n) => ({ ingredient: id(n + 1), massKg: mass / 1000 }));
  const mixed = mixedProduct(batch, shop, 'In the mix');
  if (!mixed.ok) throw new Error(mixed.failure.kind);
  return mixed.value;
}
const NC = { finish: 'nitrocellulose' };
const ACRYLIC = { finish: 'acrylic' };

describe('what was weighed together is a product', () => {
  test('of the finish that leaves most of the film, whatever weighs most', () => {
    const thin = { ...NC, volumeSolids: fact('10', '%') };
    expect(mixOf([100, 60], thin, ACRYLIC).product.finish).toBe('acrylic'); // 10 mL of solids beside 12
    expect(mixOf([100, 40], thin, ACRYLIC).product.finish).toBe('nitrocellulose'); // 10 beside 8
    expect(mixOf([100, 30, 30], thin, ACRYLIC, ACRYLIC).product.finish).toBe('acrylic');
    expect(mixOf([100], {}).product.finish).toBe('nitrocellulose');
  });

  test('with its solvents by volume, none that there is nothing of', () => {
    const blend = (...solvents: readonly (readonly [solvent: string, share: number])[]) => ({
      solvents: { value: solvents.map(([solvent, share]) => ({ solvent, share })), from: 'measured' },
    });
    // 80 mL beside 40: toluene 80 + 20 of 120.
    const mixed = mixOf(
      [100, 50],
      blend(['toluene', 1], ['acetone', 0]),
      blend(['toluene', 0.5], ['mek', 0.5]),
    );
    expect(mixed.product.solvents).toEqual([
      { solvent: 'toluene', share: expect.closeTo(100 / 120, 9) },
      { solvent: 'mek', share: expect.closeTo(20 / 120, 9) },
    ]);
    expect(mixed.thinner).toEqual({ name: 'In the mix', blend: mixed.product.solvents });
  });

  test('with its volume and density', () => {
    const heavy = { density: fact('1.5', 'g/mL') };
    const { amount, density } = mixOf([100, 150], {}, heavy); // 100 mL and 100 mL
    expect(amount).toEqual({ text: '200', unit: 'mL' });
    expect(density).toEqual({ text: '1.25', unit: 'g/mL' });
  });

  test('pigmented where any of it is, in flakes where any of it has them', () => {
    const white = { is: 'white-base', pigmentOfSolids: fact('30', '%') };
    const flakes = { is: 'tinter', pigmentOfSolids: fact('10', '%'), pigmentShape: 'flakes' };
    expect(mixOf([100], {})).not.toHaveProperty('pigment');
    // Equal volumes of solids: (30 + 0)/2 and (30 + 10)/2 per cent.
    expect(mixOf([100, 100], white, {}).pigment).toEqual({
      shareOfSolids: { text: '15', unit: '%' },
      shape: 'grains',
    });
    expect(mixOf([100, 100], white, flakes).pigment).toEqual({
      shareOfSolids: { text: '20', unit: '%' },
      shape: 'flakes',
    });
  });

  test('that contains what its parts contain, each once', () => {
    const acid = { contains: ['acid'] };
    expect(mixOf([1, 1, 1], acid, { contains: ['acid', 'oil'] }, {}).contains).toEqual(['acid', 'oil']);
    expect(mixOf([1], {})).not.toHaveProperty('contains');
  });
});
