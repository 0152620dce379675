import { expect, test } from 'vitest';
import type { EntryBody } from '../../../src/logbook/entry';
import { fold } from '../../../src/logbook/fold/fold';
import { searchRecipes } from '../../../src/shop/recipe/search';
import { id, inTurn } from '../../logbook/entries';

const ingredient = (n: number, name: string): EntryBody => ({
  kind: 'ingredient-described',
  ingredient: id(n),
  name,
  is: 'tinter',
});
const recipe = (
  n: number,
  name: string,
  of: number,
  more: { note?: string; previous?: string } = {},
): EntryBody => ({
  kind: 'recipe-written',
  recipe: id(n),
  name,
  use: { as: 'shading', where: 'Burst' },
  lines: [{ ingredient: id(of), amount: { text: '1', unit: 'g' } }],
  ...more,
});
const shop = fold(
  [
    ingredient(0x01, 'Raw umber'),
    ingredient(0x02, 'Ébène dye'),
    recipe(0x11, 'Aged white', 0x01, { note: 'For the radio' }),
    recipe(0x12, 'Aged white', 0x01, { previous: id(0x11) }),
    recipe(0x13, 'Tobacco', 0x02),
    recipe(0x14, 'Old gold', 0x01),
    { kind: 'recipe-put-away', recipe: id(0x14) } as const,
  ].map(inTurn),
);

test.each([
  { query: '', found: [0x13, 0x12] }, // newest first, newest versions, none that is archived
  { query: 'AGED', found: [0x12] },
  { query: 'umber aged', found: [0x12] },
  { query: 'ebene', found: [0x13] },
  { query: 'burst shading', found: [0x13, 0x12] },
  { query: 'radio', found: [] }, // only in the old version
  { query: 'gold', found: [] },
])('"$query" finds what holds each of its words', ({ query, found }) => {
  expect(searchRecipes(query, shop).map((one) => one.id)).toEqual(found.map(id));
});
