import type { Lines, Told } from './told';

type Description = Omit<
  Told<'ingredient-described'>,
  'id' | 'v' | 'kind' | 'at' | 'atMs' | 'zone' | 'ingredient'
>;

/** Something that goes into mixes, as it is described now. */
export interface ShopIngredient extends Description {
  readonly id: string;
  readonly describedMs: number;
  /** No longer offered; what was made with it stays. */
  readonly putAwayMs: number | undefined;
}

/** The ingredients by id, in the order in which they came into the shop. */
export function foldIngredients(lines: Lines) {
  const ingredients = new Map<string, ShopIngredient>();
  for (const line of lines.of('ingredient-described')) ingredients.set(line.ingredient, describe(line));
  for (const { ingredient: id, atMs } of lines.of('ingredient-put-away')) {
    const found = ingredients.get(id);
    if (found && found.describedMs <= atMs) ingredients.set(id, { ...found, putAwayMs: atMs });
  }
  return { ingredients: ingredients as ReadonlyMap<string, ShopIngredient> };
}

function describe({
  ingredient,
  atMs,
  id: _id,
  v: _v,
  kind: _kind,
  at: _at,
  zone: _zone,
  ...description
}: Told<'ingredient-described'>): ShopIngredient {
  return { ...description, id: ingredient, describedMs: atMs, putAwayMs: undefined };
}
