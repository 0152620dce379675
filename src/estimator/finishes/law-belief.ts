import { logChance, TENTH, weigh } from '../belief';
import type { Belief } from '../estimate';
import type { Spread } from './finish-law';

/**
 * How slow a product is within the band of its law, in spreads of that band: 0 is the typical one, 1.28 the slow end. Drying
 * and cure are two: a film that dries soon may still cure late.
 */
export interface LawBelief {
  readonly drying: Belief;
  readonly cure: Belief;
}

/** What the checks of one piece say of both: the logarithm of their chance at each of {@link SLOWNESSES}. */
export type LawLearned = { readonly [Column in keyof LawBelief]: readonly number[] };

/** Before any check. */
export const UNTAUGHT: Belief = { mean: 0, spread: 1 };

/** No product is believed to lie further out than this (judgement, no source). */
export const FURTHEST = 3.5;
const FINEST = 0.05;
/** All slownesses that are looked at. */
export const SLOWNESSES: readonly number[] = Array.from(
  { length: Math.round((2 * FURTHEST) / FINEST) + 1 },
  (_, k) => -FURTHEST + k * FINEST,
);

/** The time of a moment for a product so slow, s. */
export function timeAt({ low, typical, high }: Spread, slow: number): number {
  const end = slow < 0 ? low : high;
  return typical * (end / typical) ** (Math.abs(slow) / TENTH);
}

/** What a check says: how far past what it asks the film was, in widths of that test, for a product so slow. */
export interface Evidence {
  readonly margin: (slow: number) => number;
  readonly passes: boolean;
}

/**
 * Logarithm of the chance of what was found, at each of {@link SLOWNESSES}: logistic, that a film passes a test. A film is further on
 * the less slow its product, so a passing check never makes it slower and a failing one never faster.
 */
export const chancesOf = (evidence: readonly Evidence[]): readonly number[] =>
  SLOWNESSES.map((slow) =>
    evidence.reduce((sum, { margin, passes }) => sum + logChance(margin(slow), passes), 0),
  );

/**
 * The slownesses below which a tenth, a half and nine tenths of the belief lie: those of the normal first belief, moved as far as
 * the evidence moves them among the slownesses looked at, so that no evidence moves nothing.
 */
export function bandAfter(first: Belief, evidence: readonly Evidence[]): Spread {
  const before = weigh(first, [], SLOWNESSES);
  const after = weigh(first, chancesOf(evidence), SLOWNESSES);
  const at = (share: number, spreads: number): number =>
    first.mean + spreads * first.spread + quantile(after, share) - quantile(before, share);
  return { low: at(0.1, -TENTH), typical: at(0.5, 0), high: at(0.9, TENTH) };
}

/** Each weight is spread evenly over its cell. */
function quantile(weights: readonly number[], share: number): number {
  let sum = 0;
  for (const [k, weight] of weights.entries()) {
    if (sum + weight >= share) return (SLOWNESSES[k] as number) + FINEST * ((share - sum) / weight - 0.5);
    sum += weight;
  }
  return FURTHEST;
}

/** The times of a moment, sharpened. */
export const sharpened = (times: Spread, { low, typical, high }: Spread): Spread => ({
  low: timeAt(times, low),
  typical: timeAt(times, typical),
  high: timeAt(times, high),
});
