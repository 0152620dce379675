import type { Shop } from '../../logbook/fold/fold';
import { pouredKg } from '../../logbook/fold/mix/weigh-ups';
import { wholeDrops } from '../../science/mixing/amount';
import { lacquerShare } from '../../science/mixing/toner';
import { volumesInMix } from '../jar/volumes-in-mix';
import { mixIngredients } from '../recipe/ingredients';

/** A dye in a toner, as it was poured. */
export interface Dose {
  readonly name: string;
  readonly volumeM3: number;
  /** Of its own bottle, where a drop of it is known. */
  readonly drops: number | undefined;
}

/** What a toner's jar holds: lacquer's share of the mix by volume, and its dyes. Only a jar that was weighed up says its dyes. */
export interface TonerMix {
  readonly share: number | undefined;
  readonly doses: readonly Dose[];
}

/** What is in the jar that a place is toned from. */
export function tonerMix(jarId: string, { jars, weighUps, ingredients }: Shop): TonerMix {
  const jar = jars.get(jarId);
  const weighUp = weighUps.get(jar?.weighUp ?? '');
  if (!jar || jar.boxedFrom) return { share: undefined, doses: [] };
  if (!weighUp) return { share: volumesInMix(jar).lacquer, doses: [] };
  const known = mixIngredients(ingredients);
  const poured = pouredKg(weighUp);
  const batch = weighUp.plan.map(({ ingredient }, i) => ({ ingredient, massKg: poured[i] ?? 0 }));
  const doses = batch.flatMap(({ ingredient, massKg }): Dose[] => {
    const { kind, densityKgM3, dropMassKg } = known.get(ingredient) ?? {};
    if (kind !== 'dye' || densityKgM3 === undefined || massKg === 0) return [];
    const drops = dropMassKg === undefined ? undefined : wholeDrops(massKg / dropMassKg).drops;
    return [{ name: ingredients.get(ingredient)?.name ?? '', volumeM3: massKg / densityKgM3, drops }];
  });
  return { share: lacquerShare(batch, known), doses };
}
