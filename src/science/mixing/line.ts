import type { Amount } from './amount';
import type { Ingredient } from './ingredient';

/** A line of a recipe as it was typed. */
export interface Line {
  readonly ingredient: string;
  readonly amount: Amount;
}

export type Recipe = readonly Line[];

/** A line with its ingredient, and its mass once that is known. */
export interface OpenLine {
  readonly ingredient: Ingredient;
  readonly amount: Amount;
  readonly massKg?: number;
}
