import { parseNumber } from '../../logbook/as-typed';
import { pouredKg, type WeighUp } from '../../logbook/fold/mix/weigh-ups';
import { type Rescaled, rescaled } from '../../science/mixing/weigh/over-pour';
import { WEIGH_WORDS } from '../../words/mix/weigh';
import { type ActionNeeds, type Logged, log, type Said } from '../log';
import { refuseWith } from './mix-refused';

/** Begins a weigh-up by a plan in the order of pouring. */
export const beginWeighUp = (
  needs: ActionNeeds,
  said: Omit<Said<'weigh-up-begun'>, 'weighUp'>,
): Logged<'weigh-up-begun'> => log(needs, 'weigh-up-begun', { ...said, weighUp: needs.newId() });

/** Notes what the scale shows after a pour; less than it showed before is refused. */
export async function pour(
  needs: ActionNeeds,
  weighUp: WeighUp,
  line: number,
  scaleG: string,
): Logged<'poured'> {
  const shownKg = (parseNumber(scaleG, 'g') ?? Number.NaN) / 1000;
  if (!weighUp.isTared && shownKg <= weighUp.totalKg)
    return refuseWith(WEIGH_WORDS.lessThanBefore(weighUp.totalKg * 1000), 'scale');
  return log(needs, 'poured', { weighUp: weighUp.id, line, scale: { text: scaleG, unit: 'g' } });
}

/** Gives up a weigh-up; its pours stay in the logbook. */
export const dropWeighUp = (needs: ActionNeeds, weighUp: string): Logged<'weigh-up-dropped'> =>
  log(needs, 'weigh-up-dropped', { weighUp });

/** Where a weigh-up stands. */
export interface Standing extends Rescaled {
  /** Which line is next; undefined when all is poured. */
  readonly next: number | undefined;
  /** What the scale should show once the next line is poured, kg. */
  readonly targetKg: number;
}

/** What is left of a weigh-up, in its order; top-ups come after what has not been poured at all. */
export function standingOf(weighUp: WeighUp): Standing {
  const done = rescaled(weighUp.plan, pouredKg(weighUp), weighUp.divisionKg);
  const isOpen = (i: number): boolean => (done.lines[i]?.toPourKg ?? 0) > 0;
  const lines = [...done.lines.keys()].filter(isOpen);
  const next = lines.find((i) => done.lines[i]?.pouredKg === 0) ?? lines[0];
  const toPourKg = next === undefined ? 0 : (done.lines[next]?.toPourKg ?? 0);
  return { ...done, next, targetKg: weighUp.isTared ? toPourKg : weighUp.totalKg + toPourKg };
}

/** The line whose over-pour made the batch grow, by exactly its own growth; undefined where none did. */
export function overPouredLine(weighUp: WeighUp): number | undefined {
  const { factor, lines } = standingOf(weighUp);
  if (factor === 1) return undefined;
  const isAt = ({ line }: { readonly line: number }): boolean =>
    (lines[line]?.pouredKg ?? 0) / (weighUp.plan[line]?.massKg ?? Number.NaN) === factor;
  return weighUp.pours.find(isAt)?.line;
}
