import { expect, test } from 'vitest';
import {
  differenceWords,
  filmWords,
  lowestWords,
  percentWords,
  temperatureWords,
} from '../../src/words/quantities';
import { areaWords, volumeRangeWords, volumeWords } from '../../src/words/volumes';

// 25.4 um are one mil and 294.15 K are 69.8 F by definition of the units.
test.each([
  { words: filmWords(12.54e-6, 'metric'), expected: '12.5 µm' },
  { words: filmWords(145.4e-6, 'metric'), expected: '145 µm' },
  { words: filmWords(12.7e-6, 'us'), expected: '0.5 mil' },
  { words: filmWords(146.05e-6, 'us'), expected: '5.8 mil' },
  { words: temperatureWords(294.15, 'metric'), expected: '21 °C' },
  { words: temperatureWords(294.15, 'us'), expected: '70 °F' },
  { words: temperatureWords(268.15, 'metric'), expected: '−5 °C' },
  { words: differenceWords(8.3, 'metric'), expected: '8.3 °C' },
  { words: differenceWords(11.7, 'metric'), expected: '12 °C' }, // a tenth decides nothing that far off
  { words: differenceWords(8, 'us'), expected: '14 °F' },
  { words: differenceWords(3, 'us'), expected: '5.4 °F' },
  // One US fluid ounce is 29.5735 mL, one square foot 0.0929 m2.
  { words: volumeWords(108.5e-6, 'metric'), expected: '109 mL' },
  { words: volumeWords(108.5e-6, 'us'), expected: '3.7 fl oz (109 mL)' },
  { words: volumeWords(0.5e-6, 'us'), expected: '0.017 fl oz (0.5 mL)' },
  { words: volumeWords(0.0582e-6, 'metric'), expected: '0.058 mL' },
  { words: volumeWords(20e-6, 'us'), expected: '0.68 fl oz (20 mL)' },
  { words: volumeRangeWords(814e-6, 1085e-6, 'us'), expected: '28 to 37 fl oz (814 to 1,085 mL)' },
  { words: volumeRangeWords(814e-6, 814e-6, 'metric'), expected: '814 mL' },
  { words: areaWords(0.24, 'us'), expected: '2.6 ft²' },
  { words: areaWords(0.24, 'metric'), expected: '0.24 m²' },
  { words: percentWords(0.1016, 1), expected: '10.2 %' },
])('$expected', ({ words, expected }) => {
  expect(words).toBe(expected);
});

test.each([
  { kelvin: 291.15, words: '65 °F' }, // 18 C is 64.4 F
  { kelvin: 288.65, words: '60 °F' }, // 15.5 C is 59.9 F
  { kelvin: 291.483, words: '65 °F' }, // 65 F itself
])('the lowest temperature for a finish, $kelvin K, is said as $words', ({ kelvin, words }) =>
  expect(lowestWords(kelvin, 'us')).toBe(words),
);
