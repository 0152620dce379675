import { assertWithin } from '../assert-within';
import { type Blend, volumeFractions } from './blend';
import type { Solvent } from './solvents';

// Each solvent leaves at its relative evaporation rate r times its mole fraction (Raoult): dV_i/dt = -r_i x_i. With V_i = n_i v_i and
// dτ = dt/n that is dn_i/dτ = -(r_i/v_i) n_i, so n_i = n_i0 exp(-K_i τ), K_i = r_i/v_i, and t = sum V_i0 (1 - exp(-K_i τ))/r_i.

const molarVolume = (of: Solvent): number => of.molarMassKgMol / of.densityKgM3;
const leavingRate = (of: Solvent): number => of.relativeEvaporationRate / molarVolume(of);

/** What is left when the blend has dried to this fraction of its volume. */
export interface Remaining {
  /** Fraction of the first volume. */
  readonly left: number;
  readonly blend: Blend;
  /** Time it took, in the time that n-butyl acetate takes to dry off the same volume entirely. */
  readonly time: number;
}

function remainingAt(blend: Blend, progress: number): Remaining {
  const first = volumeFractions(blend);
  const fractions = blend.map(
    ({ solvent }, i) => (first[i] as number) * Math.exp(-leavingRate(solvent) * progress),
  );
  const time = blend.reduce(
    (sum, { solvent }, i) =>
      sum + ((first[i] as number) - (fractions[i] as number)) / solvent.relativeEvaporationRate,
    0,
  );
  return {
    left: fractions.reduce((sum, fraction) => sum + fraction, 0),
    blend: blend.map(({ solvent }, i) => ({ solvent, volume: fractions[i] as number })),
    time,
  };
}

/**
 * The blend that is left when it has dried to a fraction of its volume, as volume fractions of the first volume, and the time
 * relative to n-butyl acetate.
 *
 * Source: Lord Rayleigh, Phil. Mag. 4 (1902) 521 (differential distillation), with listed evaporation rates as relative volatility.
 * Valid: a freely evaporating blend (no resin skin). Accuracy: order and rough shares.
 * Left out: activity of unlike solvents (alcohols with hydrocarbons leave faster, together), resin, humidity, cooling.
 */
export function driedTo(blend: Blend, left: number): Remaining {
  assertWithin('Fraction left', left, 1e-6, 1, 'of the volume');
  let low = 0;
  let high = 1e-9;
  while (remainingAt(blend, high).left > left) high *= 2;
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (remainingAt(blend, middle).left > left) low = middle;
    else high = middle;
  }
  return remainingAt(blend, (low + high) / 2);
}

/** The solvents of a blend in the order in which they leave, first out first; the last is what the film keeps longest. */
export function leavingOrder(blend: Blend): Solvent[] {
  return blend.map((part) => part.solvent).sort((a, b) => leavingRate(b) - leavingRate(a));
}

/**
 * Relative evaporation rate of a blend, n-butyl acetate 1: of the time to lose 90 %, by volume.
 *
 * Source: ASTM D3539 takes the time to 90 % (by mass); here by {@link driedTo}. Left out: as there.
 */
export function blendEvaporationRate(blend: Blend): number {
  return 0.9 / driedTo(blend, 0.1).time;
}
