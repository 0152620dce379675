import { assertWithin } from '../assert-within';
import { AIR_LIMITS } from './air-limits';

/** Molar gas constant, J/(mol K) (exact, SI 2019). */
export const GAS_CONSTANT = 8.31446261815324;
/** Pressure of the standard atmosphere at sea level, in Pa. */
export const STANDARD_PRESSURE_PA = 101_325;

/**
 * Pressure of the standard atmosphere at an altitude, in Pa.
 *
 * Source: ASHRAE Handbook Fundamentals 2017, ch. 1, eq. 3.
 * Valid: -500 to 5000 m here (the equation: to 11 000 m).
 * Accuracy: 1 Pa against the ASHRAE table.
 * Left out: the weather, which moves the pressure by up to 4 %.
 */
export function standardPressurePa(altitudeM: number): number {
  const { lowest, highest } = AIR_LIMITS.altitudeM;
  assertWithin('Altitude', altitudeM, lowest, highest, 'm');
  return STANDARD_PRESSURE_PA * (1 - 2.25577e-5 * altitudeM) ** 5.2559;
}
