import { type ActionNeeds, type Logged, log, type Said } from '../log';

/** Describes an ingredient, a new one unless its id is given; the description replaces the one before it. */
export const describeIngredient = (
  needs: ActionNeeds,
  said: Omit<Said<'ingredient-described'>, 'ingredient'>,
  ingredient = needs.newId(),
): Logged<'ingredient-described'> => log(needs, 'ingredient-described', { ...said, ingredient });

/** No longer offers an ingredient; what was made with it stays. */
export const putIngredientAway = (needs: ActionNeeds, ingredient: string): Logged<'ingredient-put-away'> =>
  log(needs, 'ingredient-put-away', { ingredient });
