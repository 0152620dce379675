import type { Match, Trial } from '../../logbook/fold/piece/matches';
import type { Lab } from '../../science/colour/lab';
import { afterTrials, type Belief, type Trial as ReadTrial } from '../../science/pigment/belief';
import { learnedBelief } from '../../science/pigment/learned-strength';
import { shiftOf } from './aim';
import { matchJar } from './jar-content';
import { type KnownTinter, type MatchModel, modelJar } from './model';
import { isFirm, readSurface, setsUnder } from './surface';

/** The least that a reading may be off in each of L*, a* and b*. Judgement; as in the simulated finisher. */
const LEAST_READING_SD = 0.15;

/** What is believed of a match's tinters, and the trials that say so. */
export interface Believed {
  readonly belief: Belief;
  readonly trials: readonly Trial[];
}

/** The bare colour of a trial: read bare, or read under clear and the clear's shift taken off. */
export function readingOf(match: Match, { readings }: Trial): { lab: Lab; sd: number } | undefined {
  const bare = readSurface(setsUnder(readings, 'bare'), match.white).surface;
  if (isFirm(bare)) return { lab: bare.lab, sd: Math.max(bare.uncertaintyE00, LEAST_READING_SD) };
  const clear = readSurface(setsUnder(readings, 'clear'), match.white).surface;
  const shift = shiftOf(match)?.shift;
  if (!isFirm(clear) || !shift) return undefined;
  const { L, a, b, white } = clear.lab;
  const lab = { white, L: L - shift.dL, a: a - shift.da, b: b - shift.db };
  return { lab, sd: Math.max(2 * clear.uncertaintyE00, LEAST_READING_SD) };
}

/** What the trials of a match say of its tinters, on top of what earlier ones taught. */
export function believe(
  match: Match,
  { model, tinters, doubts }: MatchModel,
  lessons: Parameters<typeof learnedBelief>[1],
): Believed {
  const read = match.trials.flatMap((trial) => {
    const reading = readingOf(match, trial);
    const jar = modelJar(match, tinters, trial.number);
    if (!reading || jar.whiteGrams <= 0) return [];
    return [{ trial, read: { jar, reading: reading.lab, readingSd: reading.sd } satisfies ReadTrial }];
  });
  const first = learnedBelief(doubts, lessons);
  return {
    belief: afterTrials(
      model,
      first,
      read.map((one) => one.read),
    ),
    trials: read.map(({ trial }) => trial),
  };
}

/** A tinter in the jar whose effect nobody knows. */
export function strangerIn(match: Match, tinters: readonly KnownTinter[]): string | undefined {
  const names = new Set(tinters.map(({ ingredient }) => ingredient));
  return [...matchJar(match).tinterGrams.keys()].find((ingredient) => !names.has(ingredient));
}
