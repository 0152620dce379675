// The only place where units are converted. Inside: kelvin, metres, seconds, kilograms, pascals, fractions.

const ZERO_CELSIUS_K = 273.15;

export const toKelvin = (celsius: number): number => celsius + ZERO_CELSIUS_K;
export const toCelsius = (kelvin: number): number => kelvin - ZERO_CELSIUS_K;
export const fahrenheitToCelsius = (fahrenheit: number): number => ((fahrenheit - 32) * 5) / 9;
export const celsiusToFahrenheit = (celsius: number): number => (celsius * 9) / 5 + 32;

/** One mil is a thousandth of an inch: 25.4 um exactly (international inch, 1959). */
export const UM_PER_MIL = 25.4;
export const milToUm = (mil: number): number => mil * UM_PER_MIL;
export const umToMil = (um: number): number => um / UM_PER_MIL;
export const umToMetres = (um: number): number => um * 1e-6;
export const metresToUm = (metres: number): number => metres * 1e6;

export const MM_M = 1e-3;
/** One inch is 0.0254 m exactly (1959). */
export const INCH_M = 0.0254;
/** One square foot is 0.09290304 m2 exactly. */
export const M2_PER_SQUARE_FOOT = 0.09290304;
/** US fluid ounce 29.5735295625 mL exactly; imperial fluid ounce 28.4130625 mL exactly. */
export const ML_PER_US_FLUID_OUNCE = 29.5735295625;
export const ML_PER_IMPERIAL_FLUID_OUNCE = 28.4130625;

export const MINUTE_S = 60;
export const HOUR_S = 3600;
export const DAY_S = 86_400;
export const MINUTE_MS = 60_000;
export const HOUR_MS = 3_600_000;
export const DAY_MS = 86_400_000;
export const HOUR_MINUTES = 60;
/** Of the calendar; a day in which the clocks change has an hour more or less of real time. */
export const DAY_MINUTES = 1440;
/** One inch is 0.0254 m exactly (1959), so one square inch is 0.00064516 m2. */
export const M2_PER_SQUARE_INCH = 0.00064516;
export const M2_PER_SQUARE_CM = 1e-4;
/** One foot is 0.3048 m exactly. */
export const METRES_PER_FOOT = 0.3048;
/** One US gallon is 3.785411784 L exactly. */
export const M3_PER_US_GALLON = 3.785411784e-3;
/** One pound is 0.45359237 kg exactly (1959). */
export const KG_M3_PER_LB_PER_US_GALLON = 0.45359237 / M3_PER_US_GALLON;
/** Area covered by a volume: one square foot per US gallon in m2/m3; one m2/L is 1000. */
export const M2_M3_PER_SQUARE_FOOT_PER_US_GALLON = M2_PER_SQUARE_FOOT / M3_PER_US_GALLON;
/** A month as shelf life counts it: a twelfth of 365.25 days. */
export const MONTH_S = (365.25 / 12) * DAY_S;
