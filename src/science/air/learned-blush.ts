import { type BlushLimits, USUAL_BLUSH_LIMITS } from './blush';

/** A coat that was looked at: its dew-point margin when it was laid, and whether it turned white. */
export interface BlushSeen {
  readonly marginK: number;
  readonly blushed: boolean;
}

/** How far coats at one margin differ from each other, K, and how sure the usual limit is, K (judgement, no source). */
const COAT_SPREAD_K = 1.5;
const PRIOR_SPREAD_K = 2;
/** The limits that are weighed: finer than any is known. */
const GRID = { lowestK: -2, highestK: 20, stepK: 0.1 };
/** At least so much above the limit before a margin counts as easy (judgement, no source). */
const LEAST_EASY_K = 2;

/** A person's own limit: the margin at which half their coats turn white, and how surely it is known. */
export interface LearnedBlush {
  readonly limitK: number;
  readonly spreadK: number;
  readonly limits: BlushLimits;
  readonly seen: number;
}

/**
 * The blush limits of one person and shop, from the coats they looked at.
 *
 * A coat blushes with the chance of a logistic in its margin; the limit is its middle. Start: the usual limit of 5 K, give or
 * take 2 K; then Bayes, on a grid. The limits stay as usual while nothing was seen; the floor of 3 K stays in any case.
 * Source: logistic regression with a prior; ours. Left out: which solvents; a fast thinner needs more margin than a slow one.
 */
export function learnedBlush(seen: readonly BlushSeen[]): LearnedBlush {
  const { careK, easyK, floorK } = USUAL_BLUSH_LIMITS;
  let weight = 0;
  let first = 0;
  let second = 0;
  for (let at = GRID.lowestK; at <= GRID.highestK; at += GRID.stepK) {
    const w = Math.exp(logPrior(at, careK) + seen.reduce((sum, one) => sum + logLikelihood(one, at), 0));
    weight += w;
    first += w * at;
    second += w * at * at;
  }
  const limitK = first / weight;
  const spreadK = Math.sqrt(Math.max(0, second / weight - limitK * limitK));
  const beyondK = Math.max(LEAST_EASY_K, (easyK - careK) * Math.min(1, spreadK / PRIOR_SPREAD_K));
  const ownCareK = Math.max(floorK, limitK);
  const own = { floorK, careK: ownCareK, easyK: ownCareK + beyondK };
  return { limitK, spreadK, limits: seen.length === 0 ? USUAL_BLUSH_LIMITS : own, seen: seen.length };
}

const logPrior = (limitK: number, usualK: number): number =>
  -((limitK - usualK) ** 2) / (2 * PRIOR_SPREAD_K ** 2);

function logLikelihood({ marginK, blushed }: BlushSeen, limitK: number): number {
  const drive = (limitK - marginK) / COAT_SPREAD_K;
  return -Math.log1p(Math.exp(blushed ? -drive : drive));
}
