import { fail, type Result, succeed } from '../../result';
import { blendDensityKgM3 } from '../solvents/blend';
import { andThen, known, type MixFailure } from './failure';
import type { Ingredient } from './ingredient';

/** What the ideal-volume change between the two kinds of solids needs. */
interface Densities {
  readonly ownKgM3: number;
  readonly solventsKgM3: number;
}

const isAllVolatile = (of: Ingredient): boolean =>
  of.kind === 'thinner' || of.kind === 'retarder' || of.volumeSolids === 0 || of.weightSolids === 0;

function densities(of: Ingredient): Result<Densities, MixFailure> {
  return andThen(known(of.densityKgM3, 'no-density', of), (ownKgM3) =>
    of.solvents
      ? succeed({ ownKgM3, solventsKgM3: blendDensityKgM3(of.solvents) })
      : fail({ kind: 'no-solvents', ingredient: of.id }),
  );
}

/** Fraction of an ingredient's volume that stays as dry film; from its weight solids where only those are known. */
export function volumeSolidsOf(of: Ingredient): Result<number, MixFailure> {
  if (isAllVolatile(of)) return succeed(0);
  const { volumeSolids, weightSolids } = of;
  if (volumeSolids !== undefined) return succeed(volumeSolids);
  if (weightSolids === undefined) return fail({ kind: 'no-solids', ingredient: of.id });
  return andThen(densities(of), ({ ownKgM3, solventsKgM3 }) =>
    succeed(1 - ((1 - weightSolids) * ownKgM3) / solventsKgM3),
  );
}

/** Fraction of an ingredient's mass that stays as dry film; from its volume solids where only those are known. */
export function weightSolidsOf(of: Ingredient): Result<number, MixFailure> {
  if (isAllVolatile(of)) return succeed(0);
  const { volumeSolids, weightSolids } = of;
  if (weightSolids !== undefined) return succeed(weightSolids);
  if (volumeSolids === undefined) return fail({ kind: 'no-solids', ingredient: of.id });
  return andThen(densities(of), ({ ownKgM3, solventsKgM3 }) =>
    succeed(1 - ((1 - volumeSolids) * solventsKgM3) / ownKgM3),
  );
}
