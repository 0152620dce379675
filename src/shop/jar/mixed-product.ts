import type { EntryOf } from '../../logbook/entry';
import type { Shop } from '../../logbook/fold/fold';
import { type Result, succeed } from '../../result';
import {
  type Composition,
  composition,
  mixDensityKgM3,
  mixSolvents,
  mixVolumeSolids,
  partSolidsM3,
} from '../../science/mixing/composition';
import { andThen, type MixFailure } from '../../science/mixing/failure';
import { type Batch, batchMassKg } from '../../science/mixing/ingredient';
import { mixPigmentOfSolids } from '../../science/mixing/mix-pigment';
import { mixIngredients } from '../recipe/ingredients';
import type { Finish } from './own-solvents';

type Filled = EntryOf<'jar-filled'>;
/** What a mix is, as a jar says it: a product of its own, with nothing added. */
export type MixedProduct = Pick<
  Filled,
  'product' | 'thinner' | 'thinning' | 'pigment' | 'amount' | 'density' | 'contains'
>;

const FIGURES = 7;
const text = (value: number): string => String(Number(value.toPrecision(FIGURES)));
const percent = (fraction: number) => ({ text: text(fraction * 100), unit: '%' }) as const;
const NOTHING_ADDED = { of: 'mix', percent: { text: '0', unit: '%' } } as const;
const USUAL_FINISH: Finish = 'nitrocellulose';

/** A weighed batch as the product that it has become, or which fact is missing for that. */
export function mixedProduct(
  batch: Batch,
  shop: Shop,
  thinnerName: string,
): Result<MixedProduct, MixFailure> {
  const ingredients = mixIngredients(shop.ingredients);
  return andThen(composition(batch, ingredients), (mix) =>
    andThen(mixVolumeSolids(mix), (solids) =>
      andThen(mixDensityKgM3(mix), (densityKgM3) =>
        andThen(mixPigmentOfSolids(mix), (pigment) =>
          andThen(blendOf(mix), (blend) =>
            succeed({
              product: { finish: finishOf(mix, shop), volumeSolids: percent(solids), solvents: blend },
              thinner: { name: thinnerName, blend },
              thinning: NOTHING_ADDED,
              ...(pigment === 0
                ? {}
                : { pigment: { shareOfSolids: percent(pigment), shape: shapeOf(mix, shop) } }),
              amount: { text: text((batchMassKg(batch) / densityKgM3) * 1e6), unit: 'mL' as const },
              density: { text: text(densityKgM3 / 1000), unit: 'g/mL' as const },
              ...containsOf(mix, shop),
            }),
          ),
        ),
      ),
    ),
  );
}

type Shares = readonly { readonly solvent: string; readonly share: number }[];

function blendOf(mix: Composition): Result<Shares, MixFailure> {
  return andThen(mixSolvents(mix), (blend) => {
    const whole = blend.reduce((sum, { volume }) => sum + volume, 0);
    const shares = blend.map(({ solvent, volume }) => ({ solvent: solvent.id, share: volume / whole }));
    return succeed(shares.filter(({ share }) => share > 0));
  });
}

/** The finish of what leaves most of the film. */
export function finishOf(mix: Composition, { ingredients }: Shop): Finish {
  const solids = new Map<Finish, number>();
  for (const part of mix) {
    const finish = ingredients.get(part.ingredient.id)?.finish;
    const left = partSolidsM3(part);
    if (finish && left.ok) solids.set(finish, (solids.get(finish) ?? 0) + left.value);
  }
  return [...solids].sort(([, one], [, other]) => other - one)[0]?.[0] ?? USUAL_FINISH;
}

const shapeOf = (mix: Composition, { ingredients }: Shop): 'grains' | 'flakes' =>
  mix.some(({ ingredient }) => ingredients.get(ingredient.id)?.pigmentShape === 'flakes')
    ? 'flakes'
    : 'grains';

function containsOf(mix: Composition, { ingredients }: Shop): Pick<Filled, 'contains'> {
  const contains = [
    ...new Set(mix.flatMap(({ ingredient }) => ingredients.get(ingredient.id)?.contains ?? [])),
  ];
  return contains.length === 0 ? {} : { contains };
}
