import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  composition,
  mixDensityKgM3,
  mixSolvents,
  mixVolumeSolids,
  mixWeightSolids,
} from '../../../src/science/mixing/composition';
import { contents, gathered, withKeepBack } from '../../../src/science/mixing/contents';
import { reweighed } from '../../../src/science/mixing/evaporated';
import { type Batch, batchMassKg, type Ingredient } from '../../../src/science/mixing/ingredient';
import { mixPigmentOfSolids, pigmentOfCritical } from '../../../src/science/mixing/mix-pigment';
import { volumeSolidsOf, weightSolidsOf } from '../../../src/science/mixing/solids';
import { vocContent } from '../../../src/science/mixing/voc';
import { volumeFractions } from '../../../src/science/solvents/blend';
import { solvent } from '../../../src/science/solvents/solvents';
import { anyMix, got } from './any-mix';

const toluene = [{ solvent: solvent('toluene'), volume: 1 }];
const shelf = (...list: Ingredient[]) => new Map(list.map((each) => [each.id, each]));
const kg = (ingredient: string, massKg: number) => ({ ingredient, massKg });

describe('let-downs', () => {
  const ingredients = shelf(
    { id: 'clear', kind: 'clear' },
    { id: 'black', kind: 'tinter' },
    {
      id: 'ten',
      kind: 'let-down',
      madeOf: [
        { ingredient: 'black', massFraction: 0.1 },
        { ingredient: 'clear', massFraction: 0.9 },
      ],
    },
    {
      id: 'one',
      kind: 'let-down',
      madeOf: [
        { ingredient: 'ten', massFraction: 0.1 },
        { ingredient: 'clear', massFraction: 0.9 },
      ],
    },
    { id: 'snake', kind: 'let-down', madeOf: [{ ingredient: 'tail', massFraction: 1 }] },
    { id: 'tail', kind: 'let-down', madeOf: [{ ingredient: 'snake', massFraction: 1 }] },
    { id: 'outer', kind: 'let-down', madeOf: [{ ingredient: 'snake', massFraction: 1 }] },
    { id: 'torn', kind: 'let-down', madeOf: [{ ingredient: 'gone', massFraction: 1 }] },
  );
  test('a 1 % let-down of a 10 % let-down opens to its tinter', () => {
    expect(got(contents([kg('one', 2), kg('black', 0.5)], ingredients))).toEqual([
      { ingredient: 'black', massKg: expect.closeTo(0.52, 12) }, // 2 x 0.1 x 0.1 + 0.5
      { ingredient: 'clear', massKg: expect.closeTo(1.98, 12) },
    ]);
  });
  test('one that leads back to itself is refused with its path', () => {
    expect(contents([kg('clear', 1), kg('outer', 1)], ingredients)).toEqual({
      ok: false,
      failure: { kind: 'contains-itself', path: ['snake', 'tail', 'snake'] },
    });
  });
  test('one whose ingredient was deleted says which', () => {
    expect(contents([kg('torn', 1)], ingredients)).toEqual({
      ok: false,
      failure: { kind: 'unknown-ingredient', ingredient: 'gone' },
    });
  });
  test('what is named twice is added up', () => {
    expect(gathered([kg('clear', 1), kg('black', 0.1), kg('black', 0.2), kg('ten', 3)])).toEqual([
      kg('clear', 1),
      { ingredient: 'black', massKg: expect.closeTo(0.3, 12) },
      kg('ten', 3),
    ]);
  });
  test('keeping 10 % back of what is mixed takes 10/9 of what is needed', () => {
    expect(withKeepBack(450, 0.1)).toBeCloseTo(500, 9);
  });
  test('mass is conserved through any let-downs of let-downs', () => {
    const fractions = fc.array(fc.double({ min: 0.01, max: 0.99, noNaN: true }), {
      minLength: 6,
      maxLength: 6,
    });
    fc.assert(
      fc.property(anyMix, fractions, ({ batch, ingredients: base }, shares) => {
        // Each let-down is made of the one before and of a base ingredient.
        const all = new Map(base);
        let below = batch[0]?.ingredient as string;
        const nested: Batch = shares.map((massFraction, i) => {
          const id = `let-down-${i}`;
          const other = batch[i % batch.length]?.ingredient as string;
          const madeOf = [
            { ingredient: below, massFraction },
            { ingredient: other, massFraction: 1 - massFraction },
          ];
          all.set(id, { id, kind: 'let-down', madeOf });
          below = id;
          return kg(id, i + 1);
        });
        const jar = gathered([...batch, ...nested]);
        const opened = got(contents(jar, all));
        expect(Math.abs(batchMassKg(opened) / (batchMassKg(batch) + 21) - 1)).toBeLessThan(1e-12);
        expect(opened.every(({ ingredient }) => base.has(ingredient))).toBe(true);
        expect(gathered(opened)).toEqual(opened);
      }),
    );
  });
});

