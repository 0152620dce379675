import 'fake-indexeddb/auto';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fillFromWeighUp, pouredBatch } from '../../../src/actions/mix/fill-from-weigh-up';
import { dropWeighUp, overPouredLine, pour, standingOf } from '../../../src/actions/mix/weigh-up';
import { undo } from '../../../src/actions/undo';
import { batchMassKg } from '../../../src/science/mixing/ingredient';
import { scaled } from '../../../src/science/mixing/weigh/scaling';
import { jarFilm } from '../../../src/shop/jar/film';
import { batchOfLines } from '../../../src/shop/recipe/batch';
import { aShop, done, newName, storeOn } from '../a-shop';
import { aBench, agedWhite, begins, line, poursAll, writes } from './a-bench';

const G = 1e-3;

async function aWeighUp(isTared = false, name = newName()) {
  const open = await aShop({ store: storeOn(name) });
  const bench = await aBench(open);
  const { recipe } = await writes(open, [
    line(bench.white, '100', 'g'),
    line(bench.ochre, '2', 'g'),
    line(bench.thinner, '50', 'g'),
  ]);
  const plan = [
    { ingredient: bench.white, massKg: 100 * G },
    { ingredient: bench.ochre, massKg: 2 * G },
    { ingredient: bench.thinner, massKg: 50 * G },
  ];
  const id = await begins(open, recipe, plan, isTared);
  const weighUp = () => {
    const found = open.shop.value.weighUps.get(id);
    if (!found) throw new Error('gone');
    return found;
  };
  return { open, bench, recipe, id, weighUp, name };
}

describe('a weigh-up', () => {
  test('shows running totals, or each pour alone where the scale is tared', async () => {
    for (const [isTared, targetG] of [
      [false, 102],
      [true, 2],
    ] as const) {
      const { open, weighUp } = await aWeighUp(isTared);
      done(await pour(open.needs, weighUp(), 0, '100'));
      expect(standingOf(weighUp())).toMatchObject({ next: 1, targetKg: expect.closeTo(targetG * G, 9) });
    }
  });

  test('over-poured by a tenth grows by a tenth, and tops up what was poured before', async () => {
    const { open, weighUp } = await aWeighUp();
    done(await pour(open.needs, weighUp(), 0, '100'));
    done(await pour(open.needs, weighUp(), 1, '102.2'));
    const { factor, moreKg, next, targetKg } = standingOf(weighUp());
    expect(factor).toBeCloseTo(1.1, 9);
    expect(moreKg).toBeCloseTo(15.2 * G, 9); // 152 g x 0.1
    expect(next).toBe(2); // thinner before the top-up of white
    expect(targetKg).toBeCloseTo((102.2 + 55) * G, 9);
  });

  test('goes on blaming the line that was poured over, though later ones are rounded a little higher', async () => {
    const { open, weighUp } = await aWeighUp();
    done(await pour(open.needs, weighUp(), 0, '110')); // a tenth over
    expect(overPouredLine(weighUp())).toBe(0);
    done(await pour(open.needs, weighUp(), 1, '112.204')); // 2.204 g where 2.2 is asked for
    done(await pour(open.needs, weighUp(), 2, '167.208')); // 55.004 where 55
    expect(overPouredLine(weighUp())).toBe(0);
    expect(standingOf(weighUp()).next).toBeUndefined();
  });

  test('names no line over-poured where each got what was asked for', async () => {
    const { weighUp, open } = await aWeighUp(true);
    const grams = (weighUp().plan[0]?.massKg ?? 0) * 1000;
    done(await pour(open.needs, weighUp(), 0, String(grams)));
    expect(standingOf(weighUp()).factor).toBe(1);
    expect(overPouredLine(weighUp())).toBeUndefined();
  });

  test('goes on after the app was killed between any two taps', async () => {
    const { id, name, weighUp, open } = await aWeighUp();
    done(await pour(open.needs, weighUp(), 0, '100.5'));
    const again = await aShop({ store: storeOn(name) });
    expect(again.shop.value.weighUps.get(id)).toEqual(weighUp());
    await poursAll(again, id);
    expect(standingOf(again.shop.value.weighUps.get(id) ?? weighUp()).next).toBeUndefined();
  });

  test('refuses less than the scale showed before, and nonsense, and keeps what was poured', async () => {
    const { open, weighUp } = await aWeighUp();
    done(await pour(open.needs, weighUp(), 0, '100'));
    for (const text of ['99', '100']) {
      const refused = await pour(open.needs, weighUp(), 1, text);
      expect(refused).toMatchObject({
        ok: false,
        failure: { fields: { scale: expect.stringContaining('100 g') } },
      });
    }
    for (const text of ['', '-3', 'a lot', '0'])
      expect((await pour(open.needs, weighUp(), 1, text)).ok).toBe(false);
    expect(weighUp().pours).toHaveLength(1);
  });

  test('is undone pour by pour, the last first', async () => {
    const { open, weighUp } = await aWeighUp();
    const first = done(await pour(open.needs, weighUp(), 0, '100'));
    const second = done(await pour(open.needs, weighUp(), 1, '102'));
    expect(await undo(open.needs, first.id)).toMatchObject({
      ok: false,
      failure: { sentence: 'Later pours depend on this one. Undo the last pour first.' },
    });
    done(await undo(open.needs, second.id));
    done(await undo(open.needs, first.id));
    expect(weighUp()).toMatchObject({ pours: [], totalKg: 0 });
  });

  test('that was given up, or has become a jar, takes no more pours', async () => {
    const one = await aWeighUp();
    done(await dropWeighUp(one.open.needs, one.id));
    expect((await pour(one.open.needs, one.weighUp(), 0, '100')).ok).toBe(false);
    const other = await aWeighUp();
    await poursAll(other.open, other.id);
    done(await fillFromWeighUp(other.open.needs, other.weighUp(), { name: 'Jar' }));
    expect((await pour(other.open.needs, other.weighUp(), 0, '500')).ok).toBe(false);
    expect((await fillFromWeighUp(other.open.needs, other.weighUp(), { name: 'Twice' })).ok).toBe(false);
  });

  test('however much is poured over, ends on the recipe’s ratios with everything in the jar', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.boolean(),
        fc.array(fc.double({ min: 0, max: 0.6, noNaN: true }), { minLength: 4, maxLength: 4 }),
        async (isTared, over) => {
          const { open, id, weighUp } = await aWeighUp(isTared);
          await poursAll(open, id, over);
          const plan = weighUp().plan;
          const poured = pouredBatch(weighUp());
          const factor = batchMassKg(poured) / batchMassKg(plan);
          for (const [i, { massKg }] of poured.entries())
            expect(Math.abs(massKg - (plan[i]?.massKg ?? 0) * factor)).toBeLessThan(0.02 * G); // the scale's steps
          const filled = done(await fillFromWeighUp(open.needs, weighUp(), { name: 'Jar' }));
          const jar = open.shop.value.jars.get(filled.jar);
          const massKg = (jar?.amount?.si ?? 0) * (jar?.density?.si ?? 0);
          expect(massKg).toBeCloseTo(batchMassKg(poured), 6);
        },
      ),
      { numRuns: 12 },
    );
  });
});

