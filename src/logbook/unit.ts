import {
  celsiusToFahrenheit,
  DAY_S,
  fahrenheitToCelsius,
  HOUR_S,
  INCH_M,
  KG_M3_PER_LB_PER_US_GALLON,
  M2_M3_PER_SQUARE_FOOT_PER_US_GALLON,
  M2_PER_SQUARE_CM,
  M2_PER_SQUARE_FOOT,
  M2_PER_SQUARE_INCH,
  METRES_PER_FOOT,
  MINUTE_S,
  ML_PER_IMPERIAL_FLUID_OUNCE,
  ML_PER_US_FLUID_OUNCE,
  MM_M,
  MONTH_S,
  metresToUm,
  milToUm,
  toCelsius,
  toKelvin,
  umToMetres,
  umToMil,
} from '../units';

const scaled = (siPerUnit: number) => ({
  toSi: (amount: number): number => amount * siPerUnit,
  fromSi: (si: number): number => si / siPerUnit,
});

/** Every unit in which a person may type a quantity, to SI and back. */
export const UNITS = {
  um: { toSi: umToMetres, fromSi: metresToUm },
  mil: {
    toSi: (mil: number): number => umToMetres(milToUm(mil)),
    fromSi: (metres: number): number => umToMil(metresToUm(metres)),
  },
  C: { toSi: toKelvin, fromSi: toCelsius },
  F: {
    toSi: (fahrenheit: number): number => toKelvin(fahrenheitToCelsius(fahrenheit)),
    fromSi: (kelvin: number): number => celsiusToFahrenheit(toCelsius(kelvin)),
  },
  mm: scaled(MM_M),
  cm: scaled(10 * MM_M),
  in: scaled(INCH_M),
  mm2: scaled(MM_M ** 2),
  m2: scaled(1),
  cm2: scaled(M2_PER_SQUARE_CM),
  ft2: scaled(M2_PER_SQUARE_FOOT),
  in2: scaled(M2_PER_SQUARE_INCH),
  m: scaled(1),
  ft: scaled(METRES_PER_FOOT),
  // Divided, not times 0.01: so that 70 % are not above a limit of 0.7.
  '%': { toSi: (percent: number): number => percent / 100, fromSi: (share: number): number => share * 100 },
  ratio: scaled(1),
  s: scaled(1),
  min: scaled(MINUTE_S),
  h: scaled(HOUR_S),
  d: scaled(DAY_S),
  m3: scaled(1),
  ft3: scaled(METRES_PER_FOOT ** 3),
  'm3/h': scaled(1 / HOUR_S),
  cfm: scaled(METRES_PER_FOOT ** 3 / MINUTE_S),
  g: scaled(1e-3),
  // Divided too: 100,000 mL are 100 L to the last digit.
  mL: { toSi: (mL: number): number => mL / 1e6, fromSi: (m3: number): number => m3 * 1e6 },
  L: scaled(1e-3),
  'fl-oz-us': scaled(ML_PER_US_FLUID_OUNCE * 1e-6),
  'fl-oz-imperial': scaled(ML_PER_IMPERIAL_FLUID_OUNCE * 1e-6),
  'g/mL': scaled(1000),
  'lb/gal': scaled(KG_M3_PER_LB_PER_US_GALLON),
  // Pounds of flakes to a US gallon of alcohol.
  'lb-cut': scaled(KG_M3_PER_LB_PER_US_GALLON),
  'g/L': scaled(1),
  'm2/L': scaled(1000),
  'ft2/gal': scaled(M2_M3_PER_SQUARE_FOOT_PER_US_GALLON),
  drops: scaled(1),
  parts: scaled(1),
  months: scaled(MONTH_S),
} as const;

export type Unit = keyof typeof UNITS;
