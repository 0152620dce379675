import { fail, type Result, succeed } from '../../result';
import type { Ingredient, Ingredients } from './ingredient';

/** Why a mix cannot be worked out. */
export type MixFailure =
  | { readonly kind: 'empty' }
  /** Zero, negative or not a number. */
  | { readonly kind: 'not-positive'; readonly line: number }
  /** Deleted, or never there. */
  | { readonly kind: 'unknown-ingredient'; readonly ingredient: string }
  | { readonly kind: MissingFact; readonly ingredient: string }
  /** A let-down that leads back to itself; the path begins and ends with it. */
  | { readonly kind: 'contains-itself'; readonly path: readonly string[] }
  /** Parts beside grams or millilitres: how much a part is, is not said. */
  | { readonly kind: 'parts-with-amounts' }
  /** Parts by mass beside parts by volume. */
  | { readonly kind: 'parts-of-two-kinds' }
  /** A share of the lacquer, and no clear or white base by amount or parts. */
  | { readonly kind: 'no-lacquer' }
  /** Shares of the mix that leave nothing for the rest. */
  | { readonly kind: 'shares-over-whole' }
  /** A recipe all in shares of the mix that do not make one. */
  | { readonly kind: 'shares-do-not-add-up'; readonly sum: number };

export type MissingFact =
  | 'no-density'
  | 'no-drop-mass'
  | 'no-solids'
  | 'no-solvents'
  | 'no-pigment-share'
  | 'no-critical-pigment';

/** An ingredient by its id. */
export function find(ingredients: Ingredients, id: string): Result<Ingredient, MixFailure> {
  const found = ingredients.get(id);
  return found ? succeed(found) : fail({ kind: 'unknown-ingredient', ingredient: id });
}

/** A fact, or which one is missing of which ingredient. */
export function known(
  fact: number | undefined,
  kind: MissingFact,
  ingredient: Ingredient,
): Result<number, MixFailure> {
  return fact === undefined ? fail({ kind, ingredient: ingredient.id }) : succeed(fact);
}

/** One outcome for each item, or the first failure. */
export function forEach<Item, Value, Failure>(
  items: readonly Item[],
  of: (item: Item, index: number) => Result<Value, Failure>,
): Result<Value[], Failure> {
  const values: Value[] = [];
  for (const [index, item] of items.entries()) {
    const result = of(item, index);
    if (!result.ok) return result;
    values.push(result.value);
  }
  return succeed(values);
}

/** The outcome carried on by a function of its value. */
export const andThen = <Value, Next, Failure>(
  result: Result<Value, Failure>,
  next: (value: Value) => Result<Next, Failure>,
): Result<Next, Failure> => (result.ok ? next(result.value) : result);

/** The sum over items, or the first failure. */
export function sumOver<Item, Failure>(
  items: readonly Item[],
  of: (item: Item) => Result<number, Failure>,
): Result<number, Failure> {
  return andThen(forEach(items, of), (values) => succeed(values.reduce((sum, value) => sum + value, 0)));
}