describe('solids of an ingredient', () => {
  // 1 kg at 950 kg/m3 with 30 % weight solids in toluene at 868.5: 0.7/868.5 of 1/950 m3 is volatile: 76.57 %, solids 23.43 %.
  const lacquer: Ingredient = { id: 'lacquer', kind: 'clear', densityKgM3: 950, solvents: toluene };
  test('weight and volume solids lead to each other', () => {
    expect(got(volumeSolidsOf({ ...lacquer, weightSolids: 0.3 }))).toBeCloseTo(0.2343, 4);
    expect(got(weightSolidsOf({ ...lacquer, volumeSolids: 0.2343 }))).toBeCloseTo(0.3, 4);
  });
  test('what is known is not worked out again; a thinner leaves nothing', () => {
    expect(got(volumeSolidsOf({ ...lacquer, volumeSolids: 0.22, weightSolids: 0.3 }))).toBe(0.22);
    expect(got(weightSolidsOf({ id: 'thinner', kind: 'thinner' }))).toBe(0);
  });
  test.each([
    { of: { id: 'x', kind: 'clear' }, kind: 'no-solids' },
    { of: { id: 'x', kind: 'clear', weightSolids: 0.3 }, kind: 'no-density' },
    { of: { id: 'x', kind: 'clear', weightSolids: 0.3, densityKgM3: 950 }, kind: 'no-solvents' },
  ] as const)('$kind is said', ({ of, kind }) => {
    expect(volumeSolidsOf(of)).toEqual({ ok: false, failure: { kind, ingredient: 'x' } });
  });
});

describe('a thinned white, by hand', () => {
  const ingredients = shelf(
    {
      id: 'white',
      kind: 'white-base',
      densityKgM3: 1200,
      volumeSolids: 0.3,
      weightSolids: 0.5,
      pigmentOfSolids: 0.2,
      criticalPigment: 0.5,
      solvents: toluene,
    },
    {
      id: 'clear',
      kind: 'clear',
      densityKgM3: 950,
      volumeSolids: 0.2,
      weightSolids: 0.25,
      solvents: toluene,
    },
    {
      id: 'acetone',
      kind: 'thinner',
      densityKgM3: 792.3,
      solvents: [{ solvent: solvent('acetone'), volume: 1 }],
    },
  );
  // 1 L white, 1 L clear, 1 L acetone.
  const mix = got(composition([kg('white', 1.2), kg('clear', 0.95), kg('acetone', 0.7923)], ingredients));
  test.each([
    { what: 'density, kg/m3', found: mixDensityKgM3(mix), expected: 980.767 }, // 2.9423 kg in 3 L
    { what: 'volume solids', found: mixVolumeSolids(mix), expected: 0.166667 }, // (0.3 + 0.2)/3
    { what: 'weight solids', found: mixWeightSolids(mix), expected: 0.284641 }, // (0.6 + 0.2375)/2.9423
    { what: 'pigment of the dry film', found: mixPigmentOfSolids(mix), expected: 0.12 }, // 0.06/0.5
    { what: 'of the critical concentration', found: pigmentOfCritical(mix), expected: 0.24 }, // 0.12/0.5
  ])('$what', ({ found, expected }) => {
    expect(Math.abs(got(found) / expected - 1)).toBeLessThan(2e-6);
  });
  test('its solvents: 1.5 L toluene with 1 L acetone', () => {
    const blend = got(mixSolvents(mix));
    expect(blend.map((part) => part.solvent.id)).toEqual(['toluene', 'acetone']);
    expect(volumeFractions(blend)[0]).toBeCloseTo(0.6, 9);
  });
  test('its VOC: acetone does not count', () => {
    const { lessExemptKgM3, actualKgM3 } = got(vocContent(mix));
    // Volatile less acetone: 2.9423 - 0.8375 - 0.7923 = 1.3125 kg; in 3 L as it is, in 2 L less acetone.
    expect(actualKgM3).toBeCloseTo(437.5, 6);
    expect(lessExemptKgM3).toBeCloseTo(656.25, 6);
  });
});

test('VOC of a waterborne by the Method 24 formula, from its own oven figures', () => {
  // 1.2 kg/L, volatile 0.6 by mass, water 0.3: 1.2 x (0.6 - 0.3)/(1 - 1.2 x 0.3/0.99821) = 0.56309 kg/L, by hand.
  const solvents = [solvent('water'), solvent('2-butoxyethanol')].map((one) => ({
    solvent: one,
    volume: 0.3 / one.densityKgM3,
  }));
  const ingredients = shelf({ id: 'wb', kind: 'clear', densityKgM3: 1200, weightSolids: 0.4, solvents });
  const found = got(vocContent(got(composition([kg('wb', 5)], ingredients))));
  expect(found.lessExemptKgM3).toBeCloseTo(563.09, 1);
  expect(found.actualKgM3).toBeCloseTo(360, 6);
});

