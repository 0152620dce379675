import { expect, test } from 'vitest';
import { glued } from '../../src/words/glued';

test.each([
  ['Shop 5 °C (9 °F) warmer', 'Shop 5_°C (9_°F) warmer'],
  ['worn 4 h 40 min', 'worn 4_h 40_min'],
  ['at most 100 µm dry, 25 %', 'at most 100_µm dry, 25_%'],
  ['40 m³/h and 2 days', '40_m³/h and 2_days'],
  ['12 coats, 3 grams, 1 inch', '12 coats, 3 grams, 1 inch'], // words may go to the next line
])('%s', (text, whole) => {
  expect(glued(text).replaceAll('\u00a0', '_')).toBe(whole);
});
