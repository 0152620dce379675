import { batchOfLines } from '../../shop/recipe/batch';
import { type ActionNeeds, type Logged, log, type Said } from '../log';
import { refuseMix } from './mix-refused';

/** Writes a recipe, or a new version of one; a recipe that cannot be worked out is not written. */
export async function writeRecipe(
  needs: ActionNeeds,
  said: Omit<Said<'recipe-written'>, 'recipe'>,
): Logged<'recipe-written'> {
  const shop = needs.logbook.shop.value;
  const batch = batchOfLines(said.lines, shop);
  return batch.ok
    ? log(needs, 'recipe-written', { ...said, recipe: needs.newId() })
    : refuseMix(batch.failure, shop);
}

/** No longer lists a recipe; its jars still lead to it. */
export const putRecipeAway = (needs: ActionNeeds, recipe: string): Logged<'recipe-put-away'> =>
  log(needs, 'recipe-put-away', { recipe });
