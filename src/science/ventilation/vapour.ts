import { toKelvin } from '../../units';
import { assertAirPressure } from '../air/air-limits';
import { GAS_CONSTANT, STANDARD_PRESSURE_PA } from '../air/atmosphere';
import { assertWithin } from '../assert-within';

/** One solvent that goes into the air of the room. */
export interface Vapour {
  /** kg in a session; or kg a second, and then every volume of air that follows from it is m3 a second. */
  readonly massKg: number;
  readonly molarMassKgMol: number;
}

/** The air that takes the vapour up. */
export interface RoomAir {
  readonly temperatureK: number;
  readonly pressurePa: number;
}

/** 20 °C at one atmosphere, the reference of exposure formulas: 24.0 L a mole. */
export const REFERENCE_AIR: RoomAir = { temperatureK: toKelvin(20), pressurePa: STANDARD_PRESSURE_PA };

/**
 * Volume of a vapour by itself, in m3.
 *
 * Source: ideal gas law.
 * Valid: 230 to 340 K, 50 to 110 kPa.
 * Accuracy: 4.3 % against the rounded vapour volumes of 29 CFR 1910.94(c) Table G-11, 1.6 % for most.
 * Left out: association of vapours, a small fraction of a per cent at these pressures.
 */
export function vapourVolumeM3({ massKg, molarMassKgMol }: Vapour, air: RoomAir = REFERENCE_AIR): number {
  assertWithin('Mass of vapour', massKg, 0, 1000, 'kg');
  assertWithin('Molar mass', molarMassKgMol, 0.01, 1, 'kg/mol');
  assertWithin('Air temperature', air.temperatureK, 230, 340, 'K');
  assertAirPressure(air.pressurePa);
  return ((massKg / molarMassKgMol) * GAS_CONSTANT * air.temperatureK) / air.pressurePa;
}
