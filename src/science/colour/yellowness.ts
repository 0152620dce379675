import type { Xyz } from './lab';

// Source: ASTM E313-15e1, table 1.
const COEFFICIENTS = {
  'C/2': { Cx: 1.2769, Cz: 1.0592 },
  'D65/2': { Cx: 1.2985, Cz: 1.1335 },
  'C/10': { Cx: 1.2871, Cz: 1.0781 },
  'D65/10': { Cx: 1.3013, Cz: 1.1498 },
} as const;

/** The lights for which the standard gives a yellowness. */
export type YellownessWhite = keyof typeof COEFFICIENTS;

export function hasYellowness(xyz: Xyz): xyz is Xyz<YellownessWhite> {
  return Object.hasOwn(COEFFICIENTS, xyz.white);
}

/**
 * Yellowness index, without unit: 0 for a perfect white, about 30 for a deep cream.
 *
 * Source: ASTM E313-15e1, YI = 100 (Cx X - Cz Z) / Y.
 * Valid: near-white, hue of dominant wavelength 570 to 580 nm, samples of the same gloss and build compared.
 * Accuracy: exact. Left out: creams tinted with red or umber leave the hue range; compare b* and deltaE00 then.
 */
export function yellownessE313({ white, X, Y, Z }: Xyz<YellownessWhite>): number {
  const { Cx, Cz } = COEFFICIENTS[white];
  return (100 * (Cx * X - Cz * Z)) / Y;
}
