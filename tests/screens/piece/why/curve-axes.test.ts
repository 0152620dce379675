import { expect, test } from 'vitest';
import { roundTicks } from '../../../../src/parts/time/since-axis';
import { shiftWords } from '../../../../src/screens/piece/why/what-moves';

test.each([
  { lowest: 0, highest: 91, ticks: [0, 25, 50, 75] },
  { lowest: 0, highest: 3.6, ticks: [0, 1, 2, 3] },
  { lowest: -60, highest: 18, ticks: [-60, -40, -20, 0] },
  { lowest: 0, highest: 0, ticks: [0] },
])('from $lowest to $highest the steps are $ticks', ({ lowest, highest, ticks }) => {
  expect(roundTicks(lowest, highest, String).map(({ at }) => at + 0)).toEqual(ticks);
});

test.each([
  { shiftS: 3 * 86_400, words: '3 days later' },
  { shiftS: -6 * 3600, words: '6 h earlier' },
  { shiftS: 12, words: 'about the same' },
  { shiftS: Number.POSITIVE_INFINITY, words: 'much later' },
  { shiftS: Number.NaN, words: 'much later' },
])('a shift of $shiftS s is $words', ({ shiftS, words }) => {
  expect(shiftWords(shiftS)).toBe(words);
});
