import type { Shop } from './fold/fold';
import type { Recipe } from './fold/recipes';

type Searched = Pick<Shop, 'recipes' | 'ingredients'>;
interface Indexed {
  readonly recipe: Recipe;
  readonly text: string;
}

const indexes = new WeakMap<Shop['recipes'], readonly Indexed[]>();
const SPACE = /\s+/;

/** Lower case, without accents: "Ébène" is found by "ebene". */
const plain = (text: string): string => text.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase();

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
  const names = new Map([...ingredients.values()].map(({ id, name }) => [id, name]));
  const fresh = [...recipes.values()]
    .filter(({ next, putAwayMs }) => next === undefined && putAwayMs === undefined)
    .map((recipe) => ({ recipe, text: plain(textOf(recipe, names)) }))
    .reverse();
  indexes.set(recipes, fresh);
  return fresh;
}

const textOf = ({ name, note, use, lines }: Recipe, names: ReadonlyMap<string, string>): string =>
  [
    name,
    note ?? '',
    use.as,
    use.as === 'shading' ? use.where : '',
    ...lines.map(({ ingredient }) => names.get(ingredient) ?? ''),
  ].join(' ');
