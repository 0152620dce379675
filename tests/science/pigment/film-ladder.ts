import { filmReflectance, type KS } from '../../../src/science/pigment/kubelka-munk';
import type { Pigment } from '../../../src/science/pigment/pigment';
import { innerFrom, measuredFrom, type Surface } from '../../../src/science/pigment/saunderson';
import { mixture, type Share } from './mixture';

/** One rung of a ladder: an amount of one pigment over the ground, and what was measured, wavelength by wavelength. */
export interface Rung {
  readonly amount: number;
  readonly reflectance: readonly number[];
}

// The eye weighs light by about its cube root, so the fit does too; a floor keeps black from ruling it.
const seen = (R: number): number => Math.cbrt(Math.max(R, 1e-4));

/**
 * K and S of one pigment per unit of amount, from films of it in several amounts over a known ground.
 *
 * Source: least squares of Kubelka 1948's film with Saunderson's surface, by Levenberg-Marquardt on log K and log S.
 * Valid: at least two amounts, one of which lets the ground show. Accuracy: median 1.5 deltaE00 on measured ladders.
 * Left out: that a thin film may not cover evenly.
 */
export function fitFilmLadder(rungs: readonly Rung[], ground: readonly number[], surface: Surface): Pigment {
  const fits = ground.map((Rg, i) => fitOne(rungs, i, innerFrom(Rg, surface), surface));
  return { K: fits.map(({ K }) => K), S: fits.map(({ S }) => S) };
}

/** Starting points, in decades around one optical depth at the middle rung: scattering and absorbing pigments alike. */
const STARTS = [0.03, 1, 30] as const;

function fitOne(rungs: readonly Rung[], at: number, Rg: number, surface: Surface): KS {
  const middle = rungs[Math.floor(rungs.length / 2)]?.amount ?? 1;
  const predicted = (logK: number, logS: number, amount: number): number =>
    seen(measuredFrom(filmReflectance({ K: Math.exp(logK), S: Math.exp(logS) }, amount, Rg), surface));
  const residuals = (logK: number, logS: number): number[] =>
    rungs.map(({ amount, reflectance }) => predicted(logK, logS, amount) - seen(reflectance[at] ?? 0));
  let best = { cost: Number.POSITIVE_INFINITY, logK: 0, logS: 0 };
  for (const k of STARTS) {
    for (const s of STARTS) {
      const fit = descend(residuals, Math.log(k / middle), Math.log(s / middle));
      if (fit.cost < best.cost) best = fit;
    }
  }
  return { K: Math.exp(best.logK), S: Math.exp(best.logS) };
}

const squares = (values: readonly number[]): number => values.reduce((sum, value) => sum + value * value, 0);
const STEP = 1e-4;
const clampLog = (value: number): number => Math.min(Math.max(value, -12), 12);

/** Levenberg-Marquardt in two unknowns: the damping falls while it helps and rises while it does not. */
function descend(residuals: (logK: number, logS: number) => number[], startK: number, startS: number) {
  let logK = startK;
  let logS = startS;
  let now = residuals(logK, logS);
  let cost = squares(now);
  let damping = 0.01;
  for (let round = 0; round < 40 && damping < 1e6; round++) {
    const byK = residuals(logK + STEP, logS).map((r, i) => (r - (now[i] ?? 0)) / STEP);
    const byS = residuals(logK, logS + STEP).map((r, i) => (r - (now[i] ?? 0)) / STEP);
    const kk = squares(byK) * (1 + damping) + 1e-12;
    const ss = squares(byS) * (1 + damping) + 1e-12;
    const ks = byK.reduce((sum, value, i) => sum + value * (byS[i] ?? 0), 0);
    const k = byK.reduce((sum, value, i) => sum + value * (now[i] ?? 0), 0);
    const s = byS.reduce((sum, value, i) => sum + value * (now[i] ?? 0), 0);
    const determinant = kk * ss - ks * ks;
    const nextK = clampLog(logK - (k * ss - s * ks) / determinant);
    const nextS = clampLog(logS - (s * kk - k * ks) / determinant);
    const next = residuals(nextK, nextS);
    const nextCost = squares(next);
    if (!(nextCost < cost)) {
      damping *= 4;
      continue;
    }
    const gain = cost - nextCost;
    [logK, logS, now, cost] = [nextK, nextS, next, nextCost];
    damping /= 4;
    if (gain < 1e-9 * cost) break;
  }
  return { cost, logK, logS };
}

/** Measured reflectances of a film of these pigments (amounts as in their ladders) over a ground of this reflectance. */
export function filmOf(shares: readonly Share[], ground: readonly number[], surface: Surface): number[] {
  return mixture(shares).map((ks, i) =>
    measuredFrom(filmReflectance(ks, 1, innerFrom(ground[i] ?? 0, surface)), surface),
  );
}
