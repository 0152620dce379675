import type { Shop } from '../../logbook/fold/fold';
import type { Recipe } from '../../logbook/fold/mix/recipes';

type Searched = Pick<Shop, 'recipes' | 'ingredients'>;
interface Indexed {
  readonly recipe: Recipe;
  readonly text: string;
}

const indexes = new WeakMap<Shop['recipes'], readonly Indexed[]>();
// A recipe's own words never change, and its lines are the same object in every fold.
const ownWords = new WeakMap<Recipe['lines'], string>();
const SPACE = /\s+/;
const BEYOND_ASCII = /[\u0080-\uffff]/;

/** Lower case, without accents: "Ébène" is found by "ebene". */
const plain = (text: string): string =>
  (BEYOND_ASCII.test(text) ? text.normalize('NFD').replace(/\p{M}/gu, '') : text).toLowerCase();

/** The newest version of every recipe that is not put away, newest first, where each word of the query stands somewhere in it. */
export function searchRecipes(query: string, shop: Searched): readonly Recipe[] {
  const words = plain(query)
    .split(SPACE)
    .filter((word) => word !== '');
  return indexOf(shop)
    .filter(({ text }) => words.every((word) => text.includes(word)))
    .map(({ recipe }) => recipe);
}

function indexOf({ recipes, ingredients }: Searched): readonly Indexed[] {
  const known = indexes.get(recipes);
  if (known) return known;
  const names = new Map([...ingredients.values()].map(({ id, name }) => [id, plain(name)]));
  const fresh: Indexed[] = [];
  for (const recipe of recipes.values())
    if (recipe.next === undefined && recipe.putAwayMs === undefined)
      fresh.push({ recipe, text: wordsOf(recipe) + namesOf(recipe, names) });
  fresh.reverse();
  indexes.set(recipes, fresh);
  return fresh;
}

function wordsOf({ name, note, use, lines }: Recipe): string {
  const known = ownWords.get(lines);
  if (known !== undefined) return known;
  const fresh = plain([name, note ?? '', use.as, use.as === 'shading' ? use.where : ''].join(' '));
  ownWords.set(lines, fresh);
  return fresh;
}

function namesOf({ lines }: Recipe, names: ReadonlyMap<string, string>): string {
  let text = '';
  for (const { ingredient } of lines) text += ` ${names.get(ingredient) ?? ''}`;
  return text;
}
