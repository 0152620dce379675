import { celsiusToFahrenheit, metresToUm, toCelsius, umToMil } from '../units';

// Computed quantities in words, in the person's units. What was typed is shown as typed instead.

export type UnitSystem = 'metric' | 'us';

const NUMBERS = new Map<number, Intl.NumberFormat>();

/** A number with so many decimals at most: "1,250", "12.5". */
export function numberWords(value: number, decimals: number): string {
  let format = NUMBERS.get(decimals);
  if (!format) {
    format = new Intl.NumberFormat('en-GB', { maximumFractionDigits: decimals });
    NUMBERS.set(decimals, format);
  }
  return format.format(value).replace('-', '\u2212');
}

/** A film thickness in metres as "12.5 µm" or "0.49 mil". */
export function filmWords(metres: number, units: UnitSystem): string {
  const um = metresToUm(metres);
  return units === 'us'
    ? `${numberWords(umToMil(um), umToMil(um) < 1 ? 2 : 1)} mil`
    : `${numberWords(um, um < 20 ? 1 : 0)} µm`;
}

/** A temperature in kelvin as "21 °C" or "70 °F". */
export const temperatureWords = (kelvin: number, units: UnitSystem): string =>
  units === 'us'
    ? `${numberWords(celsiusToFahrenheit(toCelsius(kelvin)), 0)} °F`
    : `${numberWords(toCelsius(kelvin), 1)} °C`;

/** The lowest temperature for a finish as it is said: "18 °C", in US units rounded up to fives: "65 °F". */
export const lowestWords = (kelvin: number, units: UnitSystem): string =>
  units === 'us'
    ? `${Math.ceil((celsiusToFahrenheit(toCelsius(kelvin)) - 0.01) / 5) * 5} °F`
    : temperatureWords(kelvin, units);

const TENTHS_BELOW = 10; // degrees: there a tenth may decide
/** A difference of temperature in kelvin as "8.3 °C" or, in US units, "15 °F". */
export function differenceWords(kelvin: number, units: UnitSystem): string {
  const degrees = units === 'us' ? (kelvin * 9) / 5 : kelvin;
  return `${numberWords(degrees, Math.abs(degrees) < TENTHS_BELOW ? 1 : 0)} °${units === 'us' ? 'F' : 'C'}`;
}

/** A fraction as "48 %". */
export const percentWords = (fraction: number, decimals = 0): string =>
  `${numberWords(fraction * 100, decimals)} %`;
