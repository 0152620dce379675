import { performance } from 'node:perf_hooks';
import { test } from 'vitest';
import type { EntryBody } from '../../src/logbook/entry';
import { fold } from '../../src/logbook/fold/fold';
import { searchRecipes } from '../../src/logbook/recipe-search';
import { entry, id } from '../logbook/entries';

const RECIPES = 10_000;
const WORDS = ['aged', 'white', 'cream', 'tobacco', 'burst', 'amber', 'ivory', 'grey', 'ebony', 'honey'];
const word = (n: number): string => WORDS[n % WORDS.length] ?? '';

const bodies: EntryBody[] = WORDS.map((name, n) => ({
  kind: 'ingredient-described',
  ingredient: id(n + 1),
  name: `Tinter ${name}`,
  is: 'tinter',
}));
for (let n = 0; n < RECIPES; n++)
  bodies.push({
    kind: 'recipe-written',
    recipe: id(100 + n),
    name: `${word(n)} ${word(Math.floor(n / 10))} ${n}`,
    use: { as: 'opaque', over: 'white' },
    note: `For ${word(n + 3)} pieces, three coats, dried card number ${n}`,
    lines: [1, 2, 3, 4].map((k) => ({
      ingredient: id(((n + k) % WORDS.length) + 1),
      amount: { text: String(k), unit: 'g' },
    })),
  });

function milliseconds(work: () => unknown): string {
  const from = performance.now();
  work();
  return `${(performance.now() - from).toFixed(1)} ms`;
}

test(`search among ${RECIPES} recipes (the bar: 50 ms at 4 times slower, 12.5 ms here)`, () => {
  const entries = bodies.map((body, n) => entry(n + 1, body));
  const folded = (): ReturnType<typeof fold> => fold(entries);
  console.table([
    { what: 'first search, index and all', took: milliseconds(() => searchRecipes('aged', folded())) },
  ]);
  const shop = folded();
  console.table([
    {
      what: 'fold and search after one more entry',
      took: milliseconds(() => searchRecipes('aged', folded())),
    },
    { what: 'fold', took: milliseconds(folded) },
    {
      what: 'first search of this shop (makes the index)',
      took: milliseconds(() => searchRecipes('aged', shop)),
    },
    { what: 'one word', took: milliseconds(() => searchRecipes('cream', shop)) },
    { what: 'three words', took: milliseconds(() => searchRecipes('ivory burst 77', shop)) },
    { what: 'no match', took: milliseconds(() => searchRecipes('turquoise', shop)) },
  ]);
});
