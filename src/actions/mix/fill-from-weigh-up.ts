import type { EntryOf } from '../../logbook/entry';
import { pouredKg, type WeighUp } from '../../logbook/fold/mix/weigh-ups';
import type { Batch } from '../../science/mixing/ingredient';
import { mixedProduct } from '../../shop/jar/mixed-product';
import { JAR_WORDS } from '../../words/mix/jar';
import { type ActionNeeds, type Logged, log, type Said } from '../log';
import { refuseMix, refuseWith } from './mix-refused';

/** A jar as it was filled. */
export type Filled = EntryOf<'jar-filled'>;
export type MixedJarSaid = Pick<Said<'jar-filled'>, 'name' | 'life' | 'keepBack' | 'note'>;

/** What was really poured, in the plan's order. */
export const pouredBatch = (weighUp: WeighUp): Batch => {
  const poured = pouredKg(weighUp);
  return weighUp.plan.flatMap(({ ingredient }, i) => {
    const massKg = poured[i] ?? 0;
    return massKg > 0 ? [{ ingredient, massKg }] : [];
  });
};

/** Makes a finished weigh-up a jar of its own, with its exact poured recipe. */
export async function fillFromWeighUp(
  needs: ActionNeeds,
  weighUp: WeighUp,
  said: MixedJarSaid,
): Logged<'jar-filled'> {
  const shop = needs.logbook.shop.value;
  const batch = pouredBatch(weighUp);
  if (batch.length === 0) return refuseWith(JAR_WORDS.nothingPoured, ['mix', 'weigh', weighUp.id]);
  const mixed = mixedProduct(batch, shop, JAR_WORDS.ownMix);
  if (!mixed.ok) return refuseMix(mixed.failure, shop);
  return log(needs, 'jar-filled', { ...mixed.value, ...said, weighUp: weighUp.id, jar: needs.newId() });
}
