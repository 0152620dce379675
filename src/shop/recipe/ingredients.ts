import type { ShopIngredient } from '../../logbook/fold/mix/ingredients';
import { composition, mixDensityKgM3 } from '../../science/mixing/composition';
import type { Ingredient, Ingredients } from '../../science/mixing/ingredient';
import { isSolventId, solvent } from '../../science/solvents/solvents';

/** Only their order counts: weak is poured before strong. */
const STRENGTH = { weak: 1, medium: 2, strong: 3 } as const;
const worked = new WeakMap<ReadonlyMap<string, ShopIngredient>, Ingredients>();

/** The shop's ingredients as mixing works with them: SI, and what is not known left out. */
export function mixIngredients(ingredients: ReadonlyMap<string, ShopIngredient>): Ingredients {
  const known = worked.get(ingredients);
  if (known) return known;
  const fresh = new Map([...ingredients.values()].map((one) => [one.id, toMix(one)]));
  for (const [id, one] of fresh) fresh.set(id, withOwnDensity(one, fresh));
  worked.set(ingredients, fresh);
  return fresh;
}

const optional = <Key extends string, Value>(
  key: Key,
  value: Value | undefined,
): { readonly [K in Key]?: Value } =>
  value === undefined ? {} : ({ [key]: value } as { readonly [K in Key]?: Value });

/** A drop as it was weighed, else by its volume and the density. */
const dropMassKg = ({ dropMass, dropVolume, density }: ShopIngredient): number | undefined =>
  dropMass?.value.si ?? (dropVolume && density ? dropVolume.value.si * density.value.si : undefined);

function toMix(from: ShopIngredient): Ingredient {
  const blend = from.solvents?.value.flatMap(({ solvent: id, share }) =>
    isSolventId(id) ? [{ solvent: solvent(id), volume: share }] : [],
  );
  return {
    id: from.id,
    kind: from.is,
    ...optional('densityKgM3', from.density?.value.si),
    ...optional('dropMassKg', dropMassKg(from)),
    ...optional('volumeSolids', from.volumeSolids?.value.si),
    ...optional('weightSolids', from.weightSolids?.value.si),
    ...optional('pigmentOfSolids', from.pigmentOfSolids?.value.si),
    ...optional('criticalPigment', from.criticalPigment?.value.si),
    ...optional('solvents', blend && blend.length > 0 ? blend : undefined),
    ...optional('strength', from.strength && STRENGTH[from.strength]),
    ...optional('madeOf', from.madeOf),
  };
}

/** A let-down whose density nobody has measured has that of what it is made of. */
function withOwnDensity(one: Ingredient, ingredients: Ingredients): Ingredient {
  if (!one.madeOf || one.densityKgM3 !== undefined) return one;
  const opened = composition([{ ingredient: one.id, massKg: 1 }], ingredients);
  const density = opened.ok ? mixDensityKgM3(opened.value) : opened;
  return density.ok ? { ...one, densityKgM3: density.value } : one;
}
