import 'fake-indexeddb/auto';
import { describe, expect, test } from 'vitest';
import { fillIn, usualText } from '../../../src/actions/mix/fill-in';
import { describeIngredient } from '../../../src/actions/mix/ingredient';
import { finishOfIngredient, usualFacts } from '../../../src/actions/mix/usual-facts';
import { usualIngredient } from '../../../src/actions/mix/usual-ingredient';
import { canSolvents, thinnerSorts, USUAL_JARS, usualThinner } from '../../../src/actions/mix/usual-jar';
import { FINISHES } from '../../../src/logbook/kinds/mix/jar';
import { lackingIn } from '../../../src/shop/recipe/lacking';
import { aShop, done } from '../a-shop';

const LACQUERS = ['nitrocellulose', 'acrylic', 'cab'] as const;

describe('what is usual, where nobody has said otherwise', () => {
  test.each(FINISHES)(
    '%s: every blend adds up to a whole, and only a lacquer has more than one thinner',
    (finish) => {
      const isLacquer = LACQUERS.some((one) => one === finish);
      const sorts = thinnerSorts(finish);
      expect(sorts).toEqual(isLacquer ? ['usual', 'fast', 'slow'] : ['usual']);
      const can = canSolvents(finish).solvents;
      expect(can !== undefined).toBe(isLacquer);
      const own = (['clear', 'white-base', 'thinner'] as const).flatMap(
        (is) => usualIngredient(is, finish).solvents ?? [],
      );
      const blends = [...sorts.map((sort) => usualThinner(finish, sort)), ...(can ? [can] : [])];
      for (const blend of blends) expect(blend.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 9);
      expect(own.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(3, 9);
      expect(usualIngredient('clear', finish).volumeSolids).toBe(USUAL_JARS[finish].volumeSolids);
    },
  );

  test('water thins what is waterborne, alcohol shellac; a fast thinner has more of what leaves first', () => {
    expect(usualThinner('waterborne', 'usual')).toEqual([{ solvent: 'water', share: 1 }]);
    expect(usualThinner('shellac', 'usual')).toEqual([{ solvent: 'ethanol', share: 1 }]);
    const acetone = (sort: 'fast' | 'slow') =>
      usualThinner('acrylic', sort).find(({ solvent }) => solvent === 'acetone')?.share ?? 0;
    expect(acetone('fast')).toBeGreaterThan(acetone('slow'));
    expect(usualIngredient('thinner', 'waterborne').density).toBe('1');
    expect(Number(usualIngredient('thinner', 'acrylic').density)).toBeLessThan(1);
    expect(Number(usualIngredient('clear', 'waterborne').density)).toBeGreaterThan(1);
    expect(Number(usualIngredient('clear', 'acrylic').density)).toBeLessThan(1);
  });

  test.each([
    { is: 'clear', knows: ['finish', 'density', 'volumeSolids', 'solvents'] },
    {
      is: 'white-base',
      knows: ['finish', 'density', 'volumeSolids', 'pigmentOfSolids', 'criticalPigment', 'solvents'],
    },
    { is: 'thinner', knows: ['density', 'solvents'] },
    {
      is: 'tinter',
      knows: ['density', 'volumeSolids', 'pigmentOfSolids', 'criticalPigment', 'solvents', 'strength'],
    },
    { is: 'dye', knows: ['density', 'volumeSolids', 'solvents', 'strength'] },
    { is: 'retarder', knows: ['density', 'solvents'] },
    { is: 'let-down', knows: [] },
  ] as const)('of a $is: $knows, each marked as usual', ({ is, knows }) => {
    const facts = usualFacts(is, 'shellac');
    expect(Object.keys(facts)).toEqual(knows);
    expect(JSON.stringify(facts)).not.toContain('measured');
    if ('density' in facts) expect(facts.density).toMatchObject({ from: 'usual', value: { unit: 'g/mL' } });
  });

  test('an ingredient of which nobody said the finish is of lacquer', () => {
    expect(finishOfIngredient({})).toBe('nitrocellulose');
    expect(finishOfIngredient({ finish: 'waterborne' })).toBe('waterborne');
  });
});

describe('what is lacking of a mix is filled in', () => {
  const measured = (text: string) => ({ value: { text, unit: 'g/mL' }, from: 'measured' }) as const;

  test('with what was typed as measured, with what was left as usual; what was known stays as it was typed', async () => {
    const { needs, shop } = await aShop();
    const { ingredient } = done(
      await describeIngredient(needs, {
        name: 'White',
        is: 'white-base',
        density: measured('1,21'),
        note: 'from the blue tin',
      }),
    );
    const lacking = lackingIn([{ ingredient, inDrops: true }], shop.value);
    const [one] = lacking;
    expect(one?.facts.map((fact) => [fact, usualText(one, fact)])).toEqual([
      ['volumeSolids', '26'],
      ['pigmentOfSolids', '18'],
      ['solvents', undefined],
      ['dropMass', '0.04'],
    ]);
    done(await fillIn(needs, lacking, { [ingredient]: { volumeSolids: '31', pigmentOfSolids: '18' } }));
    const known = shop.value.ingredients.get(ingredient);
    expect(known).toMatchObject({
      name: 'White',
      note: 'from the blue tin',
      density: { value: { typed: { text: '1,21' } }, from: 'measured' },
      volumeSolids: { value: { typed: { text: '31', unit: '%' } }, from: 'measured' },
      pigmentOfSolids: { value: { typed: { text: '18' } }, from: 'usual' }, // typed, and just what is usual
      solvents: { from: 'usual' },
      dropMass: { value: { typed: { text: '0.04', unit: 'g' } }, from: 'usual' },
    });
    expect(lackingIn([{ ingredient, inDrops: true }], shop.value)).toEqual([]);
  });

  test('and stops at the first that the logbook refuses', async () => {
    const { needs, shop } = await aShop();
    const made = async (name: string) =>
      done(await describeIngredient(needs, { name, is: 'clear' })).ingredient;
    const [one, two] = [await made('One'), await made('Two')];
    const before = shop.value.entries.size;
    const lacking = lackingIn([{ ingredient: one }, { ingredient: two }], shop.value);
    expect(await fillIn(needs, lacking, { [one]: { density: 'heavy' } })).toMatchObject({ ok: false });
    expect(shop.value.entries.size).toBe(before);
  });
});
