import { type Result, succeed } from '../../result';
import { type Composition, type KnownPart, partSolidsM3 } from './composition';
import { andThen, forEach, known, type MixFailure, sumOver } from './failure';
import type { Ingredient } from './ingredient';

const UNPIGMENTED: readonly Ingredient['kind'][] = ['clear', 'dye', 'thinner', 'retarder'];

/** Pigment of the solids by volume; nothing of what is never pigmented. */
export const pigmentShareOf = (of: Ingredient): Result<number, MixFailure> =>
  of.pigmentOfSolids === undefined && UNPIGMENTED.includes(of.kind)
    ? succeed(0)
    : known(of.pigmentOfSolids, 'no-pigment-share', of);

const partPigmentM3 = (part: KnownPart): Result<number, MixFailure> =>
  andThen(partSolidsM3(part), (solidsM3) =>
    solidsM3 === 0
      ? succeed(0)
      : andThen(pigmentShareOf(part.ingredient), (share) => succeed(solidsM3 * share)),
  );

/** Pigment's fraction of the dry film, by volume: 0 of a mix that leaves no film. */
export const mixPigmentOfSolids = (mix: Composition): Result<number, MixFailure> =>
  andThen(sumOver(mix, partPigmentM3), (pigmentM3) =>
    andThen(sumOver(mix, partSolidsM3), (solidsM3) => succeed(solidsM3 === 0 ? 0 : pigmentM3 / solidsM3)),
  );

/**
 * Pigment concentration of the dry film over its critical one: above 1 the film is open.
 *
 * Source: Asbeck and Van Loo (1949) for one pigment; of several, the binder each needs to fill its gaps is added up.
 * Left out: fine pigment packing into the gaps of coarse, which raises the critical concentration.
 */
export function pigmentOfCritical(mix: Composition): Result<number, MixFailure> {
  const needs = forEach(mix, (part) =>
    andThen(partPigmentM3(part), (pigmentM3) =>
      pigmentM3 === 0
        ? succeed({ pigmentM3, packedM3: 0 })
        : andThen(
            known(part.ingredient.criticalPigment, 'no-critical-pigment', part.ingredient),
            (critical) => succeed({ pigmentM3, packedM3: pigmentM3 / critical }),
          ),
    ),
  );
  return andThen(needs, (parts) =>
    andThen(mixPigmentOfSolids(mix), (concentration) => {
      const pigmentM3 = parts.reduce((sum, part) => sum + part.pigmentM3, 0);
      const packedM3 = parts.reduce((sum, part) => sum + part.packedM3, 0);
      return succeed(pigmentM3 === 0 ? 0 : concentration / (pigmentM3 / packedM3));
    }),
  );
}
