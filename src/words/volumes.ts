import { INCH_M, KG_M3_PER_LB_PER_US_GALLON, M2_PER_SQUARE_FOOT, ML_PER_US_FLUID_OUNCE } from '../units';
import { numberWords, type UnitSystem } from './quantities';

/** A volume in m3 as "109 mL"; in US units "3.7 fl oz (109 mL)". */
export function volumeWords(m3: number, units: UnitSystem): string {
  const mL = m3 * 1e6;
  const metric = `${numberWords(mL, decimals(mL))} mL`;
  return units === 'us' ? `${fluidOunces(m3)} fl oz (${metric})` : metric;
}

/** Two volumes as one range: "28 to 37 fl oz (814 to 1,085 mL)". */
export function volumeRangeWords(fromM3: number, toM3: number, units: UnitSystem): string {
  if (toM3 <= fromM3) return volumeWords(fromM3, units);
  const metric = `${numberWords(fromM3 * 1e6, 0)} to ${numberWords(toM3 * 1e6, 0)} mL`;
  return units === 'us' ? `${fluidOunces(fromM3)} to ${fluidOunces(toM3)} fl oz (${metric})` : metric;
}

/** Drops are told to two figures. */
const decimals = (value: number): number => {
  if (value >= 10) return 0;
  return value >= 1 ? 1 : Math.min(4, 1 - Math.floor(Math.log10(value)));
};

function fluidOunces(m3: number): string {
  const ounces = (m3 * 1e6) / ML_PER_US_FLUID_OUNCE;
  return numberWords(ounces, ounces < 20 ? Math.max(1, decimals(ounces)) : 0);
}

/** An area in m2 as "0.24 m²" or "2.6 ft²". */
export const areaWords = (m2: number, units: UnitSystem): string =>
  units === 'us' ? `${numberWords(m2 / M2_PER_SQUARE_FOOT, 1)} ft²` : `${numberWords(m2, 2)} m²`;

/** A density in kg/m3 as "1.036 g/mL" or "8.65 lb/gal". */
export const densityWords = (kgM3: number, units: UnitSystem): string =>
  units === 'us'
    ? `${numberWords(kgM3 / KG_M3_PER_LB_PER_US_GALLON, 2)} lb/gal`
    : `${numberWords(kgM3 / 1000, 3)} g/mL`;

/** So much solvent in a volume, in kg/m3, as "683 g/L" or "5.7 lb/gal". */
export const vocWords = (kgM3: number, units: UnitSystem): string =>
  units === 'us'
    ? `${numberWords(kgM3 / KG_M3_PER_LB_PER_US_GALLON, 1)} lb/gal`
    : `${numberWords(kgM3, 0)} g/L`;

/** The volume of a chip in m3 as "15 mm³"; in US units "0.0009 in³ (15 mm³)". */
export function tinyVolumeWords(m3: number, units: UnitSystem): string {
  const metric = `${numberWords(m3 * 1e9, m3 < 1e-8 ? 1 : 0)} mm³`;
  return units === 'us' ? `${Number((m3 / INCH_M ** 3).toPrecision(1))} in³ (${metric})` : metric;
}
