import type { Match, ReadingSet } from '../../logbook/fold/piece/matches';
import { deltaE00 } from '../../science/colour/delta-e-00';
import type { Lab } from '../../science/colour/lab';
import type { White } from '../../science/colour/white-points';
import { setsOf } from './aim';
import { readSurface } from './surface';

/**
 * Readings of one card lie within some tenths of each other; further apart, in deltaE00, it is another surface as a rule: the next
 * trial, or the card turned round. Judgement: three times what a single reading is taken to scatter.
 */
export const FAR_E00 = 1;

/** New readings that do not look like one surface, and how far they are apart. */
export interface FarReading {
  readonly dE00: number;
  /** What the surface read before; undefined where the new readings disagree among themselves. */
  readonly before: Lab | undefined;
}

/** The readings there are of the surface that new ones are said to be of: the same thing, as dry, under as much clear. */
function earlier(match: Match, said: Pick<ReadingSet, 'of' | 'isDry' | 'clearCoats'>): ReadingSet[] {
  const { of, isDry, clearCoats } = said;
  const sets =
    of.as === 'trial'
      ? (match.trials.find(({ id }) => id === of.trial)?.readings ?? [])
      : setsOf(match, of.as).filter((set) => isSame(set.of, of));
  return sets.filter((set) => set.isDry === isDry && set.clearCoats === clearCoats);
}

function isSame(one: ReadingSet['of'], other: ReadingSet['of']): boolean {
  if (one.as === 'tint' && other.as === 'tint')
    return one.tinter === other.tinter && one.share.si === other.share.si;
  return one.as !== 'toned' || other.as !== 'toned' || one.passes === other.passes;
}

/** Whether new readings are far from what the same surface read before, or from each other; undefined where they agree. */
export function farReading(
  match: Match,
  said: Pick<ReadingSet, 'of' | 'isDry' | 'clearCoats'>,
  labs: readonly Lab[],
  white: White,
): FarReading | undefined {
  const before = readSurface(earlier(match, said), white).surface;
  const known = before?.by === 'instrument' ? before.lab : undefined;
  const [first] = labs;
  const from = known ?? first;
  if (!from) return undefined;
  const dE00 = Math.max(...labs.map((lab) => deltaE00<White>(lab, from)));
  return dE00 > FAR_E00 ? { dE00, before: known } : undefined;
}
