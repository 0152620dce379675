import { beliefOf, PRIOR, WEIGHED_AT, weigh } from '../../estimator/belief';
import type { Belief } from '../../estimator/estimate';
import { believed, FURTHEST, type LawBelief, UNTAUGHT } from '../../estimator/finishes/law-belief';

/** What is believed of a product before any check, and what a piece without a check has learned as its estimator weighs it: nothing. */
export interface BeforeChecks {
  readonly prior: Belief;
  readonly nothing: Belief;
  /** Nothing further out is weighed, so nobody's word is for further out. */
  readonly furthest: number;
}
/** Of how solvent moves in a lacquer. */
export const OF_LACQUER: BeforeChecks = {
  prior: PRIOR,
  nothing: beliefOf(weigh(PRIOR, [], [])),
  furthest: WEIGHED_AT.at(-1) as number,
};
/** Of how a finish that cures lies in the band of its law. */
const OF_LAW: BeforeChecks = { prior: UNTAUGHT, nothing: believed(UNTAUGHT, []), furthest: FURTHEST };

/** What one piece or one card has learned from the default prior, and how far it stands off the piece at hand. */
export interface Learned extends Belief {
  /** As a share of the prior's spread; as one piece from the next where absent. */
  readonly apart?: number;
}

/** How far one piece differs from the next with the same product, as a share of the prior's spread (common practice, no source). */
export const BETWEEN_PIECES = 0.3 / PRIOR.spread;
/** Less than this is rounding. */
const LEAST = 1e-3;

/**
 * What other pieces with the same product say of it, as the belief of a shop; undefined where they say nothing.
 *
 * Source: product of normal densities; each piece's own word is what it learned with the default prior taken out, widened by the
 * spread between pieces, and by what else lies between: another jar, time. A piece found against all belief is less sure than it was:
 * it moves what is believed towards the end that it speaks for, and makes nobody surer (judgement).
 * @param learned each from its own checks and the default prior
 */
export function shopBelief(learned: readonly Learned[], before: BeforeChecks): Belief | undefined {
  const words = learned.flatMap((one) => wordOf(one, before));
  if (words.length === 0) return undefined;
  const sumOf = (of: (word: Word) => number): number => words.reduce((sum, word) => sum + of(word), 0);
  const first = precisionOf(before.prior);
  return {
    mean: sumOf(({ weight, mean }) => weight * mean) / (first + sumOf(({ weight }) => weight)),
    spread: (first + sumOf(({ precision }) => precision)) ** -0.5,
  };
}

/** What other pieces say of a product that cures; the piece at hand differs from them once more. Undefined where they say nothing. */
export function shopLawBelief(
  learned: readonly (LawBelief & Pick<Learned, 'apart'>)[],
): LawBelief | undefined {
  const of = (column: keyof LawBelief): Belief | undefined =>
    shopBelief(
      learned.map((one) => ({ ...one[column], ...(one.apart !== undefined && { apart: one.apart }) })),
      OF_LAW,
    );
  const [drying, cure] = [of('drying'), of('cure')];
  return drying || cure ? { drying: forOnePiece(drying), cure: forOnePiece(cure) } : undefined;
}

const forOnePiece = ({ mean, spread }: Belief = UNTAUGHT): Belief => ({
  mean,
  spread: Math.min(Math.hypot(spread, BETWEEN_PIECES * UNTAUGHT.spread), UNTAUGHT.spread),
});

function precisionOf({ spread }: Belief): number {
  return spread ** -2;
}

/** What one piece says: where it lies, how much that weighs, and how much surer it makes. */
interface Word {
  readonly mean: number;
  readonly weight: number;
  readonly precision: number;
}

function wordOf(learned: Learned, { prior, nothing, furthest }: BeforeChecks): Word[] {
  const { mean: moved, apart = BETWEEN_PIECES } = learned;
  const precision = Math.max(0, precisionOf(learned) - precisionOf(nothing));
  if (precision < LEAST && Math.abs(moved) < LEAST) return [];
  const widened = (own: number): number => own / (1 + own * (apart * prior.spread) ** 2);
  const mean = (moved * precisionOf(learned)) / precision;
  if (Math.abs(mean) <= furthest)
    return [{ mean, weight: widened(precision), precision: widened(precision) }];
  // So much as moves what was believed by as much.
  const weight = (precisionOf(nothing) * Math.abs(moved)) / (furthest - Math.abs(moved));
  return [{ mean: Math.sign(moved) * furthest, weight: widened(weight), precision: widened(precision) }];
}
