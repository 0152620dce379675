import { bandsToXyz, xyzToBands } from '../colour/bradford';
import { type Lab, labToXyz, xyzToLab } from '../colour/lab';
import { type Spectrum, spectrumToLab } from '../colour/spectrum';
import type { SpectralWhite } from '../colour/weights-10nm';
import type { White } from '../colour/white-points';
import { rInfinity } from './kubelka-munk';
import type { Pigment } from './pigment';
import { measuredFrom, type Surface } from './saunderson';
import { fitTints, fitWhite, type Tint } from './tint-ladder';

/** A white base and its tinters as pigments, in three broad bands or wavelength by wavelength: an opaque film's colour. */
export interface ColourModel<W extends White = White> {
  readonly white: W;
  /** Scattering 1 per gram: the unit of all others. */
  readonly base: Pigment;
  readonly tinters: readonly Pigment[];
  readonly surface: Surface;
  /** For each channel, which of the three strengths of a tinter (long, middle, short wavelengths) it goes by. */
  readonly strengthOf: readonly number[];
  readonly toLab: (measured: readonly number[]) => Lab<W>;
}

/** Strengths that a trial can correct, for each tinter. */
export const STRENGTHS_PER_TINTER = 3;

/** What the jar holds: white base and neat tinters (in the model's order), in grams. */
export interface JarContent {
  readonly whiteGrams: number;
  readonly tinterGrams: readonly number[];
}

/** A draw-down of the base with one tinter, as a colour. */
export interface LabTint<W extends White = White> {
  readonly share: number;
  readonly lab: Lab<W>;
}

// A reading of 0.15 deltaE00 on a pale tint is a few percent of its K/S (judgement).
const LAB_DOUBT = 0.03;

/**
 * The model when only L*a*b* is known: three broad bands, each with its own K and S, fitted on the person's draw-downs.
 * A tinter that was never drawn down may be given as the usual one of its name (usual-tinters.ts), with more doubt.
 * Source: two-constant mixing ({@link fitTints}) in the three Bradford bands.
 * Valid: opaque films. Accuracy: a band is no wavelength, so let each trial correct it. Left out: other lights.
 */
export function threeBandModel<W extends White>(
  base: Lab<W>,
  tinters: readonly (readonly LabTint<W>[] | Pigment)[],
  surface: Surface,
): ColourModel<W> {
  const bands = (lab: Lab<W>): number[] => xyzToBands(labToXyz(lab)).map((band) => Math.min(band, 0.999));
  const white = fitWhite(bands(base), surface);
  const ladder = (rungs: readonly LabTint<W>[]): Tint[] =>
    rungs.map(({ share, lab }) => ({ share, reflectance: bands(lab) }));
  return {
    white: base.white,
    base: white,
    tinters: tinters.map((known) =>
      'K' in known ? known : fitTints(ladder(known), white, surface, LAB_DOUBT),
    ),
    surface,
    strengthOf: [0, 1, 2],
    toLab: ([l = 0, m = 0, s = 0]) => xyzToLab(bandsToXyz([l, m, s], base.white)),
  };
}

/** Where the three strengths meet when spectra exist, in nm. */
const [SHORT_END_NM, MIDDLE_END_NM] = [490, 580];

/** The model when spectra exist: every wavelength has its own K and S, fitted on opaque tints with the base. */
export function spectralModel<W extends SpectralWhite>(
  base: Spectrum,
  tints: readonly (readonly Tint[])[],
  surface: Surface,
  white: W,
): ColourModel<W> {
  const { startNm, stepNm } = base;
  const basePigment = fitWhite(base.reflectance, surface);
  const strengthAt = (nm: number): number => (nm > MIDDLE_END_NM ? 0 : nm > SHORT_END_NM ? 1 : 2);
  return {
    white,
    base: basePigment,
    tinters: tints.map((ladder) => fitTints(ladder, basePigment, surface)),
    surface,
    strengthOf: base.reflectance.map((_, i) => strengthAt(startNm + i * stepNm)),
    toLab: (reflectance) => spectrumToLab({ startNm, stepNm, reflectance }, white),
  };
}

/**
 * The model with each tinter's absorption corrected by its believed strengths.
 * @param logStrengths natural logarithms of the corrections, three a tinter; 0 is as fitted
 */
export function corrected<W extends White>(
  model: ColourModel<W>,
  logStrengths: ArrayLike<number>,
): ColourModel<W> {
  const strength = (tinter: number, channel: number): number =>
    Math.exp(logStrengths[STRENGTHS_PER_TINTER * tinter + (model.strengthOf[channel] ?? 0)] ?? 0);
  const tinters = model.tinters.map(({ K, S }, tinter) => ({
    K: K.map((value, channel) => value * strength(tinter, channel)),
    S,
  }));
  return { ...model, tinters };
}

/** The colour of a jar's dry, hiding film. */
export function mixColour<W extends White>(
  { base, tinters, surface, strengthOf, toLab }: ColourModel<W>,
  { whiteGrams, tinterGrams }: JarContent,
): Lab<W> {
  const measured = strengthOf.map((_, channel) => {
    let K = whiteGrams * (base.K[channel] ?? 0);
    let S = whiteGrams * (base.S[channel] ?? 0);
    for (let t = 0; t < tinters.length; t++) {
      const grams = tinterGrams[t] ?? 0;
      K += grams * (tinters[t]?.K[channel] ?? 0);
      S += grams * (tinters[t]?.S[channel] ?? 0);
    }
    return measuredFrom(S > 0 ? rInfinity(K / S) : 0, surface);
  });
  return toLab(measured);
}
