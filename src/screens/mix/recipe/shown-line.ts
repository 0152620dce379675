import type { Shop } from '../../../logbook/fold/fold';
import type { Measure } from '../../../science/mixing/amount';
import { expressed } from '../../../science/mixing/expressed';
import { batchOfLines, type TypedLine } from '../../../shop/recipe/batch';
import { mixIngredients } from '../../../shop/recipe/ingredients';
import { MEASURE_WORDS, RECIPE_WORDS as WORDS } from '../../../words/mix/recipe';
import { numberWords, percentWords } from '../../../words/quantities';
import { measureKey } from './measures';

export type Shown = 'typed' | 'g' | 'mL' | 'share';
export const SHOWN: readonly { readonly value: Shown; readonly label: string }[] = [
  { value: 'typed', label: WORDS.asTyped },
  { value: 'g', label: WORDS.inGrams },
  { value: 'mL', label: WORDS.inMl },
  { value: 'share', label: WORDS.inShare },
];

const MEASURES: Record<Exclude<Shown, 'typed'>, Measure> = {
  g: { unit: 'g' },
  mL: { unit: 'mL' },
  share: { unit: 'share', of: 'mix', by: 'mass' },
};

/** A line of a recipe as typed, or in another measure; as typed where that cannot be known. */
export function shownLine(lines: readonly TypedLine[], index: number, shown: Shown, shop: Shop): string {
  const line = lines[index];
  if (!line) return '';
  const measure = measureKey(line);
  const isOneDrop = measure === 'drops' && line.amount.text === '1';
  const typed = `${line.amount.text} ${isOneDrop ? MEASURE_WORDS.drop : MEASURE_WORDS[measure]}`;
  if (shown === 'typed') return typed;
  const batch = batchOfLines(lines, shop);
  if (!batch.ok) return typed;
  const amount = expressed(batch.value, index, MEASURES[shown], mixIngredients(shop.ingredients));
  if (!amount.ok) return typed;
  const { value } = amount.value;
  if (shown === 'share') return percentWords(value, 2);
  return `${numberWords(value, value < 1 ? 3 : value < 100 ? 2 : 1)} ${shown}`;
}
