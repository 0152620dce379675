import { HOUR_S, METRES_PER_FOOT, MINUTE_S } from '../../units';
import { numberWords, type UnitSystem } from '../quantities';

const CUBIC_FOOT_M3 = METRES_PER_FOOT ** 3;

/** A flow in m3/s as "820 m³/h" or "480 cfm", to two figures: it is an indication. */
export const flowWords = (m3S: number, units: UnitSystem): string =>
  units === 'us' ? `${twoFigures((m3S / CUBIC_FOOT_M3) * MINUTE_S)} cfm` : `${twoFigures(m3S * HOUR_S)} m³/h`;

/** A volume of air in m3 as "410 m³" or "14,000 ft³", to two figures. */
export const airVolumeWords = (m3: number, units: UnitSystem): string =>
  units === 'us' ? `${twoFigures(m3 / CUBIC_FOOT_M3)} ft³` : `${twoFigures(m3)} m³`;

/** A small mass in kg as "120 g". */
export const gramWords = (kg: number): string => `${numberWords(kg * 1000, kg < 0.01 ? 1 : 0)} g`;

const twoFigures = (value: number): string => {
  const step = 10 ** Math.max(0, Math.floor(Math.log10(Math.max(value, 1))) - 1);
  return numberWords(Math.round(value / step) * step, value < 10 ? 1 : 0);
};