describe('two pigments', () => {
  test('add up the binder each needs', () => {
    const of = (id: string, pigmentOfSolids: number, criticalPigment: number): Ingredient => ({
      id,
      kind: 'tinter',
      densityKgM3: 1000,
      volumeSolids: 0.5,
      pigmentOfSolids,
      criticalPigment,
    });
    // 1 L each: pigment 0.2 and 0.1 L in 1 L of film; packed 0.2/0.5 + 0.1/0.4 = 0.65 L, so critical 0.3/0.65, ratio 0.65.
    const mix = got(composition([kg('a', 1), kg('b', 1)], shelf(of('a', 0.4, 0.5), of('b', 0.2, 0.4))));
    expect(got(pigmentOfCritical(mix))).toBeCloseTo(0.65, 12);
  });
  test.each([
    { of: { id: 'x', kind: 'tinter', volumeSolids: 0.3, densityKgM3: 1300 }, kind: 'no-pigment-share' },
    {
      of: { id: 'x', kind: 'tinter', volumeSolids: 0.3, densityKgM3: 1300, pigmentOfSolids: 0.3 },
      kind: 'no-critical-pigment',
    },
    { of: { id: 'x', kind: 'tinter', volumeSolids: 0.3 }, kind: 'no-density' },
  ] as const)('$kind is said', ({ of, kind }) => {
    const mix = got(composition([kg('x', 1)], shelf(of)));
    expect(pigmentOfCritical(mix)).toEqual({ ok: false, failure: { kind, ingredient: 'x' } });
  });
});

test('any mix lies between its parts, and half of it is the same', () => {
  fc.assert(
    fc.property(anyMix, ({ batch, ingredients }) => {
      const mix = got(composition(batch, ingredients));
      const halfMix = mix.map((part) => ({ ...part, massKg: part.massKg / 2 }));
      const densities = mix.map(({ ingredient }) => ingredient.densityKgM3 as number);
      const density = got(mixDensityKgM3(mix));
      expect(density).toBeGreaterThanOrEqual(Math.min(...densities) * (1 - 1e-9));
      expect(density).toBeLessThanOrEqual(Math.max(...densities) * (1 + 1e-9));
      for (const property of [mixDensityKgM3, mixVolumeSolids, mixWeightSolids, pigmentOfCritical] as const) {
        expect(got(property(halfMix))).toBeCloseTo(got(property(mix)), 9);
      }
      const volatileM3 = got(mixSolvents(mix)).reduce((sum, { volume }) => sum + volume, 0);
      const volumeM3 = batchMassKg(batch) / density;
      expect(volatileM3 / volumeM3).toBeCloseTo(1 - got(mixVolumeSolids(mix)), 9);
    }),
  );
});

describe('a jar weighed again', () => {
  const G = 1e-3;
  const jar = { massKg: 190 * G, densityKgM3: 950, volumeSolids: 0.2, solventDensityKgM3: 870, lostKg: 0 };
  test('17.4 g of solvent gone from 200 mL: 180 mL with 40 mL of solids', () => {
    const found = got(reweighed(jar, 172.6 * G, 0.1 * G));
    expect(found.lostKg / G).toBeCloseTo(17.4, 9);
    expect(found.volumeSolids).toBeCloseTo(40 / 180, 9);
    expect(found.densityKgM3).toBeCloseTo((172.6 / 180) * 1000, 9);
  });
  // 8.7 g are 10 mL: 210 mL with 40 mL of solids.
  test('as much as was lost before may be put back, and no more', () => {
    const lossy = { ...jar, lostKg: 8.7 * G };
    expect(got(reweighed(lossy, 198.7 * G, 0.1 * G)).volumeSolids).toBeCloseTo(40 / 210, 9);
    expect(reweighed(lossy, 199 * G, 0.1 * G)).toMatchObject({ ok: false });
  });
  test('a difference that the scale does not see is none', () => {
    expect(got(reweighed(jar, 189.96 * G, 0.1 * G))).toMatchObject({ lostKg: 0, volumeSolids: 0.2 });
  });
  // The scale shows tenths of a gram: from half of one on there is a difference.
  test.each([
    { weighed: 190.04, lost: 0 },
    { weighed: 189.96, lost: 0 },
    { weighed: 189.94, lost: 0.06 },
  ])('$weighed g: $lost g are gone', ({ weighed, lost }) => {
    expect(got(reweighed(jar, weighed * G, 0.1 * G)).lostKg / G).toBeCloseTo(lost, 9);
  });
  test('just half a division is none, and just all the solvent may be gone', () => {
    const round = { massKg: 2, densityKgM3: 1, volumeSolids: 0.25, solventDensityKgM3: 1, lostKg: 0 };
    for (const weighed of [1.5, 2.5]) expect(got(reweighed(round, weighed, 1)).lostKg).toBe(0);
    expect(got(reweighed(round, 0.5, 0.1)).volumeSolids).toBe(1);
  });
  test.each([
    { weighed: 190.06, kind: 'heavier-than-expected', byG: 0.06 },
    { weighed: 195, kind: 'heavier-than-expected', byG: 5 },
    { weighed: 40, kind: 'lost-more-than-solvent', byG: 10.8 }, // 150 g gone, 160 mL x 0.87 = 139.2 g of solvent
  ])('$weighed g: $kind', ({ weighed, kind, byG }) => {
    expect(reweighed(jar, weighed * G, 0.1 * G)).toEqual({
      ok: false,
      failure: { kind, byKg: expect.closeTo(byG * G, 9) },
    });
  });
});
