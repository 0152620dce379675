/** Absorption and scattering of a layer at one wavelength or band, each per unit of thickness. */
export interface KS {
  readonly K: number;
  readonly S: number;
}

/**
 * K/S of a film thick enough to hide, from its inner reflectance (a fraction).
 * Source: Kubelka and Munk 1931, K/S = (1 - R)^2 / (2 R). Valid: 0 < R <= 1. Accuracy: exact. Left out: the surface.
 */
export const kOverS = (R: number): number => (1 - R) ** 2 / (2 * R);

/**
 * Inner reflectance (a fraction) of a film thick enough to hide; the inverse of {@link kOverS}.
 * Source: Kubelka and Munk 1931, written so that nothing cancels when K/S is large. Valid: K/S >= 0.
 */
export const rInfinity = (ks: number): number => 1 / (1 + ks + Math.sqrt(ks * ks + 2 * ks));

/**
 * Inner reflectance (a fraction) of a film of finite thickness over a ground of reflectance Rg.
 *
 * Source: Kubelka 1948, hyperbolic solution, written with exponentials so that thick films do not overflow.
 * Valid: K, S and thickness >= 0, in any one unit of length; 0 <= Rg <= 1. Accuracy: 1e-6 on published examples.
 * Left out: reflection at the film's surface (see saunderson.ts), light that comes in at a slant.
 */
export function filmReflectance({ K, S }: KS, thickness: number, Rg: number): number {
  const SX = S * thickness;
  if (K * thickness < 1e-9 * (1 + SX)) return (Rg + (1 - Rg) * SX) / (1 + (1 - Rg) * SX); // K = 0
  if (SX < 1e-9) return Rg * Math.exp(-2 * K * thickness); // S = 0: Beer-Lambert, twice through
  const Rinf = rInfinity(K / S);
  const bSX = Math.sqrt(K * (K + 2 * S)) * thickness;
  const t = Math.exp(-2 * bSX) * ((Rg - Rinf) / (Rg - 1 / Rinf));
  return (Rinf - t / Rinf) / (1 - t);
}

/** A film read over one ground: the reflectance of the ground and that of the film over it, fractions. */
export interface OverGround {
  readonly ground: number;
  readonly film: number;
}

/**
 * K and S per unit of the film's own thickness, from the same film read over two grounds; undefined when the readings
 * fit no film (the film over the dark ground as light as over the light one, or impossibly light).
 *
 * Source: Kubelka 1948, a from two grounds, then S; for a black ground of 0 it is the inverse of Curtis et al. 1997.
 * Valid: inner reflectances, grounds well apart. Accuracy: exact inverse of {@link filmReflectance}.
 */
export function filmFromTwoGrounds(dark: OverGround, light: OverGround): KS | undefined {
  const { ground: g1, film: r1 } = dark;
  const { ground: g2, film: r2 } = light;
  const a = ((r2 - r1) * (1 + g1 * g2) - (g2 - g1) * (1 + r1 * r2)) / (2 * (r2 * g1 - r1 * g2));
  if (!(a > 1) || !Number.isFinite(a)) return undefined;
  const b = Math.sqrt(a * a - 1);
  const Rinf = a - b;
  // Both grounds give the same decay; the one further from the film's own colour gives it more surely.
  const { ground, film } = Math.abs(g1 - Rinf) > Math.abs(g2 - Rinf) ? dark : light;
  const decay = ((film - Rinf) * (ground - 1 / Rinf)) / ((film - 1 / Rinf) * (ground - Rinf));
  if (!(decay > 0 && decay < 1)) return undefined;
  const S = -Math.log(decay) / (2 * b);
  return { K: S * (a - 1), S };
}
