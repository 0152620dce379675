import { type Belief, firstBelief } from './belief';
import { STRENGTHS_PER_TINTER } from './colour-model';

/** What trials have taught of one tinter: mean and covariance of the logarithms of its three strengths. */
export interface LearnedStrength {
  readonly mean: readonly number[];
  readonly covariance: readonly (readonly number[])[];
}

/** What one match leaves of a lesson for the next, a share: the model errs in its own way at each colour (judgement). */
export const KEPT = { match: 0.9, year: 0.8, otherLot: 0.7, otherBase: 0.7 } as const;

const placesOf = (tinter: number): number[] =>
  Array.from({ length: STRENGTHS_PER_TINTER }, (_, band) => STRENGTHS_PER_TINTER * tinter + band);

/** What is believed of one tinter (its place in the model), for another jar to start from. */
export function learnedStrength({ mean, covariance }: Belief, tinter: number): LearnedStrength {
  const places = placesOf(tinter);
  return {
    mean: places.map((i) => mean[i] ?? 0),
    covariance: places.map((i) => places.map((k) => covariance[i]?.[k] ?? 0)),
  };
}

/**
 * The belief before any trial of this jar, with what earlier jars taught of its tinters.
 *
 * Source: each logarithm drifts back to what it was taken for, a share of the lesson staying (autoregression of the first order);
 * with share 1 the lesson stands as it was, with 0 it is forgotten. Left out: what a trial said of two tinters together.
 * @param doubts how unsure each tinter's strength is when nothing was learned, a fraction
 * @param lessons by tinter; undefined where there is none
 */
export function learnedBelief(
  doubts: readonly number[],
  lessons: readonly ({ readonly learned: LearnedStrength; readonly kept: number } | undefined)[],
): Belief {
  const first = firstBelief(doubts);
  const mean = [...first.mean];
  const covariance = first.covariance.map((row) => [...row]);
  lessons.forEach((lesson, tinter) => {
    if (!lesson) return;
    const { learned, kept } = lesson;
    placesOf(tinter).forEach((i, band) => {
      mean[i] = kept * (learned.mean[band] ?? 0);
      const row = covariance[i] as number[];
      placesOf(tinter).forEach((k, other) => {
        row[k] = kept ** 2 * (learned.covariance[band]?.[other] ?? 0) + (1 - kept ** 2) * (row[k] ?? 0);
      });
    });
  });
  return { mean, covariance };
}
