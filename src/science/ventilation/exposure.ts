import { assertWithin } from '../assert-within';
import { REFERENCE_AIR, type RoomAir, type Vapour, vapourVolumeM3 } from './vapour';

/** A substance in the air beside its occupational limit, both in ppm by volume. */
export interface Exposure {
  readonly concentrationPpm: number;
  readonly limitPpm: number;
}

/** A vapour with the concentration that it is to stay under. */
export interface LimitedVapour extends Vapour {
  readonly limitPpm: number;
}

/** Some hours at one concentration. */
export interface ExposurePeriod {
  readonly concentrationPpm: number;
  readonly hours: number;
}

/** How far a room is from perfect mixing: 1 is perfect, 10 very poor. */
const MIXING_FACTOR = { lowest: 1, highest: 10 } as const;

/** Throws unless this is a mixing factor. */
export function assertMixingFactor(mixingFactor: number): void {
  assertWithin('Mixing factor', mixingFactor, MIXING_FACTOR.lowest, MIXING_FACTOR.highest, '(times)');
}

/**
 * Exposure to several substances at once, over the limit of the mixture when it is above 1.
 *
 * Source: 29 CFR 1910.1000(d)(2)(i): Em = sum of C / L.
 * Valid: substances that act alike, as the solvents of lacquer are taken to.
 * Accuracy: exact arithmetic.
 * Left out: skin, and peaks above the average.
 */
export function exposureIndex(exposures: readonly Exposure[]): number {
  return exposures.reduce((sum, { concentrationPpm, limitPpm }) => {
    assertWithin('Concentration', concentrationPpm, 0, 1e6, 'ppm');
    assertLimit(limitPpm);
    return sum + concentrationPpm / limitPpm;
  }, 0);
}

/** Average exposure over a shift of eight hours, in ppm. Source: 29 CFR 1910.1000(d)(1): E = sum of C T / 8. */
export function shiftAveragePpm(periods: readonly ExposurePeriod[]): number {
  return periods.reduce((sum, { concentrationPpm, hours }) => {
    assertWithin('Concentration', concentrationPpm, 0, 1e6, 'ppm');
    assertWithin('Duration', hours, 0, 24, 'h');
    return sum + (concentrationPpm * hours) / 8;
  }, 0);
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
