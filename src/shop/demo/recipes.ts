import type { EntryOf } from '../../logbook/entry';
import { DEMO_RECIPES } from '../../words/demo';
import type { DemoIngredient, describeShelf } from './ingredients';
import type { Pen } from './pen';

type Shelf = ReturnType<typeof describeShelf>;
type Written = EntryOf<'recipe-written'>;
type Line = Written['lines'][number];
type Sheet = Pick<Written, 'name' | 'use' | 'note'>;

const CLEAR = { as: 'clear' } as const;

/** Writes the recipes of the demo, two of them in two versions; gives the id of the white that is in use. */
export function writeRecipes(pen: Pen, shelf: Shelf): string {
  const { clear, full, caddy, amber, edge, satin } = DEMO_RECIPES;
  const grams = (of: DemoIngredient, text: string): Line => ({
    ingredient: shelf[of],
    amount: { text, unit: 'g' },
  });
  const share = (of: DemoIngredient, text: string, ofWhat: 'lacquer' | 'mix'): Line => ({
    ingredient: shelf[of],
    amount: { text, unit: '%' },
    by: 'volume',
    of: ofWhat,
  });
  const write = (sheet: Sheet, lines: readonly Line[], atMs: number, previous?: string): string => {
    const recipe = pen.newId();
    const from = previous === undefined ? {} : { previous };
    pen.write({ kind: 'recipe-written', recipe, ...sheet, lines: [...lines], ...from }, atMs);
    return recipe;
  };

  const thinned = [grams('clear', '500'), share('thinner', '50', 'lacquer')];
  const dry = write({ name: clear.name, use: CLEAR, note: clear.first }, thinned, pen.daysAgo(39, 10));
  const retarded = [...thinned, share('retarder', '3', 'mix')];
  write({ name: clear.name, use: CLEAR, note: clear.note }, retarded, pen.daysAgo(14, 8), dry);
  const brushed = [grams('clear', '500'), share('thinner', '10', 'mix')];
  write({ name: full.name, use: CLEAR, note: full.note }, brushed, pen.daysAgo(38, 11));
  const toner = [grams('clear', '200'), grams('dye', '6'), share('thinner', '80', 'lacquer')];
  const tone = { as: 'dye-toner', passes: 3 } as const;
  write({ name: amber.name, use: tone, note: amber.note }, toner, pen.daysAgo(33, 16));
  const shade = [
    grams('clear', '150'),
    grams('umber', '5'),
    grams('black', '0.6'),
    share('thinner', '100', 'lacquer'),
  ];
  const along = { as: 'shading', where: edge.where, passes: 4 } as const;
  write({ name: edge.name, use: along, note: edge.note }, shade, pen.daysAgo(33, 16, 30));
  const dull = [grams('clear', '300'), grams('flatting', '24'), share('thinner', '40', 'lacquer')];
  write({ name: satin.name, use: CLEAR, note: satin.note }, dull, pen.daysAgo(21, 9));

  const hiding = { as: 'opaque', over: 'bare-wood', coatsToHide: 3 } as const;
  const yellow = [grams('base', '200'), grams('ochre', '3'), share('thinner', '60', 'lacquer')];
  const tooYellow = write({ name: caddy.name, use: hiding, note: caddy.first }, yellow, pen.daysAgo(8, 10));
  const white = [
    grams('base', '200'),
    grams('ochre', '1.6'),
    grams('umber', '0.3'),
    share('thinner', '60', 'lacquer'),
  ];
  return write({ name: caddy.name, use: hiding, note: caddy.note }, white, pen.daysAgo(7, 8), tooYellow);
}
