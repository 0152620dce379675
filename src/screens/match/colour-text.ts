import type { Lab } from '../../science/colour/lab';
import { numberWords } from '../../words/quantities';

const tenth = (value: number): string => {
  const text = value.toFixed(1);
  return (text === '-0.0' ? '0.0' : text).replace('-', '\u2212');
};

/** L*, a* and b* to the tenth: "86.5 / −0.6 / 14.8". */
export const labText = ({ L, a, b }: Pick<Lab, 'L' | 'a' | 'b'>): string => [L, a, b].map(tenth).join(' / ');

/** A difference in deltaE00 to the hundredth. */
export const differenceText = (dE00: number): string => dE00.toFixed(2);

/** A signed part to the hundredth: "+1.20". */
export const signedText = (value: number, decimals = 2): string => {
  const text = Math.abs(value).toFixed(decimals);
  if (Number(text) === 0) return text;
  return `${value > 0 ? '+' : '\u2212'}${text}`;
};

/** Grams as a scale of this division shows them. */
export function gramsText(grams: number, divisionG?: number): string {
  if (divisionG !== undefined) return grams.toFixed(Math.max(0, Math.ceil(-Math.log10(divisionG) - 1e-9)));
  return numberWords(grams, grams < 0.01 ? 4 : grams < 1 ? 3 : grams < 100 ? 2 : 1);
}
