import {
  celsiusToFahrenheit,
  M2_PER_SQUARE_FOOT,
  ML_PER_US_FLUID_OUNCE,
  metresToUm,
  toCelsius,
  umToMil,
} from '../units';

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

/** A difference of temperature in kelvin as "8 K" or, in US units, "14 °F". */
export const differenceWords = (kelvin: number, units: UnitSystem): string =>
  units === 'us' ? `${numberWords((kelvin * 9) / 5, 0)} °F` : `${numberWords(kelvin, 0)} K`;

/** A volume in m3 as "109 mL"; in US units "3.7 fl oz (109 mL)". */
export function volumeWords(m3: number, units: UnitSystem): string {
  const mL = m3 * 1e6;
  const metric = `${numberWords(mL, mL < 10 ? 1 : 0)} mL`;
  return units === 'us' ? `${fluidOunces(m3)} fl oz (${metric})` : metric;
}

/** Two volumes as one range: "28 to 37 fl oz (814 to 1,085 mL)". */
export function volumeRangeWords(fromM3: number, toM3: number, units: UnitSystem): string {
  if (toM3 <= fromM3) return volumeWords(fromM3, units);
  const metric = `${numberWords(fromM3 * 1e6, 0)} to ${numberWords(toM3 * 1e6, 0)} mL`;
  return units === 'us' ? `${fluidOunces(fromM3)} to ${fluidOunces(toM3)} fl oz (${metric})` : metric;
}

function fluidOunces(m3: number): string {
  const ounces = (m3 * 1e6) / ML_PER_US_FLUID_OUNCE;
  return numberWords(ounces, ounces < 20 ? 1 : 0);
}

/** An area in m2 as "0.24 m²" or "2.6 ft²". */
export const areaWords = (m2: number, units: UnitSystem): string =>
  units === 'us' ? `${numberWords(m2 / M2_PER_SQUARE_FOOT, 1)} ft²` : `${numberWords(m2, 2)} m²`;

/** A fraction as "48 %". */
export const percentWords = (fraction: number, decimals = 0): string =>
  `${numberWords(fraction * 100, decimals)} %`;
