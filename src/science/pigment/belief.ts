import type { Lab } from '../colour/lab';
import type { White } from '../colour/white-points';
import {
  type ColourModel,
  corrected,
  type JarContent,
  mixColour,
  STRENGTHS_PER_TINTER,
} from './colour-model';

/**
 * What is believed of the tinters' strengths and of the model's own error: a mean and a covariance over the natural
 * logarithms of the strengths (three a tinter), followed by an offset of L*, a* and b* for this jar.
 */
export interface Belief {
  readonly mean: readonly number[];
  readonly covariance: readonly (readonly number[])[];
}

/** How unsure a tinter's strength is before a trial: 0.1 is 10 %. Common practice, no source. */
export const STRENGTH_DOUBT = { drawnDown: 0.1, generic: 0.4 } as const;

// What a three-band model gets wrong on its own, in L*, a* or b*: at first, and anew with each addition (judgement).
const OFFSET_SD = 0.25;
const OFFSET_DRIFT_SD = 0.2;

// A tinter that is weaker than thought is weaker in all bands: that much of the doubt is common to them (judgement).
const SHARED_DOUBT = 0.3;

/**
 * The belief before any trial.
 * @param doubts how unsure each tinter's strength is, as a fraction; see {@link STRENGTH_DOUBT}
 */
export function firstBelief(doubts: readonly number[]): Belief {
  const strengths = STRENGTHS_PER_TINTER * doubts.length;
  const covarianceOf = (i: number, k: number): number => {
    if (i >= strengths || k >= strengths) return i === k ? OFFSET_SD ** 2 : 0;
    const tinter = Math.floor(i / STRENGTHS_PER_TINTER);
    if (tinter !== Math.floor(k / STRENGTHS_PER_TINTER)) return 0;
    return (doubts[tinter] ?? 0) ** 2 * (i === k ? 1 : SHARED_DOUBT);
  };
  const all = Array.from({ length: strengths + 3 }, (_, i) => i);
  return { mean: all.map(() => 0), covariance: all.map((i) => all.map((k) => covarianceOf(i, k))) };
}

/** The model as it is now believed to be: strengths and the jar's own offset corrected. */
export function believedModel<W extends White>(
  model: ColourModel<W>,
  mean: readonly number[],
): ColourModel<W> {
  const [dL = 0, da = 0, db = 0] = mean.slice(-3);
  const toLab = (measured: readonly number[]): Lab<W> => {
    const { white, L, a, b } = model.toLab(measured);
    return { white, L: L + dL, a: a + da, b: b + db };
  };
  return { ...corrected(model, mean), toLab };
}

/** The colour that a belief expects of a jar. */
export function expectedColour<W extends White>(
  model: ColourModel<W>,
  { mean }: Belief,
  jar: JarContent,
): Lab<W> {
  return mixColour(believedModel(model, mean), jar);
}

const STEP = 1e-3;
const PARTS = ['L', 'a', 'b'] as const;

/** How L*, a* and b* of a jar answer to each of the believed quantities: three rows. */
function sensitivity(model: ColourModel, belief: Belief, jar: JarContent): number[][] {
  const here = expectedColour(model, belief, jar);
  const columns = belief.mean.map((_, i) => {
    if (i < belief.mean.length - 3 && !jar.tinterGrams[Math.floor(i / STRENGTHS_PER_TINTER)])
      return [0, 0, 0];
    const moved = belief.mean.map((value, k) => (k === i ? value + STEP : value));
    const there = mixColour(believedModel(model, moved), jar);
    return PARTS.map((part) => (there[part] - here[part]) / STEP);
  });
  return [0, 1, 2].map((part) => columns.map((column) => column[part] ?? 0));
}

/** The belief after more has been added: the model's own error may have moved. */
export function afterAddition({ mean, covariance }: Belief): Belief {
  const first = mean.length - 3;
  return {
    mean,
    covariance: covariance.map((row, i) =>
      row.map((value, k) => (i === k && i >= first ? value + OFFSET_DRIFT_SD ** 2 : value)),
    ),
  };
}

/**
 * The belief after a dry reading of the jar: a trial corrects the prediction.
 *
 * Source: extended Kalman filter (Kalman 1960), one scalar update for each of L*, a*, b*.
 * Valid: corrections well under a factor of two. Accuracy: see the simulated finisher in tests.
 * @param readingSd standard deviation of the reading in each of L*, a*, b*
 */
export function afterReading(
  model: ColourModel,
  belief: Belief,
  jar: JarContent,
  reading: Lab,
  readingSd: number,
): Belief {
  const expected = expectedColour(model, belief, jar);
  const rows = sensitivity(model, belief, jar);
  const start = belief.mean;
  let { mean, covariance } = belief;
  PARTS.forEach((part, p) => {
    const h = rows[p] ?? [];
    const Ph = covariance.map((row) => dot(row, h));
    const innovation =
      reading[part] -
      expected[part] -
      dot(
        h,
        mean.map((value, i) => value - (start[i] ?? 0)),
      );
    const variance = dot(h, Ph) + readingSd ** 2;
    const gain = Ph.map((value) => value / variance);
    mean = mean.map((value, i) => value + (gain[i] ?? 0) * innovation);
    covariance = covariance.map((row, i) => row.map((value, k) => value - (gain[i] ?? 0) * (Ph[k] ?? 0)));
  });
  return { mean, covariance };
}

/** One dry reading of a jar as it was then. */
export interface Trial {
  readonly jar: JarContent;
  readonly reading: Lab;
  /** Standard deviation of the reading in each of L*, a*, b*. */
  readonly readingSd: number;
}

/** The belief after a row of trials of one jar, the untinted base being the first of them. */
export function afterTrials(model: ColourModel, first: Belief, trials: readonly Trial[]): Belief {
  return trials.reduce((belief, { jar, reading, readingSd }, i) => {
    const before = i === 0 ? belief : afterAddition(belief);
    return afterReading(model, before, jar, reading, readingSd);
  }, first);
}

const dot = (one: readonly number[], other: readonly number[]): number =>
  one.reduce((sum, value, i) => sum + value * (other[i] ?? 0), 0);

/** Variances of L*, a* and b* that a belief expects of a jar. */
export function colourVariance(model: ColourModel, belief: Belief, jar: JarContent): number[] {
  return sensitivity(model, belief, jar).map((h) =>
    dot(
      h,
      belief.covariance.map((row) => dot(row, h)),
    ),
  );
}

/** A tinter's believed strength against its draw-downs (1 = as drawn down), and how unsure it is, a fraction. */
export function tinterStrength({ mean, covariance }: Belief, tinter: number) {
  const bands = [0, 1, 2].map((band) => STRENGTHS_PER_TINTER * tinter + band);
  const log = bands.reduce((sum, i) => sum + (mean[i] ?? 0), 0) / 3;
  const variance =
    bands.reduce((sum, i) => sum + bands.reduce((part, k) => part + (covariance[i]?.[k] ?? 0), 0), 0) / 9;
  return { factor: Math.exp(log), doubt: Math.sqrt(Math.max(variance, 0)) };
}