describe('a jar that was weighed up', () => {
  test('is a product of its own, with the solids and pigment of what was poured', async () => {
    const open = await aShop();
    const bench = await aBench(open);
    const { recipe } = await writes(open, agedWhite(bench));
    const batch = batchOfLines(agedWhite(bench), open.shop.value);
    const id = await begins(open, recipe, scaled(done(batch), 2.75));
    await poursAll(open, id);
    const weighUp = open.shop.value.weighUps.get(id);
    if (!weighUp) throw new Error('gone');
    const { jar } = done(await fillFromWeighUp(open.needs, weighUp, { name: 'Aged white' }));
    const filled = open.shop.value.jars.get(jar);
    if (!filled) throw new Error('no jar');
    // By hand: 40 mL x 0.26 + 18 drops x 0.034 g / 1.5 g/mL x 0.4 = 10.4 + 0.1632 mL in 60.408 mL
    const film = jarFilm(filled);
    expect(film.volumeSolids).toBeCloseTo(10.5632 / 60.408, 4);
    // 10.4 x 0.18 + 0.1632 x 0.5 of 10.5632
    expect(film.pigment).toBeCloseTo((1.872 + 0.0816) / 10.5632, 4);
    expect(filled.amount?.si).toBeCloseTo(60.408e-6 * 2.75, 8);
    expect(film.solvents.map(({ id: solvent, share }) => [solvent, share])).toEqual([
      ['toluene', expect.closeTo(0.5, 6)],
      ['n-butyl-acetate', expect.closeTo(0.5, 6)],
    ]);
    expect(open.shop.value.weighUps.get(id)?.jar).toBe(jar);
  });

  test('cannot be made while a fact is missing: the sentence names the ingredient, and no pour is lost', async () => {
    const { open, weighUp, bench, id } = await aWeighUp();
    await poursAll(open, id);
    const { describeIngredient } = await import('../../../src/actions/mix/ingredient');
    done(await describeIngredient(open.needs, { name: 'Ochre', is: 'tinter' }, bench.ochre));
    const refused = await fillFromWeighUp(open.needs, weighUp(), { name: 'Jar' });
    expect(refused).toMatchObject({ ok: false, failure: { sentence: expect.stringContaining('Ochre') } });
    expect(weighUp().pours).toHaveLength(3);
  });
});
