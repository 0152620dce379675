import { assertWithin } from '../assert-within';
import type { SolventFacts } from './solvent';

const PA_PER_BAR = 1e5;
/** The temperatures that the sets are held to. */
const VAPOUR_K = { lowest: 250, highest: 330 } as const;

/**
 * Vapour pressure over the pure liquid, Pa.
 *
 * Source: C. Antoine, Comptes Rendus 107 (1888) 681; constants and their sources in the table.
 * Valid: 250 to 330 K; outside a set's own range, tMinK to tMaxK, that is an extrapolation.
 * Accuracy: 5 % at 25 C against independent fits, but 5.3 % for 2-butoxyethanol, 18 % for its acetate and 28 % for diacetone
 * alcohol, whose sources disagree; sets derived from two points (how: derived) have no independent check.
 * Left out: dissolved resin and other solvents (multiply by the activity).
 */
export function vapourPressurePa({ antoine }: Pick<SolventFacts, 'antoine'>, temperatureK: number): number {
  assertWithin('Temperature', temperatureK, VAPOUR_K.lowest, VAPOUR_K.highest, 'K');
  return PA_PER_BAR * 10 ** (antoine.A - antoine.B / (temperatureK + antoine.C));
}

/** The vapour pressure at the nearest temperature that the sets are held to, Pa: in colder or hotter air as at that end. */
export const nearestVapourPressurePa = (one: Pick<SolventFacts, 'antoine'>, temperatureK: number): number =>
  vapourPressurePa(one, Math.min(VAPOUR_K.highest, Math.max(VAPOUR_K.lowest, temperatureK)));
