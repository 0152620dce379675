import type { Blend } from '../solvents/blend';

export type IngredientKind =
  | 'clear'
  | 'white-base'
  | 'tinter'
  | 'dye'
  | 'flatting'
  | 'let-down'
  | 'thinner'
  | 'retarder';

/** What is known of something that goes into a mix, SI. What is not known is left out, never taken as nought. */
export interface Ingredient {
  readonly id: string;
  readonly kind: IngredientKind;
  readonly densityKgM3?: number;
  /** Of one drop from its bottle: weigh 20 and divide. */
  readonly dropMassKg?: number;
  /** Fraction of the volume that stays as dry film. */
  readonly volumeSolids?: number;
  /** Fraction of the mass that stays as dry film. */
  readonly weightSolids?: number;
  /** Pigment's fraction of its dry film, by volume. */
  readonly pigmentOfSolids?: number;
  /** Critical pigment concentration of its pigment, by volume. */
  readonly criticalPigment?: number;
  /** Its volatile part. */
  readonly solvents?: Blend;
  /** How much it colours, against the others: what is strong is poured last. */
  readonly strength?: number;
  /** What a let-down, or a mix used as an ingredient, was made of; fractions of its mass. */
  readonly madeOf?: readonly { readonly ingredient: string; readonly massFraction: number }[];
}

/** Ingredients by id. */
export type Ingredients = ReadonlyMap<string, Ingredient>;

/** So much of one ingredient. */
export interface Part {
  readonly ingredient: string;
  readonly massKg: number;
}

/** What is, or is to be, in one vessel: the exact form of a recipe. */
export type Batch = readonly Part[];

/** Mass of everything in a batch, kg. */
export const batchMassKg = (batch: Batch): number => batch.reduce((sum, { massKg }) => sum + massKg, 0);

/** Whether an ingredient counts as the lacquer in "per cent of the lacquer": the product before anything is added. */
export const isLacquer = ({ kind }: Ingredient): boolean => kind === 'clear' || kind === 'white-base';
