import type { Shop } from '../../logbook/fold/fold';
import type { ShopIngredient } from '../../logbook/fold/mix/ingredients';
import { solventsOf } from '../../science/mixing/composition';
import type { Ingredient } from '../../science/mixing/ingredient';
import { pigmentShareOf } from '../../science/mixing/mix-pigment';
import { volumeSolidsOf } from '../../science/mixing/solids';
import { mixIngredients } from './ingredients';

/** A fact that a jar cannot be worked out without. */
export type LackingFact = 'density' | 'volumeSolids' | 'pigmentOfSolids' | 'solvents' | 'dropMass';

/** An ingredient and what is not known of it. */
export interface Lacking {
  readonly ingredient: ShopIngredient;
  readonly facts: readonly LackingFact[];
}

interface Used {
  readonly ingredient: string;
  /** Measured in drops. */
  readonly inDrops?: boolean;
}

/** What is not known of these ingredients, let-downs opened down to what they are made of; empty when a jar can be worked out. */
export function lackingIn(used: readonly Used[], { ingredients }: Pick<Shop, 'ingredients'>): Lacking[] {
  const known = mixIngredients(ingredients);
  const drops = new Set(used.flatMap(({ ingredient, inDrops }) => (inDrops ? [ingredient] : [])));
  return [...opened(used, ingredients)].flatMap((id): Lacking[] => {
    const ingredient = ingredients.get(id);
    const mixed = known.get(id);
    if (!ingredient || !mixed) return [];
    const own = ingredient.madeOf ? [] : lackingOf(mixed);
    const facts = drops.has(id) && mixed.dropMassKg === undefined ? [...own, 'dropMass' as const] : own;
    return facts.length === 0 ? [] : [{ ingredient, facts }];
  });
}

/** The ingredients and all that they are made of, each once. */
function opened(used: readonly Used[], ingredients: Shop['ingredients']): ReadonlySet<string> {
  const found = new Set<string>();
  const open = (id: string): void => {
    if (found.has(id)) return;
    found.add(id);
    for (const part of ingredients.get(id)?.madeOf ?? []) open(part.ingredient);
  };
  for (const { ingredient } of used) open(ingredient);
  return found;
}

function lackingOf(mixed: Ingredient): LackingFact[] {
  const facts: readonly (readonly [LackingFact, boolean])[] = [
    ['density', mixed.densityKgM3 !== undefined],
    ['volumeSolids', volumeSolidsOf(mixed).ok || mixed.weightSolids !== undefined],
    ['pigmentOfSolids', pigmentShareOf(mixed).ok],
    ['solvents', solventsOf(mixed).ok],
  ];
  return facts.flatMap(([fact, isKnown]) => (isKnown ? [] : [fact]));
}
