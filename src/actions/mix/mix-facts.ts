import type { Shop } from '../../logbook/fold/fold';
import { type Result, succeed } from '../../result';
import {
  composition,
  mixDensityKgM3,
  mixSolvents,
  mixVolumeSolids,
  mixWeightSolids,
} from '../../science/mixing/composition';
import type { MixFailure } from '../../science/mixing/failure';
import { andThen } from '../../science/mixing/failure';
import type { Batch } from '../../science/mixing/ingredient';
import { mixPigmentOfSolids, pigmentOfCritical } from '../../science/mixing/mix-pigment';
import { type VocContent, vocContent } from '../../science/mixing/voc';
import type { Blend } from '../../science/solvents/blend';
import { finishOf } from '../../shop/jar/mixed-product';
import type { Finish } from '../../shop/jar/own-solvents';
import { mixIngredients } from '../../shop/recipe/ingredients';

/** What a mix is; each fact stands or falls alone, so that one missing density does not hide the rest. */
export interface MixFacts {
  readonly finish: Finish;
  readonly volumeSolids: Result<number, MixFailure>;
  readonly weightSolids: Result<number, MixFailure>;
  readonly densityKgM3: Result<number, MixFailure>;
  /** Of the dry film, by volume. */
  readonly pigment: Result<number, MixFailure>;
  /** Over the critical concentration. */
  readonly ofCritical: Result<number, MixFailure>;
  readonly voc: Result<VocContent, MixFailure>;
  readonly solvents: Result<Blend, MixFailure>;
}

/** Works out what a batch is. */
export function mixFacts(batch: Batch, shop: Shop): Result<MixFacts, MixFailure> {
  return andThen(composition(batch, mixIngredients(shop.ingredients)), (mix) =>
    succeed({
      finish: finishOf(mix, shop),
      volumeSolids: mixVolumeSolids(mix),
      weightSolids: mixWeightSolids(mix),
      densityKgM3: mixDensityKgM3(mix),
      pigment: mixPigmentOfSolids(mix),
      ofCritical: pigmentOfCritical(mix),
      voc: vocContent(mix),
      solvents: mixSolvents(mix),
    }),
  );
}
