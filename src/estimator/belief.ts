import type { Belief, FilmCheck } from './estimate';
import { at, THRESHOLD_K } from './read-off';
import type { Trace } from './trace';

/** A tenth of a normal distribution lies beyond so many spreads. */
export const TENTH = 1.2816;

/** Eight values of ten lie within this factor of the likely one, either way. */
export const factorOf = ({ spread }: Belief): number => Math.exp(TENTH * spread);

/** Before any check: diffusivity within a factor 2.5 either way in eight cases of ten (calibration to common practice). */
export const PRIOR: Belief = { mean: 0, spread: Math.log(2.5) / TENTH };
/** Evaporation within a factor 1.5 either way in eight cases of ten (judgement, no source): as a logarithm, at which the stack is run too. */
export const EVAPORATION_STEP = Math.log(1.5);
export const EVAPORATION_SPREAD = EVAPORATION_STEP / TENTH;

/** Logarithms of the diffusivity, relative to the default, at which the stack is run. */
export const RUN_AT: readonly number[] = [-1.8, -1.2, -0.6, 0, 0.6, 1.2, 1.8];
const FINEST = 0.05;
/** All values of the logarithm that are weighed; the runs are interpolated between. */
export const WEIGHED_AT: readonly number[] = Array.from({ length: 73 }, (_, k) => -1.8 + k * FINEST);

/** How sharply a test tells, K: a thumb or a sheet of paper knows hardness to a few kelvin, a nose hardly (judgement, no source). */
const SHARPNESS_K = { print: 4, gum: 4, smell: 10 } as const;

/** How far past what a check asks the film was in a run, K. */
export function checkMarginK(trace: Trace, check: FilmCheck, sandingK: number): number {
  const biteTgK = at(trace, trace.biteTgK, check.atS);
  switch (check.test) {
    case 'print':
      return biteTgK - at(trace, trace.airK, check.atS) - THRESHOLD_K.print;
    case 'gum':
      return biteTgK - sandingK - THRESHOLD_K.level;
    case 'smell':
      return biteTgK - sandingK - THRESHOLD_K.rubOut;
  }
}

/**
 * Logarithm of the chance of what was found, at each of {@link WEIGHED_AT}: logistic, that a film passes a test.
 * @param margins by check, the margin in each run of {@link RUN_AT}, K
 */
export const chancesOf = (
  checks: readonly FilmCheck[],
  margins: readonly (readonly number[])[],
): readonly number[] =>
  WEIGHED_AT.map((x) =>
    checks.reduce((sum, { test, passes }, c) => {
      const margin = between(margins[c] as readonly number[], x) / SHARPNESS_K[test];
      return sum + logChance(margin, passes);
    }, 0),
  );

/** Logarithm of the logistic chance that a film so far past what a test asks, in widths of that test, came out so. */
export const logChance = (margin: number, passes: boolean): number =>
  -Math.log1p(Math.exp(passes ? -margin : margin));

/**
 * Weights of the values that are weighed, summing to 1: Bayes' rule on a normal belief.
 * @param chances logarithm of the chance of what was found at each, known but for a constant; none where nothing was found
 */
export function weigh(
  { mean, spread }: Belief,
  chances: readonly number[],
  at: readonly number[] = WEIGHED_AT,
): number[] {
  const logs = at.map((x, k) => (chances[k] ?? 0) - 0.5 * ((x - mean) / spread) ** 2);
  const highest = Math.max(...logs);
  const raw = logs.map((log) => Math.exp(log - highest));
  const sum = raw.reduce((total, w) => total + w, 0);
  return raw.map((w) => w / sum);
}

/** Mean and spread of what is weighed. */
export function beliefOf(weights: readonly number[], at: readonly number[] = WEIGHED_AT): Belief {
  const mean = weights.reduce((sum, w, k) => sum + w * (at[k] as number), 0);
  const variance = weights.reduce((sum, w, k) => sum + w * ((at[k] as number) - mean) ** 2, 0);
  return { mean, spread: Math.sqrt(variance) };
}

/** A value known at the runs, between them; Infinity beside an Infinity. */
export function between(values: readonly number[], x: number): number {
  const step = (RUN_AT[1] as number) - (RUN_AT[0] as number);
  const place = Math.min(RUN_AT.length - 1, Math.max(0, (x - (RUN_AT[0] as number)) / step));
  const nearest = Math.round(place);
  if (Math.abs(place - nearest) < 1e-9) return values[nearest] as number;
  const low = Math.floor(place);
  const share = place - low;
  const a = values[low] as number;
  const b = values[low + 1] as number;
  if (!Number.isFinite(a - b)) return Math.max(a, b);
  return a + (b - a) * share;
}

/** The value below which a share of the weight lies. */
export function quantile(
  rows: readonly { readonly value: number; readonly weight: number }[],
  share: number,
): number {
  const sorted = [...rows].sort((a, b) => a.value - b.value); // two without end differ by no number, which sorts as alike
  let sum = 0;
  for (const { value, weight } of sorted) {
    sum += weight;
    if (sum >= share) return value;
  }
  return sorted.at(-1)?.value ?? Number.NaN;
}
