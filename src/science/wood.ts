import { assertWithin } from './assert-within';

/**
 * Moisture that wood comes to in this air, in kg of water a kg of dry wood (0.09 is 9 %).
 *
 * Source: W. T. Simpson, USDA Forest Products Laboratory, FPL-RN-0268; Wood Handbook ch. 4 (Celsius coefficients).
 * Valid: -1 to 60 °C here, 0 to 100 % humidity; the handbook's table goes from 5 to 95 %.
 * Accuracy: 0.13 % of moisture content on average against the handbook's table, 0.4 % at worst.
 * Left out: species, stress, and hysteresis (drying wood stays 1 to 2 % above wood that takes up water).
 */
export function equilibriumMoistureContent(temperatureC: number, relativeHumidity: number): number {
  assertWithin('Temperature', temperatureC, -1, 60, '°C');
  assertWithin('Relative humidity', relativeHumidity, 0, 1, '(fraction)');
  const T = temperatureC;
  const W = 349 + 1.29 * T + 0.0135 * T * T;
  const K = 0.805 + 0.000736 * T - 0.00000273 * T * T;
  const K1 = 6.27 - 0.00938 * T - 0.000303 * T * T;
  const K2 = 1.91 + 0.0407 * T - 0.000293 * T * T;
  const Kh = K * relativeHumidity;
  const dissolved = Kh / (1 - Kh);
  const hydrated = (K1 * Kh + 2 * K1 * K2 * Kh * Kh) / (1 + K1 * Kh + K1 * K2 * Kh * Kh);
  return (18 / W) * (dissolved + hydrated);
}
