import { toKelvin } from '../../units';
import { assertWithin } from '../assert-within';
import { assertAirPressure, assertAirTemperature } from './air-limits';
import { STANDARD_PRESSURE_PA } from './atmosphere';
import { vapourPressurePa } from './dew-point';

/** Molar mass of water over that of dry air (ASHRAE Handbook Fundamentals 2017, ch. 1, eq. 20). */
const WATER_OVER_AIR = 0.621945;
/** Specific gas constant of dry air, J/(kg K) (ASHRAE Handbook Fundamentals 2017, ch. 1, eq. 1). */
const DRY_AIR_GAS_CONSTANT = 287.042;

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

/**
 * Density of moist air, in kg/m3, water vapour included.
 *
 * Source: ASHRAE Handbook Fundamentals 2017, ch. 1, eq. 9 and 26.
 * Valid: air from -40 to 60 °C, up to 0.3 kg of water a kg of dry air, 50 to 110 kPa.
 * Accuracy: 0.03 % against the ASHRAE check value.
 * Left out: the compressibility of real air.
 */
export function moistAirDensityKgM3(
  temperatureC: number,
  ratio: number,
  pressurePa: number = STANDARD_PRESSURE_PA,
): number {
  assertAirTemperature(temperatureC);
  assertWithin('Humidity ratio', ratio, 0, 0.3, 'kg/kg');
  assertAirPressure(pressurePa);
  const dryAirKgM3 = pressurePa / (DRY_AIR_GAS_CONSTANT * toKelvin(temperatureC) * (1 + 1.607858 * ratio));
  return dryAirKgM3 * (1 + ratio);
}
