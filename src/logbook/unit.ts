import {
  celsiusToFahrenheit,
  fahrenheitToCelsius,
  M2_PER_SQUARE_CM,
  M2_PER_SQUARE_FOOT,
  M2_PER_SQUARE_INCH,
  METRES_PER_FOOT,
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
  m2: scaled(1),
  cm2: scaled(M2_PER_SQUARE_CM),
  ft2: scaled(M2_PER_SQUARE_FOOT),
  in2: scaled(M2_PER_SQUARE_INCH),
  m: scaled(1),
  ft: scaled(METRES_PER_FOOT),
  '%': scaled(0.01),
  ratio: scaled(1),
} as const;

export type Unit = keyof typeof UNITS;
