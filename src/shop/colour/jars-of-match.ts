import type { Shop } from '../../logbook/fold/fold';
import type { Jar } from '../../logbook/fold/mix/jars';
import type { Match } from '../../logbook/fold/piece/matches';
import { jarsOfRecipe } from '../recipe/what-it-made';

/** The jars that hold the recipe a match became, the newest first. */
export const jarsOfMatch = ({ accepted }: Pick<Match, 'accepted'>, shop: Shop): Jar[] =>
  accepted ? jarsOfRecipe(accepted.recipe, shop).toReversed() : [];

/** The match that a recipe came from, by any of its versions; undefined of one that was written by hand. */
export function matchOfRecipe(
  recipe: string,
  { matches, recipes }: Pick<Shop, 'matches' | 'recipes'>,
): Match | undefined {
  const line = new Set<string>();
  for (let id: string | undefined = recipe; id !== undefined && !line.has(id); id = recipes.get(id)?.previous)
    line.add(id);
  return [...matches.values()].findLast(
    ({ accepted }) => accepted !== undefined && line.has(accepted.recipe),
  );
}

/** The match whose recipe is in a jar; undefined of one that holds something else. */
export function matchOfJar({ weighUp }: Pick<Jar, 'weighUp'>, shop: Shop): Match | undefined {
  const recipe = weighUp === undefined ? undefined : shop.weighUps.get(weighUp)?.recipe;
  return recipe === undefined ? undefined : matchOfRecipe(recipe, shop);
}
