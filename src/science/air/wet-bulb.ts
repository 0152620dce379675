import { assertWithin } from '../assert-within';
import { AIR_LIMITS, assertAirPressure, assertAirTemperature } from './air-limits';
import { STANDARD_PRESSURE_PA } from './atmosphere';
import { dewPointC } from './dew-point';
import { humidityRatio, humidityRatioOfVapour, vapourPressureOfRatioPa } from './humidity-ratio';
import { rootOfRising } from './root';
import { saturationPressurePa } from './saturation';

const FREEZING_C = 0;

/**
 * Temperature that a wet wick takes in this air, in °C.
 *
 * Source: ASHRAE Handbook Fundamentals 2017, ch. 1, eq. 33 (water) and 35 (ice), solved for the wet bulb.
 * Valid: air from -40 to 60 °C, 1 to 100 % humidity, 50 to 110 kPa.
 * Accuracy: 0.01 K against psychrolib 1.1.1.
 * Left out: a wick in still air reads higher. Where both a wet and an iced wick have an answer, just about 0 °C,
 * this is that of the wet one.
 */
export function wetBulbC(
  temperatureC: number,
  relativeHumidity: number,
  pressurePa: number = STANDARD_PRESSURE_PA,
): number {
  const ratio = humidityRatio(temperatureC, relativeHumidity, pressurePa);
  const excess = (wickC: number) => ratioOverWick(temperatureC, wickC, pressurePa) - ratio;
  const isWet = temperatureC > FREEZING_C && excess(FREEZING_C) <= 0;
  const lowest = isWet ? FREEZING_C : dewPointC(temperatureC, relativeHumidity);
  return rootOfRising(excess, lowest, temperatureC);
}

/**
 * Relative humidity, a fraction, from a dry and a wet thermometer.
 * A wet bulb above the air, or lower than air of 1 % humidity would bring it, cannot be: it throws, naming the range.
 *
 * Source: ASHRAE Handbook Fundamentals 2017, ch. 1, eq. 33 (water) and 35 (ice).
 * Valid: air from -40 to 60 °C, 50 to 110 kPa.
 * Accuracy: 0.01 against the ASHRAE worked example.
 * Left out: a wick in still air reads higher.
 */
export function relativeHumidityFromWetBulb(
  temperatureC: number,
  wickC: number,
  pressurePa: number = STANDARD_PRESSURE_PA,
): number {
  const ratio = humidityRatioFromWetBulb(temperatureC, wickC, pressurePa);
  return vapourPressureOfRatioPa(ratio, pressurePa) / saturationPressurePa(temperatureC);
}

/** Water carried by air, in kg a kg of dry air, from a dry and a wet thermometer; see relativeHumidityFromWetBulb. */
export function humidityRatioFromWetBulb(
  temperatureC: number,
  wickC: number,
  pressurePa: number = STANDARD_PRESSURE_PA,
): number {
  assertAirTemperature(temperatureC);
  assertAirPressure(pressurePa);
  const driestC = wetBulbC(temperatureC, AIR_LIMITS.relativeHumidity.lowest, pressurePa);
  assertWithin('Wet bulb', wickC, driestC, temperatureC, '°C');
  return ratioOverWick(temperatureC, wickC, pressurePa);
}

/** Equation 33 over a wet wick, 35 over an iced one. */
function ratioOverWick(t: number, tw: number, pressurePa: number): number {
  const Ws = humidityRatioOfVapour(saturationPressurePa(tw), pressurePa);
  return tw >= FREEZING_C
    ? ((2501 - 2.326 * tw) * Ws - 1.006 * (t - tw)) / (2501 + 1.86 * t - 4.186 * tw)
    : ((2830 - 0.24 * tw) * Ws - 1.006 * (t - tw)) / (2830 + 1.86 * t - 2.1 * tw);
}
