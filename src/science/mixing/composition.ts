import { fail, type Result, succeed } from '../../result';
import type { Blend } from '../solvents/blend';
import { contents } from './contents';
import { andThen, find, forEach, known, type MixFailure, sumOver } from './failure';
import type { Batch, Ingredient, Ingredients } from './ingredient';
import { volumeSolidsOf, weightSolidsOf } from './solids';

/** A part of a mix with what is known of it. */
export interface KnownPart {
  readonly ingredient: Ingredient;
  readonly massKg: number;
}

/** A mix opened down to its first ingredients. */
export type Composition = readonly KnownPart[];

/** Opens a batch down to ingredients that have facts of their own. */
export const composition = (batch: Batch, ingredients: Ingredients): Result<Composition, MixFailure> =>
  andThen(contents(batch, ingredients), (parts) =>
    forEach(parts, ({ ingredient, massKg }) =>
      andThen(find(ingredients, ingredient), (found) => succeed({ ingredient: found, massKg })),
    ),
  );

/** Volume of one part, m3. */
export const partVolumeM3 = ({ ingredient, massKg }: KnownPart): Result<number, MixFailure> =>
  andThen(known(ingredient.densityKgM3, 'no-density', ingredient), (densityKgM3) =>
    succeed(massKg / densityKgM3),
  );

/** Volume of dry film that one part leaves, m3. */
export const partSolidsM3 = (part: KnownPart): Result<number, MixFailure> =>
  andThen(volumeSolidsOf(part.ingredient), (solids) =>
    solids === 0 ? succeed(0) : andThen(partVolumeM3(part), (volumeM3) => succeed(volumeM3 * solids)),
  );

const massOf = (mix: Composition): number => mix.reduce((sum, { massKg }) => sum + massKg, 0);

const ratio = (
  top: Result<number, MixFailure>,
  bottom: Result<number, MixFailure>,
): Result<number, MixFailure> => andThen(top, (above) => andThen(bottom, (below) => succeed(above / below)));

/** Density of a mix, kg/m3, volumes taken to add. */
export const mixDensityKgM3 = (mix: Composition): Result<number, MixFailure> =>
  ratio(succeed(massOf(mix)), sumOver(mix, partVolumeM3));

/** Fraction of a mix's volume that stays as dry film. */
export const mixVolumeSolids = (mix: Composition): Result<number, MixFailure> =>
  ratio(sumOver(mix, partSolidsM3), sumOver(mix, partVolumeM3));

/** Fraction of a mix's mass that stays as dry film. */
export const mixWeightSolids = (mix: Composition): Result<number, MixFailure> =>
  ratio(
    sumOver(mix, ({ ingredient, massKg }) =>
      andThen(weightSolidsOf(ingredient), (solids) => succeed(massKg * solids)),
    ),
    succeed(massOf(mix)),
  );

/** The volatile part of a mix: each solvent once, volumes in m3. */
export function mixSolvents(mix: Composition): Result<Blend, MixFailure> {
  return andThen(forEach(mix, partSolvents), (blends) => {
    const volumes = new Map<Blend[number]['solvent'], number>();
    for (const { solvent, volume } of blends.flat())
      volumes.set(solvent, (volumes.get(solvent) ?? 0) + volume);
    return succeed([...volumes].map(([solvent, volume]) => ({ solvent, volume })));
  });
}

function partSolvents(part: KnownPart): Result<Blend, MixFailure> {
  const volatile = andThen(partVolumeM3(part), (volumeM3) =>
    andThen(partSolidsM3(part), (solidsM3) => succeed(volumeM3 - solidsM3)),
  );
  return andThen(volatile, (volatileM3) => {
    if (volatileM3 <= 0) return succeed([]);
    return andThen(solventsOf(part.ingredient), (blend) => {
      const whole = blend.reduce((sum, { volume }) => sum + volume, 0);
      return succeed(
        blend.map(({ solvent, volume }) => ({ solvent, volume: (volume / whole) * volatileM3 })),
      );
    });
  });
}

/** The solvents of an ingredient, or that they are not known. */
export const solventsOf = (ingredient: Ingredient): Result<Blend, MixFailure> =>
  ingredient.solvents
    ? succeed(ingredient.solvents)
    : fail({ kind: 'no-solvents', ingredient: ingredient.id });
