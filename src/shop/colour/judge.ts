import type { Match, Trial } from '../../logbook/fold/piece/matches';
import { type ColourDifference, colourDifference } from '../../science/colour/delta-e-00';
import { type PainterRemark, paintersWords } from '../../science/colour/painters-words';
import { spectrumToLab } from '../../science/colour/spectrum';
import { type ColourVerdict, verdict } from '../../science/colour/verdict';
import { type LightDifference, worstOfLights } from '../../science/colour/worst-light';
import { aimFor, type MatchAim, toleranceOf } from './aim';
import { type KnownSurface, readSurface, type SurfaceRead, setsUnder, type Under } from './surface';

/** How a surface stands to its aim. */
export interface Judgement {
  readonly difference: ColourDifference;
  readonly words: readonly PainterRemark[];
  /** Under the worst light, where spectra exist. */
  readonly verdict: ColourVerdict;
  /** Worst first; empty where there are no spectra. */
  readonly lights: readonly LightDifference[];
}

/** Judges a surface against its aim. Both are under one light. */
export function judge(sample: KnownSurface, aim: KnownSurface, toleranceE00: number): Judgement {
  const difference = colourDifference(sample.lab, aim.lab);
  const words = paintersWords(difference);
  if (!sample.spectrum || !aim.spectrum)
    return { difference, words, verdict: verdict(sample, aim, toleranceE00), lights: [] };
  const lights = worstOfLights(sample.spectrum, aim.spectrum);
  const [{ white, dE00 }] = lights;
  const own = verdict(sample, aim, toleranceE00);
  if (difference.dE00 >= dE00) return { difference, words, verdict: own, lights };
  const worst = verdict(
    { ...sample, lab: spectrumToLab(sample.spectrum, white) },
    { ...aim, lab: spectrumToLab(aim.spectrum, white) },
    toleranceE00,
  );
  return { difference, words, verdict: worst, lights };
}

/** One side of a trial, bare or under clear: what was read, its aim, and how it stands to it. */
export interface TrialSide extends SurfaceRead {
  readonly under: Under;
  readonly aim: MatchAim | undefined;
  readonly judgement: Judgement | undefined;
}

/** How a trial stands, bare and under clear; a side nobody has read is left out. */
export function sidesOf(match: Match, { readings }: Pick<Trial, 'readings'>): TrialSide[] {
  return (['bare', 'clear'] as const).flatMap((under) => {
    const sets = setsUnder(readings, under);
    if (sets.length === 0) return [];
    const read = readSurface(sets, match.white);
    const aim = aimFor(match, under);
    const judgement = read.surface && aim ? judge(read.surface, aim.surface, toleranceOf(match)) : undefined;
    return [{ ...read, under, aim, judgement }];
  });
}

/** The side of a trial that counts: as the finished repair will be seen, where it was read so. */
export const sideThatCounts = (match: Match, sides: readonly TrialSide[]): TrialSide | undefined =>
  sides.find(({ under }) => under === match.through) ?? sides[0];
