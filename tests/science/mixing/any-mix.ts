import fc from 'fast-check';
import type { Batch, Ingredient, Ingredients } from '../../../src/science/mixing/ingredient';
import { SOLVENTS } from '../../../src/science/solvents/solvents';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** Ingredients with every fact, the first always a clear. */
const anyIngredient = (id: string): fc.Arbitrary<Ingredient> =>
  fc.record({
    id: fc.constant(id),
    kind: id === 'i0' ? fc.constant('clear' as const) : fc.constantFrom('tinter', 'thinner', 'white-base'),
    densityKgM3: between(780, 1900),
    dropMassKg: between(2e-5, 8e-5),
    volumeSolids: between(0.05, 0.5),
    weightSolids: between(0.05, 0.6),
    pigmentOfSolids: between(0, 0.4),
    criticalPigment: between(0.4, 0.6),
    solvents: fc
      .tuple(fc.constantFrom(...SOLVENTS), between(0.1, 1))
      .map(([solvent, volume]) => [{ solvent, volume }]),
  });

export interface AnyMix {
  readonly batch: Batch;
  readonly ingredients: Ingredients;
}

/** A batch of up to seven different ingredients, from a milligram to a kilogram each. */
export const anyMix: fc.Arbitrary<AnyMix> = fc.integer({ min: 1, max: 7 }).chain((size) =>
  fc
    .tuple(
      fc.tuple(...Array.from({ length: size }, (_, i) => anyIngredient(`i${i}`))),
      fc.array(between(-6, 0), { minLength: size, maxLength: size }),
    )
    .map(([list, logs]) => ({
      batch: list.map(({ id }, i) => ({ ingredient: id, massKg: 10 ** (logs[i] as number) })),
      ingredients: new Map(list.map((each) => [each.id, each])),
    })),
);

/** The value of an outcome that a test knows to be one. */
export function got<Value>(result: { ok: true; value: Value } | { ok: false; failure: unknown }): Value {
  if (!result.ok) throw new Error(JSON.stringify(result.failure));
  return result.value;
}
