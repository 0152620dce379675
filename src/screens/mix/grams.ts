import { numberWords } from '../../words/quantities';

/** A mass in grams, in words: three decimals under a gram, fewer above. */
export const gramsWords = (massKg: number): string => {
  const g = massKg * 1000;
  return numberWords(g, g < 1 ? 3 : g < 100 ? 2 : 1);
};

/** A mass in grams as a scale of this division shows it: all its decimals, noughts too. */
export function scaleWords(massKg: number, divisionKg: number): string {
  const divisionG = divisionKg * 1000;
  const decimals = Math.max(0, Math.round(-Math.log10(divisionG)));
  return (Math.round((massKg * 1000) / divisionG) * divisionG).toFixed(decimals);
}
