/** Reflection at the film's surface, from outside (k1) and from inside (k2), and whether the instrument sees k1. */
export interface Surface {
  readonly k1: number;
  readonly k2: number;
  /** Specular included: the sphere of the instrument catches the gloss. */
  readonly seesGloss: boolean;
}

/** Smooth lacquer, index about 1.5. Source: k1 = ((n-1)/(n+1))^2 = 0.04 (Fresnel); k2 usually 0.4 to 0.6 (Allen 1980). */
export const LACQUER_SURFACE: Surface = { k1: 0.04, k2: 0.6, seesGloss: true };

/**
 * Measured reflectance of a film with this inner reflectance, fractions.
 *
 * Source: Saunderson 1942 as in Allen 1980, equation 24; without gloss the first k1 is left off.
 * Valid: 0 <= R <= 1. Accuracy: exact. Left out: that k1 and k2 depend a little on wavelength and angle.
 */
export function measuredFrom(R: number, { k1, k2, seesGloss }: Surface): number {
  return (seesGloss ? k1 : 0) + ((1 - k1) * (1 - k2) * R) / (1 - k2 * R);
}

/** Inner reflectance of a film that measures Rm, fractions: the exact inverse of {@link measuredFrom}. */
export function innerFrom(Rm: number, { k1, k2, seesGloss }: Surface): number {
  const below = seesGloss ? Rm - k1 : Rm;
  return below / ((1 - k1) * (1 - k2) + k2 * below);
}
