import { deltaE00 } from '../delta-e-00';
import type { Lab } from '../lab';
import type { White } from '../white-points';

/** Several readings of one surface: their mean, and how far they scatter. */
export interface MeanReading<W extends White = White> {
  readonly lab: Lab<W>;
  readonly count: number;
  /** Standard deviation of single readings as deltaE00 from their mean; undefined for a single reading. */
  readonly spreadE00: number | undefined;
  /** Half the 68 % band of the mean, in deltaE00. */
  readonly uncertaintyE00: number;
}

/** Scatter taken for a reading that was not repeated, in deltaE00. Common practice, no source. */
const SINGLE_READING_SPREAD_E00 = 0.3;

// Even identical readings cannot be better than the instrument repeats itself (common practice, no source).
const INSTRUMENT_REPEATABILITY_E00 = 0.05;

/**
 * Mean of readings of one surface under one light, with their spread in deltaE00.
 * Throws a RangeError when there is none, or when they were taken under different lights.
 */
export function meanReading<W extends White>(readings: readonly Lab<W>[]): MeanReading<W> {
  const [first] = readings;
  if (!first) throw new RangeError('There is no reading to average.');
  const mean = (part: 'L' | 'a' | 'b'): number =>
    readings.reduce((sum, reading) => sum + reading[part], 0) / readings.length;
  const lab: Lab<W> = { white: first.white, L: mean('L'), a: mean('a'), b: mean('b') };
  const squares = readings.reduce((sum, reading) => sum + deltaE00<White>(reading, lab) ** 2, 0);
  const count = readings.length;
  const spreadE00 = count > 1 ? Math.sqrt(squares / (count - 1)) : undefined;
  const scatter = Math.max(spreadE00 ?? SINGLE_READING_SPREAD_E00, INSTRUMENT_REPEATABILITY_E00);
  return { lab, count, spreadE00, uncertaintyE00: scatter / Math.sqrt(count) };
}
