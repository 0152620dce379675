import type { Recipe } from '../../../logbook/fold/mix/recipes';

type Recipes = ReadonlyMap<string, Recipe>;

/** The newest version that a recipe led to. */
export function newestOf(recipe: Recipe, recipes: Recipes): Recipe {
  const next = recipe.next === undefined ? undefined : recipes.get(recipe.next);
  return next ? newestOf(next, recipes) : recipe;
}

/** Every version of a recipe in one line of descent, the newest first. */
export function versionsOf(recipe: Recipe, recipes: Recipes): readonly Recipe[] {
  const versions: Recipe[] = [];
  let one: Recipe | undefined = newestOf(recipe, recipes);
  while (one) {
    versions.push(one);
    one = one.previous === undefined ? undefined : recipes.get(one.previous);
  }
  return versions;
}
