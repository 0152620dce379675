import type { Locator } from 'playwright-core';
import { goTo, page } from '../app';
import { button, choose, field, unfold } from '../on-screen';

export interface Facts {
  readonly drops?: string;
  readonly density?: string;
}

export async function addIngredient(
  sort: RegExp,
  name: string,
  { drops, density }: Facts = {},
): Promise<void> {
  await goTo('#/mix/ingredient/new', 'A new ingredient');
  await choose(sort);
  await field('Name').fill(name);
  if (drops !== undefined) await unfold('Drops');
  if (drops !== undefined) await field('Weight of the drops').fill(drops);
  if (density !== undefined) await unfold('Properties');
  if (density !== undefined) await field('Density').fill(density);
  await button('Save').tap();
  await page.getByText(`${name} is saved.`).waitFor();
}

export type Line = readonly [name: string, amount: string, unit: string];

export async function writeRecipe(name: string, lines: readonly Line[]): Promise<void> {
  await goTo('#/mix/recipe/new', 'A new recipe');
  await field('Name of the recipe').fill(name);
  for (const [i, [ingredient, amount, unit]] of lines.entries()) {
    if (i > 0) await button('Another ingredient').tap();
    const row = page.getByRole('group', { name: `Ingredient ${i + 1}` });
    await row.getByRole('combobox', { name: `Ingredient ${i + 1}` }).selectOption({ label: ingredient });
    await row.getByRole('textbox', { name: 'Amount' }).fill(amount);
    await row.getByRole('combobox', { name: 'Unit' }).selectOption({ label: unit });
  }
  await button('Save the recipe').tap();
  await page.getByRole('heading', { level: 1, name }).waitFor();
}

/** The bench of scenario E: a drop of each tinter weighs 0.034 g. */
export async function agedWhite(): Promise<void> {
  await addIngredient(/^White base/, 'White');
  await addIngredient(/^Clear/, 'Clear gloss');
  await addIngredient(/^Thinner/, 'Thinner');
  await addIngredient(/^Tinter/, 'Ochre', { drops: '0.68' });
  await addIngredient(/^Tinter/, 'Umber', { drops: '0.68' });
  await addIngredient(/^Tinter/, 'Black', { drops: '0.68' });
  await writeRecipe('Aged white', [
    ['White', '40', 'mL'],
    ['Thinner', '20', 'mL'],
    ['Ochre', '12', 'drops'],
    ['Umber', '5', 'drops'],
    ['Black', '1', 'drops'],
  ]);
}

export const textOf = async (some: Locator): Promise<string> => (await some.textContent()) ?? '';
