import 'fake-indexeddb/auto';
import { describe, expect, test } from 'vitest';
import { describeIngredient, putIngredientAway } from '../../../src/actions/mix/ingredient';
import { writeRecipe } from '../../../src/actions/mix/recipe';
import { undo } from '../../../src/actions/undo';
import { scaled } from '../../../src/science/mixing/weigh/scaling';
import { batchOfLines, type TypedLine, typedLines } from '../../../src/shop/recipe/batch';
import { searchRecipes } from '../../../src/shop/recipe/search';
import { aShop, done } from '../a-shop';
import { aBench, agedWhite, line, writes } from './a-bench';

const USE = { as: 'clear' } as const;

describe('scenario E: scaling drops', () => {
  test('165 mL of a 60 mL recipe is a factor of 2.75: 1.12, 0.47 and 0.094 g of the tinters', async () => {
    const open = await aShop();
    const bench = await aBench(open);
    const batch = scaled(done(batchOfLines(agedWhite(bench), open.shop.value)), 2.75);
    const gramsOf = (id: string) => (batch.find(({ ingredient }) => ingredient === id)?.massKg ?? 0) * 1000;
    expect(gramsOf(bench.ochre)).toBeCloseTo(1.122, 6); // expected: 1.12
    expect(gramsOf(bench.umber)).toBeCloseTo(0.4675, 6); // 0.47
    expect(gramsOf(bench.black)).toBeCloseTo(0.0935, 6); // 0.094
  });
});

describe('a recipe', () => {
  test('is kept as typed, and a changed one is a new version that leads back', async () => {
    const open = await aShop();
    const bench = await aBench(open);
    const first = await writes(open, agedWhite(bench));
    const second = await writes(open, [...agedWhite(bench), line(bench.clear, '1,5', 'mL')], first.recipe);
    const { recipes } = open.shop.value;
    const old = recipes.get(first.recipe);
    const fresh = recipes.get(second.recipe);
    expect(old).toMatchObject({ version: 1, next: second.recipe });
    expect(fresh).toMatchObject({ version: 2, previous: first.recipe });
    expect(fresh && typedLines(fresh).at(-1)?.amount).toEqual({ text: '1,5', unit: 'mL' });
    expect(searchRecipes('aged', open.shop.value).map(({ id }) => id)).toEqual([second.recipe]);
  });

  const percent = (ingredient: string, of: 'lacquer' | 'mix', text: string): TypedLine => ({
    ingredient,
    amount: { text, unit: '%' },
    of,
    by: 'volume',
  });
  test.each([
    // expected: 10 % of the lacquer is 9.1 % of the mix
    { of: 'lacquer', thinnerMl: 10 },
    { of: 'mix', thinnerMl: 100 / 9 },
  ] as const)('10 % of the $of is $thinnerMl mL to 100 mL', async ({ of, thinnerMl }) => {
    const open = await aShop();
    const bench = await aBench(open);
    const lines = [line(bench.clear, '100', 'mL'), percent(bench.thinner, of, '10')];
    const batch = done(batchOfLines(lines, open.shop.value));
    expect((batch[1]?.massKg ?? 0) / 0.84e-3).toBeCloseTo(thinnerMl, 6);
  });
});

describe('what cannot be', () => {
  const REFUSED = [
    { why: 'nothing', of: () => [], sentence: 'Enter at least one ingredient' },
    { why: 'an amount of nought', of: (b) => [line(b.white, '0', 'g')], sentence: 'above 0' },
    { why: 'an amount below nought', of: (b) => [line(b.white, '-5', 'g')], sentence: 'above 0' },
    { why: 'no number', of: (b) => [line(b.white, 'some', 'g')], sentence: 'above 0' },
    { why: 'drops of unknown weight', of: (b) => [line(b.white, '5', 'drops')], sentence: 'Weigh 20 drops' },
    {
      why: 'a stranger',
      of: () => [line('019caa01-0000-7000-9000-0000000000ff', '5', 'g')],
      sentence: 'not in the shop',
    },
  ] satisfies readonly {
    why: string;
    of: (bench: Awaited<ReturnType<typeof aBench>>) => readonly TypedLine[];
    sentence: string;
  }[];
  test.each(REFUSED)('$why is refused in a sentence', async ({ of, sentence }) => {
    const open = await aShop();
    const bench = await aBench(open);
    const lines = of(bench) as Parameters<typeof writeRecipe>[1]['lines'];
    const refused = await writeRecipe(open.needs, { name: 'Mix', use: USE, lines });
    expect(refused).toMatchObject({ ok: false, failure: { sentence: expect.stringContaining(sentence) } });
    expect(open.shop.value.recipes.size).toBe(0);
  });

  test('a volume without a density names the ingredient', async () => {
    const open = await aShop();
    const { ingredient } = done(await describeIngredient(open.needs, { name: 'Mystery', is: 'clear' }));
    const lines = [line(ingredient, '5', 'mL')] as unknown as Parameters<typeof writeRecipe>[1]['lines'];
    expect(await writeRecipe(open.needs, { name: 'Mix', use: USE, lines })).toMatchObject({
      ok: false,
      failure: { sentence: 'Mystery has no density yet. Give it one, or give its amount in grams.' },
    });
  });

  test('a let-down of itself, through any number of others, is refused', async () => {
    const open = await aShop();
    const { clear, black } = await aBench(open);
    const made = (name: string, of: string, id?: string) =>
      describeIngredient(
        open.needs,
        {
          name,
          is: 'let-down',
          madeOf: [
            { ingredient: of, massFraction: 0.1 },
            { ingredient: clear, massFraction: 0.9 },
          ],
        },
        id,
      );
    const tenth = done(await made('Tenth', black)).ingredient;
    const hundredth = done(await made('Hundredth', tenth)).ingredient;
    const refused = await made('Tenth', hundredth, tenth);
    expect(refused).toMatchObject({
      ok: false,
      failure: { sentence: expect.stringContaining('end up in itself') },
    });
    expect(open.shop.value.ingredients.get(tenth)?.madeOf?.[0]?.ingredient).toBe(black);
  });

  test('an ingredient in use stays: it may be put away, but not undone', async () => {
    const open = await aShop();
    const bench = await aBench(open);
    await writes(open, agedWhite(bench));
    const entry = [...open.shop.value.entries.values()].find(
      (one) => one.kind === 'ingredient-described' && one.ingredient === bench.black,
    );
    expect(await undo(open.needs, entry?.id ?? '')).toMatchObject({
      ok: false,
      failure: { sentence: expect.stringContaining('Later work depends on this entry') },
    });
    done(await putIngredientAway(open.needs, bench.black));
    expect(open.shop.value.ingredients.get(bench.black)?.putAwayMs).toBeDefined();
    expect(batchOfLines(agedWhite(bench), open.shop.value).ok).toBe(true);
  });
});
