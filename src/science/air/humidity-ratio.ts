import { assertAirPressure } from './air-limits';
import { STANDARD_PRESSURE_PA } from './atmosphere';
import { vapourPressurePa } from './dew-point';

/** Molar mass of water over that of dry air (ASHRAE Handbook Fundamentals 2017, ch. 1, eq. 20). */
const WATER_OVER_AIR = 0.621945;

/**
 * Water carried by this air, in kg a kg of dry air.
 *
 * Source: ASHRAE Handbook Fundamentals 2017, ch. 1, eq. 20.
 * Valid: air from -40 to 60 °C, 1 to 100 % humidity, 50 to 110 kPa.
 * Accuracy: 0.5 % against the ASHRAE table.
 * Left out: the enhancement factor of real air (0.4 %).
 */
export function humidityRatio(
  temperatureC: number,
  relativeHumidity: number,
  pressurePa: number = STANDARD_PRESSURE_PA,
): number {
  assertAirPressure(pressurePa);
  return humidityRatioOfVapour(vapourPressurePa(temperatureC, relativeHumidity), pressurePa);
}

/** Water in air, in kg a kg of dry air, when its vapour has this partial pressure. */
export function humidityRatioOfVapour(vapourPa: number, pressurePa: number): number {
  return (WATER_OVER_AIR * vapourPa) / (pressurePa - vapourPa);
}

/** Partial pressure of the vapour, in Pa, of air that carries so many kg of water a kg of dry air. */
export function vapourPressureOfRatioPa(ratio: number, pressurePa: number): number {
  return (pressurePa * ratio) / (WATER_OVER_AIR + ratio);
}
