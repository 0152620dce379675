import type { Match } from '../../logbook/fold/piece/matches';
import { type Result, succeed } from '../../result';
import type { Batch } from '../../science/mixing/ingredient';
import { matchJar, partsOf } from '../../shop/colour/jar-content';
import { mixedProduct } from '../../shop/jar/mixed-product';
import { JAR_WORDS } from '../../words/mix/jar';
import { type ActionNeeds, log } from '../log';
import { type Filled, fillFromWeighUp, type MixedJarSaid } from '../mix/fill-from-weigh-up';
import { describeIngredient } from '../mix/ingredient';
import { refuseMix, refuseWith } from '../mix/mix-refused';
import { finishOfIngredient, usualFacts } from '../mix/usual-facts';
import { beginWeighUp } from '../mix/weigh-up';
import type { Refused } from '../refused';
import { gramsText } from './accept-trial';

/** What is said of the jar that a trial becomes. */
export interface TrialJarSaid extends MixedJarSaid {
  /** Thinner stirred in now, g. */
  readonly thinnerG?: number;
  /** What is in it once the draw-downs were taken out, g; all that was weighed in where it was not weighed again. */
  readonly leftG?: number;
}

/** What was weighed into a trial, as mixing counts it. */
export const trialBatch = (match: Match, trialNumber: number): Batch =>
  partsOf(match, trialNumber).map(([ingredient, grams]) => ({ ingredient, massKg: grams / 1000 }));

/**
 * Makes the jar in the hand, in which a trial was mixed, a jar of the shop: what was weighed in is its weigh-up, poured already.
 * Nothing is logged where a fact is missing that the jar cannot do without.
 */
export async function jarFromTrial(
  needs: ActionNeeds,
  match: Match,
  trialNumber: number,
  { thinnerG = 0, leftG, ...said }: TrialJarSaid,
): Promise<Result<Filled, Refused>> {
  const recipe = match.accepted?.recipe ?? '';
  const shop = needs.logbook.shop.value;
  const worked = mixedProduct(trialBatch(match, trialNumber), shop, JAR_WORDS.ownMix);
  if (!worked.ok) return refuseMix(worked.failure, shop);
  const { totalGrams: whole } = matchJar(match, trialNumber);
  const share = leftG === undefined ? 1 : leftG / whole;
  if (!(share > 0 && share <= MOST_HEAVIER))
    return refuseWith(JAR_WORDS.moreThanIn(gramsText(whole)), 'left');
  const thinner = thinnerG > 0 ? await thinnerOf(needs, match) : succeed(undefined);
  if (!thinner.ok) return thinner;
  const parts = [
    ...trialBatch(match, trialNumber).map(
      ({ ingredient, massKg }) => [ingredient, massKg * 1000 * share] as const,
    ),
    ...(thinner.value === undefined ? [] : ([[thinner.value, thinnerG]] as const)),
  ];
  const begun = await beginWeighUp(needs, {
    recipe,
    plan: parts.map(([ingredient, grams]) => ({ ingredient, massKg: grams / 1000 })),
    division: match.division.typed as { text: string; unit: 'g' },
    isTared: true,
  });
  if (!begun.ok) return begun;
  const { weighUp } = begun.value;
  for (const [line, [, grams]] of parts.entries()) {
    const scale = { text: gramsText(grams), unit: 'g' } as const;
    const poured = await log(needs, 'poured', { weighUp, line, scale });
    if (!poured.ok) return poured;
  }
  const made = needs.logbook.shop.value.weighUps.get(weighUp);
  return made ? fillFromWeighUp(needs, made, said) : refuseWith(JAR_WORDS.nothingPoured, ['match', match.id]);
}

/** A jar weighed again may show a little more than was weighed in: the scale's own doubt (judgement). */
const MOST_HEAVIER = 1.02;

/** A thinner of the shop, the newest one; where it has none, the usual one of the finish, which becomes an ingredient. */
async function thinnerOf(needs: ActionNeeds, match: Match): Promise<Result<string, Refused>> {
  const { ingredients } = needs.logbook.shop.value;
  const own = [...ingredients.values()].findLast(
    ({ is, putAwayMs }) => is === 'thinner' && putAwayMs === undefined,
  );
  if (own) return succeed(own.id);
  const finish = finishOfIngredient(ingredients.get(match.base) ?? {});
  const made = await describeIngredient(needs, {
    name: JAR_WORDS.usualThinner,
    is: 'thinner',
    ...usualFacts('thinner', finish),
  });
  return made.ok ? succeed(made.value.ingredient) : made;
}
