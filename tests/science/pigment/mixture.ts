import type { KS } from '../../../src/science/pigment/kubelka-munk';
import type { Pigment } from '../../../src/science/pigment/pigment';

/** An amount of a pigment; amounts are relative to one base for all (a share of the mix, grams, or film per area). */
export interface Share {
  readonly pigment: Pigment;
  readonly amount: number;
}

/**
 * K and S of a mixture at every wavelength.
 *
 * Source: Duncan 1940: K = sum c K, S = sum c S (two constants). Valid: pigments that do not act on each other.
 * Accuracy: median 4 to 6 deltaE00 on measured watercolour mixtures from single-pigment ladders alone: let a trial
 * correct it. Left out: crowding of the white at high loads, flocculation.
 */
export function mixture(shares: readonly Share[]): KS[] {
  const count = shares[0]?.pigment.K.length ?? 0;
  return Array.from({ length: count }, (_, i) => {
    let K = 0;
    let S = 0;
    for (const { pigment, amount } of shares) {
      K += amount * (pigment.K[i] ?? 0);
      S += amount * (pigment.S[i] ?? 0);
    }
    return { K, S };
  });
}
