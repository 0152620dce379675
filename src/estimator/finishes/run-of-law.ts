import { LONGEST_S } from '../read-off';
import type { FinishLaw } from './finish-law';
import type { LawCoat, LawHistory } from './law-history';
import { type Progress, progress, type Stretch } from './progress';

/** The laws hold for films up to so many times a usual one, or so much thinner (judgement, no source). */
const MOST_STRETCH = 4;

/** The coat that decides. Throws a RangeError where the history has none. */
export function newest({ coats }: LawHistory): LawCoat {
  const coat = coats.at(-1);
  if (!coat) throw new RangeError('The history has no coat.');
  return coat;
}

/** Dry film that is left, m: sanding takes no more than lies there, and nothing of a coat that goes on later. */
export function totalDryM({ coats, sandings }: Pick<LawHistory, 'coats' | 'sandings'>): number {
  const changes = [
    ...coats.map(({ atS, dryM }) => ({ atS, byM: dryM })),
    ...sandings.map(({ atS, removedM }) => ({ atS, byM: -removedM })),
  ].sort((one, other) => one.atS - other.atS);
  return changes.reduce((sum, { byM }) => Math.max(0, sum + byM), 0);
}

/** How far the newest coat comes through the air that it had, from when it was laid, for so long. */
export function runOf(law: FinishLaw, history: LawHistory, forS: number = LONGEST_S): Progress {
  return progress(law, history.air, newest(history).atS, stretchOf(law, history), forS);
}

const within = (factor: number): number => Math.min(MOST_STRETCH, Math.max(1 / MOST_STRETCH, factor));

/** How much longer a coat of so much dry film takes to dry than a usual one, on a film of no more than the usual build. */
export const stretchOfCoat = (law: FinishLaw, dryM: number): Stretch => ({
  drying: within(dryM / law.usualDryM),
  cure: 1,
});

function stretchOf(law: FinishLaw, history: LawHistory): Stretch {
  const build = Math.max(1, totalDryM(history) / law.usualTotalM);
  return { ...stretchOfCoat(law, newest(history).dryM), cure: within(build ** law.buildPower) };
}
