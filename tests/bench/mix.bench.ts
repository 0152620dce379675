import { performance } from 'node:perf_hooks';
import { test } from 'vitest';
import { fold } from '../../src/logbook/fold/fold';
import { searchRecipes } from '../../src/shop/recipe/search';
import { inTurn } from '../logbook/entries';
import { manyRecipes } from './many-recipes';

const RECIPES = 10_000;
const bodies = manyRecipes(RECIPES);

function milliseconds(work: () => unknown): string {
  const from = performance.now();
  work();
  return `${(performance.now() - from).toFixed(1)} ms`;
}

test(`search among ${RECIPES} recipes (the bar: 50 ms at 4 times slower, 12.5 ms here)`, () => {
  const entries = bodies.map(inTurn);
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
