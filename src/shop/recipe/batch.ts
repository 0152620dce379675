import type { Shop } from '../../logbook/fold/fold';
import type { Recipe } from '../../logbook/fold/mix/recipes';
import { plainNumber } from '../../logbook/typed';
import type { Result } from '../../result';
import type { Amount } from '../../science/mixing/amount';
import type { MixFailure } from '../../science/mixing/failure';
import type { Batch } from '../../science/mixing/ingredient';
import type { Recipe as MixRecipe } from '../../science/mixing/line';
import { batchOf } from '../../science/mixing/recipe';
import { mixIngredients } from './ingredients';

/** A line of a recipe as it is kept; its number as typed. */
export interface TypedLine {
  readonly ingredient: string;
  readonly amount: { readonly text: string; readonly unit: RecipeUnit };
  readonly by?: 'mass' | 'volume' | undefined;
  readonly of?: 'lacquer' | 'mix' | undefined;
}
export type RecipeUnit = 'g' | 'mL' | 'drops' | 'parts' | '%' | 'fl-oz-us' | 'fl-oz-imperial';

/** The lines of a recipe as mixing reckons with them; a text that is no number becomes NaN, which mixing refuses. */
const mixLines = (lines: readonly TypedLine[]): MixRecipe =>
  lines.map(({ ingredient, amount, by, of }) => ({ ingredient, amount: toAmount(amount, by, of) }));

function toAmount({ text, unit }: TypedLine['amount'], by: TypedLine['by'], of: TypedLine['of']): Amount {
  const value = plainNumber(text) ?? Number.NaN;
  if (unit === '%') return { unit: 'share', of: of ?? 'mix', by: by ?? 'mass', value: value / 100 };
  if (unit === 'parts') return { unit: 'parts', by: by ?? 'mass', value };
  return { unit, value };
}

/** The lines of a kept recipe, as typed. */
export const typedLines = ({ lines }: Pick<Recipe, 'lines'>): readonly TypedLine[] =>
  lines.map(({ amount, ...line }) => ({ ...line, amount: amount.typed as TypedLine['amount'] }));

/** The masses that a recipe's lines stand for, or why they cannot be known. */
export const batchOfLines = (
  lines: readonly TypedLine[],
  { ingredients }: Pick<Shop, 'ingredients'>,
): Result<Batch, MixFailure> => batchOf(mixLines(lines), mixIngredients(ingredients));
