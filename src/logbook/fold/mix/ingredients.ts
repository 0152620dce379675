import type { EntryInSi, Lines } from '../in-si';

type Description = Omit<
  EntryInSi<'ingredient-described'>,
  'id' | 'v' | 'kind' | 'at' | 'atMs' | 'zone' | 'ingredient'
>;

/** Something that goes into mixes, as it is described now. */
export interface ShopIngredient extends Description {
  readonly id: string;
  readonly describedMs: number;
  /** When it was first described as from another lot than before. */
  readonly lotChangesMs: readonly number[];
  /** No longer offered; what was made with it stays. */
  readonly putAwayMs: number | undefined;
}

/** The ingredients by id, in the order in which they came into the shop. */
export function foldIngredients(lines: Lines) {
  const ingredients = new Map<string, ShopIngredient>();
  for (const line of lines.of('ingredient-described'))
    ingredients.set(line.ingredient, describe(line, ingredients.get(line.ingredient)));
  for (const { ingredient: id, atMs } of lines.of('ingredient-put-away')) {
    const found = ingredients.get(id);
    if (found && found.describedMs <= atMs) ingredients.set(id, { ...found, putAwayMs: atMs });
  }
  return { ingredients: ingredients as ReadonlyMap<string, ShopIngredient> };
}

function describe(
  line: EntryInSi<'ingredient-described'>,
  before: ShopIngredient | undefined,
): ShopIngredient {
  const { ingredient, atMs, id: _id, v: _v, kind: _kind, at: _at, zone: _zone, ...description } = line;
  const earlier = before?.lotChangesMs ?? [];
  const isOther = before?.lot !== undefined && line.lot !== undefined && line.lot !== before.lot;
  const lotChangesMs = isOther ? [...earlier, atMs] : earlier;
  return { ...description, id: ingredient, describedMs: atMs, lotChangesMs, putAwayMs: undefined };
}
