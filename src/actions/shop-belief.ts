import { beliefOf, PRIOR, weigh } from '../estimator/belief';
import type { Belief } from '../estimator/estimate';

/** How far one piece differs from the next with the same product (common practice, no source). */
const BETWEEN_PIECES = 0.3;
/** What a piece without a check has learned, as the estimator weighs it: nothing. */
const NOTHING_LEARNED = precisionOf(beliefOf(weigh(PRIOR, [], [])));
/** Less than this is rounding. */
const LEAST_PRECISION = 1e-3;

/**
 * What other pieces with the same product say of it, as the belief of a shop; undefined where they say nothing.
 *
 * Source: product of normal densities; each piece's own word is what it learned with the default prior taken out, widened by the
 * spread between pieces.
 * @param learned each from its own checks and the default prior
 */
export function shopBelief(learned: readonly Belief[]): Belief | undefined {
  const words = learned.flatMap(wordOf);
  if (words.length === 0) return undefined;
  const precision = words.reduce((sum, word) => sum + word.precision, precisionOf(PRIOR));
  const weighted = words.reduce((sum, word) => sum + word.precision * word.mean, 0);
  return { mean: weighted / precision, spread: precision ** -0.5 };
}

function precisionOf({ spread }: Belief): number {
  return spread ** -2;
}

function wordOf(learned: Belief): { mean: number; precision: number }[] {
  const precision = precisionOf(learned) - NOTHING_LEARNED;
  if (precision < LEAST_PRECISION) return [];
  const mean = (learned.mean * precisionOf(learned)) / precision;
  return [{ mean, precision: 1 / (1 / precision + BETWEEN_PIECES ** 2) }];
}
