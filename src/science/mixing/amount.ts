import { type Result, succeed } from '../../result';
import { ML_PER_IMPERIAL_FLUID_OUNCE, ML_PER_US_FLUID_OUNCE } from '../../units';
import { andThen, known, type MixFailure } from './failure';
import type { Ingredient } from './ingredient';

const KG_PER_G = 1e-3;
const M3_PER_ML = 1e-6;

const M3_PER_VOLUME_UNIT = {
  mL: M3_PER_ML,
  'fl-oz-us': ML_PER_US_FLUID_OUNCE * M3_PER_ML,
  'fl-oz-imperial': ML_PER_IMPERIAL_FLUID_OUNCE * M3_PER_ML,
} as const;

export type VolumeUnit = keyof typeof M3_PER_VOLUME_UNIT;
export type By = 'mass' | 'volume';

/** How a line of a recipe says how much; the number stays apart, so that it is kept as typed. */
export type Measure =
  | { readonly unit: 'g' | 'drops' | VolumeUnit }
  | { readonly unit: 'parts'; readonly by: By }
  /** A fraction (never per cent): of the lacquer alone, or of everything that is mixed. */
  | { readonly unit: 'share'; readonly of: 'lacquer' | 'mix'; readonly by: By };

export type Amount = Measure & { readonly value: number };

/** A measure that says how much by itself. */
export type Absolute = Extract<Measure, { unit: 'g' | 'drops' | VolumeUnit }>;

/** Mass, kg, of one unit of an ingredient: needs its density for a volume, its drop mass for a drop. */
export function unitMassKg({ unit }: Absolute, ingredient: Ingredient): Result<number, MixFailure> {
  if (unit === 'g') return succeed(KG_PER_G);
  if (unit === 'drops') return known(ingredient.dropMassKg, 'no-drop-mass', ingredient);
  return andThen(known(ingredient.densityKgM3, 'no-density', ingredient), (densityKgM3) =>
    succeed(M3_PER_VOLUME_UNIT[unit] * densityKgM3),
  );
}

/** Quantity of an ingredient in kg or m3, as a share or part goes by. */
export function quantity(massKg: number, by: By, ingredient: Ingredient): Result<number, MixFailure> {
  if (by === 'mass') return succeed(massKg);
  return andThen(known(ingredient.densityKgM3, 'no-density', ingredient), (densityKgM3) =>
    succeed(massKg / densityKgM3),
  );
}

/** Mass, kg, of a quantity in kg or m3: {@link quantity} turned round. */
export function massOfQuantity(amount: number, by: By, ingredient: Ingredient): Result<number, MixFailure> {
  if (by === 'mass') return succeed(amount);
  return andThen(known(ingredient.densityKgM3, 'no-density', ingredient), (densityKgM3) =>
    succeed(amount * densityKgM3),
  );
}

/** Mass of one drop, kg, from weighing some: 20 are enough. */
export const dropMassKg = (weighedKg: number, drops: number): number => weighedKg / drops;

/** A number of drops that can be poured, at least one, and what the rounding does to the amount, as a fraction. */
export function wholeDrops(drops: number): { readonly drops: number; readonly error: number } {
  const whole = Math.max(1, Math.round(drops));
  return { drops: whole, error: whole / drops - 1 };
}
