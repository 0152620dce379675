import { beliefOf, PRIOR, weigh } from '../../estimator/belief';
import type { Belief } from '../../estimator/estimate';
import { believed, type LawBelief, UNTAUGHT } from '../../estimator/finishes/law-belief';

/** What is believed of a product before any check, and what a piece without a check has learned as its estimator weighs it: nothing. */
export interface BeforeChecks {
  readonly prior: Belief;
  readonly nothing: Belief;
}
/** Of how solvent moves in a lacquer. */
export const OF_LACQUER: BeforeChecks = { prior: PRIOR, nothing: beliefOf(weigh(PRIOR, [], [])) };
/** Of how a finish that cures lies in the band of its law. */
const OF_LAW: BeforeChecks = { prior: UNTAUGHT, nothing: believed(UNTAUGHT, []) };

/** What one piece or one card has learned from the default prior, and how far it stands off the piece at hand. */
export interface Learned extends Belief {
  /** As a share of the prior's spread; as one piece from the next where absent. */
  readonly apart?: number;
}

/** How far one piece differs from the next with the same product, as a share of the prior's spread (common practice, no source). */
export const BETWEEN_PIECES = 0.3 / PRIOR.spread;
/** Less than this is rounding. */
const LEAST_PRECISION = 1e-3;

/**
 * What other pieces with the same product say of it, as the belief of a shop; undefined where they say nothing.
 *
 * Source: product of normal densities; each piece's own word is what it learned with the default prior taken out, widened by the
 * spread between pieces, and by what else lies between: another jar, time.
 * @param learned each from its own checks and the default prior
 */
export function shopBelief(learned: readonly Learned[], before: BeforeChecks): Belief | undefined {
  const words = learned.flatMap((one) => wordOf(one, before));
  if (words.length === 0) return undefined;
  const precision = words.reduce((sum, word) => sum + word.precision, precisionOf(before.prior));
  const weighted = words.reduce((sum, word) => sum + word.precision * word.mean, 0);
  return { mean: weighted / precision, spread: precision ** -0.5 };
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

function wordOf(learned: Learned, { prior, nothing }: BeforeChecks): { mean: number; precision: number }[] {
  const precision = precisionOf(learned) - precisionOf(nothing);
  if (precision < LEAST_PRECISION) return [];
  const mean = (learned.mean * precisionOf(learned)) / precision;
  const { apart = BETWEEN_PIECES } = learned;
  return [{ mean, precision: 1 / (1 / precision + (apart * prior.spread) ** 2) }];
}
