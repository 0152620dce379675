import type { Lab } from './lab';
import type { White } from './white-points';

/** How a sample differs from a target, in deltaE00 units; a positive part is the sample being more of it. */
export interface ColourDifference {
  readonly dE00: number;
  /** Lightness, chroma and hue terms of the formula, each already divided by its weight. */
  readonly dL: number;
  readonly dC: number;
  readonly dH: number;
  /** Hue angle half way between the two, in degrees from red. */
  readonly hueDeg: number;
  /** Chroma and hue turned back onto the painter's axes: towards red (from green) and yellow (from blue). */
  readonly redward: number;
  readonly yellowward: number;
}

const RADIAN = Math.PI / 180;
const POW25_7 = 25 ** 7;

const sinDeg = (degrees: number): number => Math.sin(degrees * RADIAN);
const cosDeg = (degrees: number): number => Math.cos(degrees * RADIAN);
// Neutral colours have no hue: 0 by convention, and then it cannot change the result.
const hueDeg = (b: number, a: number): number => (Math.atan2(b, a) / RADIAN + 360) % 360;
const chromaShare = (C: number): number => Math.sqrt(C ** 7 / (C ** 7 + POW25_7));

/** Difference and mean of two hue angles, each the short way round. */
function hues(h1: number, h2: number): readonly [dhDeg: number, meanDeg: number] {
  const apart = h1 - h2;
  if (Math.abs(apart) <= 180) return [apart, (h1 + h2) / 2];
  return [apart > 0 ? apart - 360 : apart + 360, ((h1 + h2 + 360) / 2) % 360];
}

/** The weights of the formula at the middle of the two colours: equations 15 to 21. */
function weights(L: number, C: number, hDeg: number) {
  const T =
    1 -
    0.17 * cosDeg(hDeg - 30) +
    0.24 * cosDeg(2 * hDeg) +
    0.32 * cosDeg(3 * hDeg + 6) -
    0.2 * cosDeg(4 * hDeg - 63); // (15)
  const dThetaDeg = 30 * Math.exp(-(((hDeg - 275) / 25) ** 2)); // (16)
  const fromMiddle = (L - 50) ** 2;
  return {
    SL: 1 + (0.015 * fromMiddle) / Math.sqrt(20 + fromMiddle), // (18)
    SC: 1 + 0.045 * C, // (19)
    SH: 1 + 0.015 * C * T, // (20)
    RT: -sinDeg(2 * dThetaDeg) * 2 * chromaShare(C), // (17), (21)
  };
}

/**
 * How a sample differs from a target, in deltaE00 with its parts (sample minus target).
 *
 * Source: G. Sharma, W. Wu, E. N. Dalal, Color Res. Appl. 30 (2005) 21-30, equations 2 to 22, kL = kC = kH = 1.
 * Valid: surface colours, best for differences under 5. Accuracy: 1e-4 on all 34 published pairs.
 * Left out: viewing conditions away from the reference ones (grey surround, 1000 lx, samples that touch).
 * Throws a RangeError when the two are under different whites: they cannot be compared.
 */
export function colourDifference<W extends White>(sample: Lab<W>, target: NoInfer<Lab<W>>): ColourDifference {
  if (sample.white !== target.white)
    throw new RangeError(`A colour under ${sample.white} cannot be compared with one under ${target.white}.`);
  const G = 0.5 * (1 - chromaShare((Math.hypot(sample.a, sample.b) + Math.hypot(target.a, target.b)) / 2)); // (4)
  const a1 = (1 + G) * sample.a; // (5)
  const a2 = (1 + G) * target.a;
  const C1 = Math.hypot(a1, sample.b); // (6)
  const C2 = Math.hypot(a2, target.b);
  const [dhDeg, hMeanDeg] = hues(hueDeg(sample.b, a1), hueDeg(target.b, a2)); // (7), (10), (14)
  const hDeg = C1 * C2 === 0 ? hueDeg(sample.b + target.b, a1 + a2) : hMeanDeg;
  const { SL, SC, SH, RT } = weights((sample.L + target.L) / 2, (C1 + C2) / 2, hDeg);
  const dL = (sample.L - target.L) / SL;
  const dC = (C1 - C2) / SC;
  const dH = (2 * Math.sqrt(C1 * C2) * sinDeg(dhDeg / 2)) / SH; // (11)
  return {
    dE00: Math.sqrt(dL ** 2 + dC ** 2 + dH ** 2 + RT * dC * dH), // (22)
    dL,
    dC,
    dH,
    hueDeg: hDeg,
    redward: dC * cosDeg(hDeg) - dH * sinDeg(hDeg),
    yellowward: dC * sinDeg(hDeg) + dH * cosDeg(hDeg),
  };
}

/** The colour difference deltaE00 alone; see {@link colourDifference}. */
export function deltaE00<W extends White>(one: Lab<W>, other: NoInfer<Lab<W>>): number {
  return colourDifference(one, other).dE00;
}
