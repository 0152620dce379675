import { beliefOf, PRIOR, WEIGHED_AT, weigh } from '../../../estimator/belief';
import type { Belief } from '../../../estimator/estimate';
import {
  type LawBelief,
  type LawLearned,
  SLOWNESSES,
  UNTAUGHT,
} from '../../../estimator/finishes/law-belief';

/** What one piece or one card says by itself: the logarithm of the chance of what was found, at each value that is weighed. */
export interface Lesson {
  readonly chances: readonly number[];
  /** How far it stands off the piece at hand, as a share of the prior's spread; as one piece from the next where absent. */
  readonly apart?: number;
}

/** The values that are weighed, and what is believed of them before any check. */
interface Weighed {
  readonly at: readonly number[];
  readonly prior: Belief;
  /** The same before any check, among the values that are weighed. */
  readonly nothing: Belief;
}
const weighed = (at: readonly number[], prior: Belief): Weighed => ({
  at,
  prior,
  nothing: beliefOf(weigh(prior, [], at), at),
});
const OF_LACQUER = weighed(WEIGHED_AT, PRIOR);
const OF_LAW = weighed(SLOWNESSES, UNTAUGHT);

/** How far one piece differs from the next with the same product, as a share of the prior's spread (common practice, no source). */
export const BETWEEN_PIECES = 0.3 / PRIOR.spread;
/** Less than this is rounding. */
const LEAST = 1e-3;

/** What a card says by itself, where its word is a normal one: its belief with the default prior taken out. */
export const wordOf = ({ mean, spread }: Belief): readonly number[] =>
  WEIGHED_AT.map((x) => 0.5 * (x / OF_LACQUER.nothing.spread) ** 2 - 0.5 * ((x - mean) / spread) ** 2);

/**
 * What other pieces with the same product say of it, as the belief of a shop; undefined where they say nothing.
 *
 * Source: Bayes' rule over all of them at once, each blurred by what lies between it and the piece at hand. Taken one by one as normal
 * words they would lose it: a check far from what was believed leaves its own piece no surer, and six of them agree.
 */
export function shopBelief(lessons: readonly Lesson[], by: Weighed = OF_LACQUER): Belief | undefined {
  if (lessons.length === 0) return undefined;
  const { at, prior, nothing } = by;
  const words = lessons.map((lesson) => blurred(lesson, by));
  const together = at.map((_, k) => words.reduce((sum, word) => sum + (word[k] as number), 0));
  const after = beliefOf(weigh(prior, together, at), at);
  const gained = Math.max(0, precisionOf(after) - precisionOf(nothing));
  if (gained < LEAST && Math.abs(after.mean) < LEAST) return undefined;
  // The values that are weighed end somewhere, what is believed does not.
  const precision = precisionOf(prior) + gained;
  return { mean: (after.mean * (precisionOf(nothing) + gained)) / precision, spread: precision ** -0.5 };
}

const precisionOf = ({ spread }: Belief): number => spread ** -2;

const known = new WeakMap<readonly number[], Map<number, readonly number[]>>();
/** Nearer than this, two pieces are one. */
const NEAREST = 0.01;

/** What a piece says of another that lies so far off. */
function blurred({ chances, apart = BETWEEN_PIECES }: Lesson, { at, prior }: Weighed): readonly number[] {
  const by = Math.max(NEAREST, Math.round((apart * prior.spread) / NEAREST) * NEAREST);
  const before = known.get(chances);
  const found = before?.get(by);
  if (found) return found;
  const highest = Math.max(...chances);
  const raw = chances.map((log) => Math.exp(log - highest));
  const step = (at[1] as number) - (at[0] as number);
  const near = at.map((_, steps) => Math.exp(-0.5 * ((steps * step) / by) ** 2));
  const word = raw.map((_, i) => {
    let [sum, weight] = [0, 0];
    for (let j = 0; j < raw.length; j++) {
      const share = near[Math.abs(i - j)] as number;
      sum += share * (raw[j] as number);
      weight += share;
    }
    return Math.log(sum / weight);
  });
  known.set(chances, (before ?? new Map<number, readonly number[]>()).set(by, word));
  return word;
}

/** What other pieces say of a product that cures; the piece at hand differs from them once more. Undefined where they say nothing. */
export function shopLawBelief(
  learned: readonly (LawLearned & Pick<Lesson, 'apart'>)[],
): LawBelief | undefined {
  const of = (column: keyof LawBelief): Belief | undefined =>
    shopBelief(
      learned.map(({ apart, ...said }) => ({ chances: said[column], ...(apart !== undefined && { apart }) })),
      OF_LAW,
    );
  const [drying, cure] = [of('drying'), of('cure')];
  return drying || cure ? { drying: forOnePiece(drying), cure: forOnePiece(cure) } : undefined;
}

const forOnePiece = ({ mean, spread }: Belief = UNTAUGHT): Belief => ({
  mean,
  spread: Math.min(Math.hypot(spread, BETWEEN_PIECES * UNTAUGHT.spread), UNTAUGHT.spread),
});
