import { parseNumber, readTyped } from '../../logbook/as-typed';
import type { Match, ReadingSet } from '../../logbook/fold/piece/matches';
import { LIMITS } from '../../logbook/limits';
import { quantity } from '../../logbook/typed';
import { impossiblePart } from '../../science/colour/lab';
import { type FarReading, farReading } from '../../shop/colour/far-reading';
import { labOf } from '../../shop/colour/lab-of';
import { READ_PROBLEMS } from '../../words/match/read';
import { type ActionNeeds, type Logged, log, type Said } from '../log';
import { refuseWith } from '../mix/mix-refused';

export type ColourSaid = Said<'colour-read'>;
export type ReadingSaid = ColourSaid['readings'][number];

/** Keeps readings of one surface; one that no surface can have, or that has no colour under its light, is refused. */
export async function readColour(needs: ActionNeeds, said: ColourSaid, atMs?: number): Logged<'colour-read'> {
  for (const [i, reading] of said.readings.entries()) {
    const problem = readingProblem(reading, said.white);
    if (problem) return refuseWith(problem, `readings.${i}`);
  }
  return log(needs, 'colour-read', said, atMs);
}

/** What is wrong with a reading as a whole; the schema answers for its parts. */
function readingProblem(reading: ReadingSaid, white: ColourSaid['white']): string | undefined {
  if (reading.as === 'hex' && white !== 'D65/2') return READ_PROBLEMS.hexLight;
  if (reading.as === 'xyz' && ![reading.X, reading.Y, reading.Z].every(isTristimulus)) return undefined;
  if (reading.as !== 'xyz' && reading.as !== 'spectrum') return undefined;
  const lab = labOf(inSi(reading), white);
  if (!lab) return READ_PROBLEMS.noColour;
  return impossiblePart(lab) ? READ_PROBLEMS.impossible : undefined;
}

const isTristimulus = (typed: { readonly text: string; readonly unit: 'ratio' }): boolean =>
  readTyped(typed, LIMITS.tristimulus).ok;

function inSi(reading: ReadingSaid): ReadingSet['readings'][number] {
  const part = (typed: { readonly text: string; readonly unit: 'ratio' }) => ({
    si: parseNumber(typed.text) ?? Number.NaN,
    typed,
  });
  if (reading.as === 'xyz') return { as: 'xyz', X: part(reading.X), Y: part(reading.Y), Z: part(reading.Z) };
  if (reading.as === 'lab') return { as: 'lab', L: part(reading.L), a: part(reading.a), b: part(reading.b) };
  return reading;
}

/** Readings about to be logged that do not look like the surface they are said to be of: to be asked about first. */
export function farFromBefore(match: Match, said: ColourSaid): FarReading | undefined {
  const labs = said.readings.flatMap((reading) => labOf(inSi(reading), said.white) ?? []);
  const share =
    said.of.as === 'tint' ? { of: { ...said.of, share: quantity(said.of.share) } } : { of: said.of };
  return farReading(match, { ...said, ...share }, labs, said.white);
}
