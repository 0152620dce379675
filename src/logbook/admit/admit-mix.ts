import type { Entry, EntryOf } from '../entry';
import type { Shop } from '../fold/fold';
import type { WeighUp } from '../fold/mix/weigh-ups';
import { onJar } from './piece-or-jar';

/** Why an entry of the mix place does not fit the shop. */
export type MixGround =
  | 'unknown-ingredient'
  | 'unknown-recipe'
  | 'unknown-weigh-up'
  | 'contains-itself'
  | 'weigh-up-over'
  | 'no-such-line'
  | 'unknown-jar'
  | 'jar-there-already';

const onRecipe = ({ recipe }: { readonly recipe: string }, { recipes }: Shop): MixGround | undefined =>
  recipes.has(recipe) ? undefined : 'unknown-recipe';
const missing = (ids: readonly string[], { ingredients }: Shop): MixGround | undefined =>
  ids.every((id) => ingredients.has(id)) ? undefined : 'unknown-ingredient';

/** Whether what something is made of leads back to it. */
function leadsTo(
  id: string,
  from: readonly string[],
  { ingredients }: Shop,
  seen = new Set<string>(),
): boolean {
  return from.some((inner) => {
    if (inner === id) return true;
    if (seen.has(inner)) return false;
    seen.add(inner);
    const madeOf = ingredients.get(inner)?.madeOf ?? [];
    return leadsTo(
      id,
      madeOf.map(({ ingredient }) => ingredient),
      { ingredients } as Shop,
      seen,
    );
  });
}

function onWeighUp(
  id: string,
  { weighUps }: Shop,
  ground: (weighUp: WeighUp) => MixGround | undefined = () => undefined,
): MixGround | undefined {
  const weighUp = weighUps.get(id);
  if (!weighUp) return 'unknown-weigh-up';
  return weighUp.jar !== undefined || weighUp.droppedMs !== undefined ? 'weigh-up-over' : ground(weighUp);
}

/** What each kind of entry of the mix place needs of the shop. */
export const MIX_RULES = {
  'ingredient-described': ({ ingredient, madeOf = [] }: EntryOf<'ingredient-described'>, shop: Shop) => {
    const inner = madeOf.map((part) => part.ingredient);
    return leadsTo(ingredient, inner, shop) ? ('contains-itself' as const) : missing(inner, shop);
  },
  'ingredient-put-away': ({ ingredient }: EntryOf<'ingredient-put-away'>, shop: Shop) =>
    missing([ingredient], shop),
  'recipe-written': ({ lines, previous }: EntryOf<'recipe-written'>, shop: Shop) =>
    previous !== undefined && !shop.recipes.has(previous)
      ? ('unknown-recipe' as const)
      : missing(
          lines.map(({ ingredient }) => ingredient),
          shop,
        ),
  'recipe-put-away': onRecipe,
  'card-photographed': onRecipe,
  'weigh-up-begun': ({ recipe, plan }: EntryOf<'weigh-up-begun'>, shop: Shop) =>
    shop.recipes.has(recipe)
      ? missing(
          plan.map(({ ingredient }) => ingredient),
          shop,
        )
      : ('unknown-recipe' as const),
  poured: ({ weighUp, line }: EntryOf<'poured'>, shop: Shop) =>
    onWeighUp(weighUp, shop, ({ plan }) => (line < plan.length ? undefined : 'no-such-line')),
  'weigh-up-dropped': ({ weighUp }: EntryOf<'weigh-up-dropped'>, shop: Shop) => onWeighUp(weighUp, shop),
  'jar-filled': ({ jar, weighUp, boxedFrom = [] }: EntryOf<'jar-filled'>, shop: Shop) => {
    if (shop.jars.has(jar)) return 'jar-there-already' as const;
    if (boxedFrom.some((from) => !shop.jars.has(from.jar))) return 'unknown-jar' as const;
    return weighUp === undefined ? undefined : onWeighUp(weighUp, shop);
  },
  'jar-weighed': onJar,
  'jar-tested': onJar,
  'jar-drawn': onJar,
};

/** Why striking an entry of the mix place would take the ground from later work; undefined where it would not. */
export function mixLeansOn(entry: Entry, shop: Shop): 'still-used' | 'not-last-pour' | undefined {
  const weighUp =
    'weighUp' in entry && entry.weighUp !== undefined ? shop.weighUps.get(entry.weighUp) : undefined;
  if (entry.kind === 'poured') {
    if (weighUp?.jar !== undefined) return 'still-used';
    return weighUp?.pours.at(-1)?.entry === entry.id ? undefined : 'not-last-pour';
  }
  const isUsed =
    (entry.kind === 'weigh-up-begun' && weighUp !== undefined && weighUp.pours.length > 0) ||
    (entry.kind === 'recipe-written' && recipeIsUsed(entry.recipe, shop)) ||
    (entry.kind === 'ingredient-described' &&
      isOnlyDescription(entry, shop) &&
      ingredientIsUsed(entry.ingredient, shop)) ||
    (entry.kind === 'jar-filled' && jarIsBoxed(entry.jar, shop));
  return isUsed ? 'still-used' : undefined;
}

const jarIsBoxed = (id: string, { jars }: Shop): boolean =>
  [...jars.values()].some(({ boxedFrom = [] }) => boxedFrom.some(({ jar }) => jar === id));

const recipeIsUsed = (id: string, { recipes, weighUps }: Shop): boolean =>
  recipes.get(id)?.next !== undefined || [...weighUps.values()].some(({ recipe }) => recipe === id);

const isOnlyDescription = ({ ingredient, id }: EntryOf<'ingredient-described'>, shop: Shop): boolean =>
  ![...shop.entries.values()].some(
    (other) =>
      other.kind === 'ingredient-described' &&
      other.ingredient === ingredient &&
      other.id !== id &&
      !shop.struck.has(other.id),
  );

/** Whether a recipe, a let-down or a weigh-up names this ingredient. */
function ingredientIsUsed(id: string, { recipes, ingredients, weighUps }: Shop): boolean {
  const names = (parts: readonly { readonly ingredient: string }[] = []): boolean =>
    parts.some(({ ingredient }) => ingredient === id);
  return (
    [...recipes.values()].some(({ lines }) => names(lines)) ||
    [...ingredients.values()].some(({ madeOf }) => names(madeOf)) ||
    [...weighUps.values()].some(({ plan }) => names(plan))
  );
}
