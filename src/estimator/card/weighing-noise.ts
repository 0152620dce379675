import type { Weighing } from './card';

/** Water that a film takes up, as a share of its mass for all of the humidity: 0.3 % for 10 % (common practice, from memory). */
export const WATER_PER_HUMIDITY = 0.03;
/** A pocket hygrometer tells the humidity so far, in the room of the scale (common practice, no source). */
export const HUMIDITY_SPREAD = 0.03;
/**
 * How far what a warm-dried film still holds is known, as a share of it: a heat mat is known to some 3 K, and 5 K more leave a third
 * to a seventieth of it (worked out with this solver).
 */
const WARM_SPREAD = 0.8;
/** What a scale moves from one weighing to the next, in divisions, beside half a division of rounding (judgement). */
const DRIFT = 0.5;
const ROUNDING = 1 / Math.sqrt(12);

/** How far a scale of this division is known, kg. */
export const scaleSpread = (divisionKg: number): number => divisionKg * Math.hypot(ROUNDING, DRIFT);

/** Dry film with the water that it takes up, as a share of the dry film. */
export const waterOf = (humidity: number): number => 1 + WATER_PER_HUMIDITY * humidity;

/** How far a weighing is known beside what all of them share, kg. */
export function weighingSpread(
  { humiditySpread = HUMIDITY_SPREAD, isWarmDried, divisionKg: other }: Weighing,
  {
    divisionKg,
    dryKg,
    heldKg,
  }: { readonly divisionKg: number; readonly dryKg: number; readonly heldKg: number },
): number {
  return Math.hypot(
    scaleSpread(other ?? divisionKg),
    dryKg * WATER_PER_HUMIDITY * humiditySpread,
    isWarmDried ? WARM_SPREAD * heldKg : 0,
  );
}
