import type { Batch, Ingredient, Ingredients, Part } from '../ingredient';

// White base and clear first, then tinters from weak to strong, and the thinner last, so that a colour can still be steered
// (common practice, no source).
const TURN: Record<Ingredient['kind'], number> = {
  'white-base': 0,
  clear: 1,
  flatting: 2,
  'let-down': 3,
  tinter: 3,
  dye: 3,
  retarder: 4,
  thinner: 5,
};

/** A batch in the order in which the trade pours it; equals keep the recipe's order. */
export function weighOrder(batch: Batch, ingredients: Ingredients): Batch {
  const turn = ({ ingredient }: Part) => TURN[ingredients.get(ingredient)?.kind ?? 'clear'];
  const strength = ({ ingredient }: Part) => ingredients.get(ingredient)?.strength ?? 0;
  return [...batch].sort((a, b) => turn(a) - turn(b) || strength(a) - strength(b));
}
