import { type Lab, labFromRatios, type Xyz } from './lab';
import { FIRST_WEIGHT_NM, type SpectralWhite, WEIGHT_STEP_NM, WEIGHTS_10NM } from './weights-10nm';

/** Reflectances (fractions, 1 = perfect diffuser) at equal steps of wavelength. */
export interface Spectrum {
  readonly startNm: number;
  readonly stepNm: number;
  readonly reflectance: readonly number[];
}

const LAST_WEIGHT_NM = 730;
const STEPS_NM = [1, 2, 5, 10, 20];

/** Why a spectrum cannot be turned into a colour, or undefined when it can. */
export function spectrumFault({ startNm, stepNm, reflectance }: Spectrum): 'step' | 'range' | undefined {
  if (!STEPS_NM.includes(stepNm) || startNm % WEIGHT_STEP_NM !== 0) return 'step';
  const endNm = startNm + stepNm * (reflectance.length - 1);
  return startNm > 400 || endNm < 700 ? 'range' : undefined;
}

// Four-point Lagrange half way between the middle points, three-point at the ends: the interpolation of ASTM E2022.
const MIDDLE = [-1 / 16, 9 / 16, 9 / 16, -1 / 16];
const AT_START = [3 / 8, 3 / 4, -1 / 8, 0];
const AT_END = [0, -1 / 8, 3 / 4, 3 / 8];

function halve({ startNm, stepNm, reflectance }: Spectrum): Spectrum {
  const last = reflectance.length - 2;
  const between = (i: number): number => {
    const from = Math.min(Math.max(i - 1, 0), last - 2);
    const weights = i === 0 ? AT_START : i === last ? AT_END : MIDDLE;
    return weights.reduce((sum, weight, k) => sum + weight * (reflectance[from + k] ?? 0), 0);
  };
  const dense = reflectance.flatMap((value, i) => (i > last ? [value] : [value, between(i)]));
  return { startNm, stepNm: stepNm / 2, reflectance: dense };
}

/** The same spectrum at 380, 390, ... 730 nm; beyond what was measured, the last measured value stands on. */
function atWeightPoints(spectrum: Spectrum): number[] {
  const { startNm, stepNm, reflectance } = spectrum.stepNm > WEIGHT_STEP_NM ? halve(spectrum) : spectrum;
  const points: number[] = [];
  for (let nm = FIRST_WEIGHT_NM; nm <= LAST_WEIGHT_NM; nm += WEIGHT_STEP_NM) {
    const index = Math.min(Math.max((nm - startNm) / stepNm, 0), reflectance.length - 1);
    points.push(reflectance[Math.round(index)] ?? Number.NaN);
  }
  return points;
}

const dot = (weights: readonly number[], values: readonly number[]): number =>
  weights.reduce((sum, weight, i) => sum + weight * (values[i] ?? 0), 0);

const total = (weights: readonly number[]): number => weights.reduce((sum, weight) => sum + weight, 0);

/**
 * Tristimulus values of a reflecting surface under a light, Y of the perfect diffuser = 100.
 *
 * Source: ASTM E308 with ASTM E2022 weights at 10 nm; missing ends take the first and last measured value.
 * Valid: steps of 1, 2, 5, 10 or 20 nm that cover 400 to 700 nm. Throws a RangeError otherwise.
 * Accuracy: 2e-4 on the worked example at 400 to 700 nm (weights have five decimals).
 * Left out: the band pass of the instrument; of a spectrum finer than 10 nm only the 10 nm points are used.
 */
export function spectrumToXyz<W extends SpectralWhite>(spectrum: Spectrum, white: W): Xyz<W> {
  if (spectrumFault(spectrum))
    throw new RangeError('A spectrum must cover 400 to 700 nm at steps of 1, 2, 5, 10 or 20 nm.');
  const values = atWeightPoints(spectrum);
  const weights = WEIGHTS_10NM[white];
  return { white, X: dot(weights.X, values), Y: dot(weights.Y, values), Z: dot(weights.Z, values) };
}

/**
 * CIELAB of a reflecting surface under a light. The white is that of the weights themselves, so that a perfect
 * diffuser comes out neutral; see {@link spectrumToXyz} for source and limits.
 */
export function spectrumToLab<W extends SpectralWhite>(spectrum: Spectrum, white: W): Lab<W> {
  const { X, Y, Z } = spectrumToXyz(spectrum, white);
  const weights = WEIGHTS_10NM[white];
  return labFromRatios(white, X / total(weights.X), Y / total(weights.Y), Z / total(weights.Z));
}
