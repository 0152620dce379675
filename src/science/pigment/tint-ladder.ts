import { kOverS } from './kubelka-munk';
import type { Pigment } from './pigment';
import { innerFrom, type Surface } from './saunderson';

/** One tint: the share of the tinter in the opaque mix with white (a fraction), and what was measured. */
export interface Tint {
  readonly share: number;
  readonly reflectance: readonly number[];
}

const inner = (Rm: number, surface: Surface): number => Math.min(Math.max(innerFrom(Rm, surface), 1e-4), 1);

/** The white as a pigment whose scattering is 1: the unit in which {@link fitTints} gives the others. */
export function fitWhite(reflectance: readonly number[], surface: Surface): Pigment {
  return { K: reflectance.map((Rm) => kOverS(inner(Rm, surface))), S: reflectance.map(() => 1) };
}

/** Scattering of a tinter against the white's, before anything is known of it. Common practice, no source. */
const LIKELY_SCATTERING = 0.5;

/**
 * K and S of a tinter relative to the white's scattering, from opaque tints with that white.
 *
 * Source: Duncan 1940 rearranged, c K - c q S = (1 - c)(q - Kw) with q the tint's own K/S, by least squares with each
 * row divided by q so that light and dark tints count alike. Valid: films that hide, shares over 0 to 1.
 * Accuracy: exact on tints made by the same law. One tint alone cannot tell K from S: S is then taken as 0.
 * Throws a RangeError without a tint.
 * @param doubt how unsure the readings are, as a fraction of K/S; with it, S stays near 0 unless the tints show it
 */
export function fitTints(tints: readonly Tint[], white: Pigment, surface: Surface, doubt = 0): Pigment {
  if (tints.length === 0) throw new RangeError('A tinter needs at least one draw-down with the white.');
  const fits = white.K.map((Kw, i) => {
    let [kk, ks, ss, k, s] = [0, 0, (doubt / LIKELY_SCATTERING) ** 2, 0, 0];
    for (const { share: c, reflectance } of tints) {
      const q = kOverS(inner(reflectance[i] ?? 0, surface));
      const [byK, byS, right] = [c / q, -c, ((1 - c) * (q - Kw)) / q];
      kk += byK * byK;
      ks += byK * byS;
      ss += byS * byS;
      k += byK * right;
      s += byS * right;
    }
    const determinant = kk * ss - ks * ks;
    const S = determinant > 1e-9 * kk * ss ? (s * kk - k * ks) / determinant : 0;
    return S > 0 ? { K: Math.max((k - ks * S) / kk, 0), S } : { K: Math.max(k / kk, 0), S: 0 };
  });
  return { K: fits.map(({ K }) => K), S: fits.map(({ S }) => S) };
}
