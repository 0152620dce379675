import { assertWithin } from '../assert-within';

/** The air that the formulas of this folder are held to; a form refuses what lies outside, and names the range. */
export const AIR_LIMITS = {
  temperatureC: { lowest: -40, highest: 60 },
  relativeHumidity: { lowest: 0.01, highest: 1 },
  pressurePa: { lowest: 50_000, highest: 110_000 },
  altitudeM: { lowest: -500, highest: 5000 },
} as const;

/** Throws unless this is a temperature of air, in °C, that the formulas hold for. */
export function assertAirTemperature(temperatureC: number): void {
  const { lowest, highest } = AIR_LIMITS.temperatureC;
  assertWithin('Air temperature', temperatureC, lowest, highest, '°C');
}

/** Throws unless this is a relative humidity, as a fraction, that the formulas hold for. */
export function assertRelativeHumidity(relativeHumidity: number): void {
  const { lowest, highest } = AIR_LIMITS.relativeHumidity;
  assertWithin('Relative humidity', relativeHumidity, lowest, highest, '(fraction)');
}

/** Throws unless this is a pressure of air, in Pa, that the formulas hold for. */
export function assertAirPressure(pressurePa: number): void {
  const { lowest, highest } = AIR_LIMITS.pressurePa;
  assertWithin('Air pressure', pressurePa, lowest, highest, 'Pa');
}
