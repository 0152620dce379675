import { assertWithin } from '../assert-within';
import { assertAirTemperature, assertRelativeHumidity } from './air-limits';
import { rootOfRising } from './root';
import { SATURATION_LIMITS_C, saturationPressurePa } from './saturation';

/** Partial pressure of the water vapour in this air, in Pa. */
export function vapourPressurePa(temperatureC: number, relativeHumidity: number): number {
  assertAirTemperature(temperatureC);
  assertRelativeHumidity(relativeHumidity);
  return relativeHumidity * saturationPressurePa(temperatureC);
}

/**
 * Temperature at which this air starts to leave water on a surface, in °C; below 0 °C it is the frost point.
 *
 * Source: the saturation formula (ASHRAE Handbook Fundamentals 2017, ch. 1, eq. 5 and 6) solved for the temperature.
 * Valid: air from -40 to 60 °C, 1 to 100 % humidity.
 * Accuracy: 0.01 K against psychrolib 1.1.1.
 * Left out: hygrometers that report humidity over supercooled water below 0 °C; here it is over ice.
 */
export function dewPointC(temperatureC: number, relativeHumidity: number): number {
  const pressurePa = vapourPressurePa(temperatureC, relativeHumidity);
  return rootOfRising((C) => saturationPressurePa(C) - pressurePa, SATURATION_LIMITS_C.lowest, temperatureC);
}

/** Relative humidity, a fraction, of air at this temperature with this dew point. A dew point cannot lie above the air. */
export function relativeHumidityFromDewPoint(temperatureC: number, airDewPointC: number): number {
  assertAirTemperature(temperatureC);
  assertWithin('Dew point', airDewPointC, SATURATION_LIMITS_C.lowest, temperatureC, '°C');
  return saturationPressurePa(airDewPointC) / saturationPressurePa(temperatureC);
}

/**
 * Relative humidity, a fraction, that this air has once it is warmed or cooled to another temperature with no
 * water added. At its dew point and below it is 1: what it can no longer hold is left as dew.
 */
export function relativeHumidityAt(
  otherTemperatureC: number,
  temperatureC: number,
  relativeHumidity: number,
): number {
  assertAirTemperature(otherTemperatureC);
  const pressurePa = vapourPressurePa(temperatureC, relativeHumidity);
  return Math.min(1, pressurePa / saturationPressurePa(otherTemperatureC));
}
