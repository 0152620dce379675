import type { TypedLine } from '../../../shop/recipe/batch';
import { MEASURE_WORDS } from '../../../words/mix/recipe';

/** In what a line is said, in one word for a list. */
export type MeasureKey = keyof typeof MEASURE_WORDS;
export const MEASURE_KEYS = Object.keys(MEASURE_WORDS) as readonly MeasureKey[];

/** The line's unit, and of what and by what where that is open. */
export function measureParts(
  key: MeasureKey,
): Pick<TypedLine, 'by' | 'of'> & { unit: TypedLine['amount']['unit'] } {
  const [unit, first, second] = key.startsWith('%-') || key.startsWith('parts-') ? key.split('-') : [key];
  const by = (second ?? first) as 'mass' | 'volume' | undefined;
  if (unit === '%') return { unit, of: first as 'lacquer' | 'mix', ...(by ? { by } : {}) };
  if (unit === 'parts') return { unit, ...(by ? { by } : {}) };
  return { unit: unit as TypedLine['amount']['unit'] };
}

/** The list's word of a line. */
export function measureKey({ amount: { unit }, by, of }: TypedLine): MeasureKey {
  if (unit === '%') return `%-${of ?? 'mix'}-${by ?? 'mass'}`;
  if (unit === 'parts') return `parts-${by ?? 'mass'}`;
  return unit;
}
