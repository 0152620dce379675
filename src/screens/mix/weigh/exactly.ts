import { type Standing, standingOf } from '../../../actions/mix/weigh-up';
import type { WeighUp } from '../../../logbook/fold/mix/weigh-ups';
import { weighing } from '../../../science/mixing/weigh/weighing';
import { gramsWords, scaleWords } from '../grams';

/** What to log where exactly the next line's amount went in. */
export interface Exactly {
  /** The scale's reading, in grams; where the scale cannot show so little, what it would read if it could. */
  readonly scaleG: string;
  /** In words: what the scale shows, or the amount that it cannot show. */
  readonly said: string;
  readonly isSeen: boolean;
}

const FINEST_DECIMALS = 4; // of a gram, as the logbook takes it

/** An amount that the scale cannot show, counted in drops or poured by eye, is as planned: never nothing, and never a whole division. */
export function exactly(
  weighUp: WeighUp,
  { lines, next, targetKg }: Standing = standingOf(weighUp),
): Exactly {
  const toPourKg = lines[next ?? -1]?.toPourKg ?? 0;
  const isSeen = weighing(toPourKg, weighUp.divisionKg) !== 'not-weighable';
  const shown = scaleWords(targetKg, weighUp.divisionKg);
  if (isSeen) return { scaleG: shown, said: shown, isSeen };
  const scaleG = String(Number((targetKg * 1000).toFixed(FINEST_DECIMALS)));
  return { scaleG, said: gramsWords(toPourKg), isSeen };
}
