import { assertWithin } from '../assert-within';
import { REFERENCE_AIR, type RoomAir, type Vapour, vapourVolumeM3 } from './vapour';

/** A vapour with the concentration that it is to stay under. */
export interface LimitedVapour extends Vapour {
  readonly limitPpm: number;
}

/** How far a room is from perfect mixing: 1 is perfect, 10 very poor (ACGIH Industrial Ventilation, from memory). */
const MIXING_FACTOR = { lowest: 1, highest: 10 } as const;

/** Throws unless this is a mixing factor. */
export function assertMixingFactor(mixingFactor: number): void {
  assertWithin('Mixing factor', mixingFactor, MIXING_FACTOR.lowest, MIXING_FACTOR.highest, '(times)');
}

/**
 * Clean air, in m3, that would dilute these vapours to their occupational limit as a mixture (index 1).
 *
 * Source: ACGIH Industrial Ventilation, dilution for health, Q = K 403e6 SG ER / (MW C) a solvent, summed for
 * solvents that act alike, as 29 CFR 1910.1000(d)(2) does.
 * Valid: mixing factor 1 to 10.
 * Accuracy: an indication; the mixing factor is a judgement.
 * Left out: mist and dust, which dilution does not answer; the breath near the gun.
 */
export function airForHealthM3(
  vapours: readonly LimitedVapour[],
  mixingFactor: number,
  air: RoomAir = REFERENCE_AIR,
): number {
  assertMixingFactor(mixingFactor);
  return vapours.reduce((sum, vapour) => {
    assertLimit(vapour.limitPpm);
    return sum + (mixingFactor * vapourVolumeM3(vapour, air)) / (vapour.limitPpm * 1e-6);
  }, 0);
}

function assertLimit(limitPpm: number): void {
  assertWithin('Exposure limit', limitPpm, 0.001, 1e5, 'ppm');
}
