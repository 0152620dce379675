import { numberWords } from '../../words/quantities';

/** A mass in grams, in words: three decimals under a gram, fewer above. */
export const gramsWords = (massKg: number): string => {
  const g = massKg * 1000;
  return numberWords(g, g < 1 ? 3 : g < 100 ? 2 : 1);
};

const decimalsOf = (divisionKg: number): number => Math.max(0, Math.round(-Math.log10(divisionKg * 1000)));

/** A mass in grams as a scale of this division shows it: all its decimals, noughts too. */
export function scaleWords(massKg: number, divisionKg: number): string {
  const divisionG = divisionKg * 1000;
  return (Math.round((massKg * 1000) / divisionG) * divisionG).toFixed(decimalsOf(divisionKg));
}

const MANY_DIVISIONS = 100;

/** A mass to pour, in grams: to the division of the scale; more finely where it is only a few divisions. */
export const pourWords = (massKg: number, divisionKg: number): string =>
  massKg < MANY_DIVISIONS * divisionKg
    ? gramsWords(massKg)
    : numberWords(massKg * 1000, decimalsOf(divisionKg));
