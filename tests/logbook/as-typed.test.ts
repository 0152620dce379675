import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  eitherOf,
  inPlain,
  parseNumber,
  plainText,
  readTyped,
  withPlainNumbers,
} from '../../src/logbook/as-typed';
import { LIMITS } from '../../src/logbook/limits';
import { plainNumber } from '../../src/logbook/typed';

describe('what people type for a number', () => {
  test.each([
    { text: '3.5', number: 3.5 },
    { text: '3,5', number: 3.5 },
    { text: '  12 ', number: 12 },
    { text: '-4', number: -4 },
    { text: '\u22124', number: -4 },
    { text: '\u20134', number: -4 },
    { text: '- 4', number: -4 },
    { text: '0,125', number: 0.125 },
    { text: '0.125', number: 0.125 },
    { text: '12.345', number: 12.345 }, // a scale of a thousandth of a gram
    { text: '12,34', number: 12.34 },
    { text: '1 250', number: 1250 },
    { text: '1\u202f250,5', number: 1250.5 },
    { text: "1'250", number: 1250 },
    { text: '1,250.5', number: 1250.5 },
    { text: '1.250,5', number: 1250.5 },
    { text: '1,250,000', number: 1_250_000 },
    { text: '1.250.000', number: 1_250_000 },
    { text: '1/2', number: 0.5 },
    { text: '1 1/2', number: 1.5 },
    { text: '1-1/2', number: 1.5 },
    { text: '-1 1/2', number: -1.5 },
    { text: '½', number: 0.5 },
    { text: '2½', number: 2.5 },
    { text: '2 ¾', number: 2.75 },
    { text: '1/3', number: 0.333333333 },
    { text: '-1/2', number: -0.5 },
    { text: '+1/2', number: 0.5 },
    { text: '1\u2019250\u2019000,5', number: 1_250_000.5 },
    { text: '-1.250.000', number: -1_250_000 },
    { text: '⅞', number: 0.875 },
    { text: '１２．５', number: 12.5 },
    { text: '３，５', number: 3.5 },
  ])('"$text" is $number', ({ text, number }) => {
    expect(parseNumber(text)).toBe(number);
    // and what is written of it is what every version of the logbook reads
    expect(plainNumber(inPlain(text)?.text ?? '')).toBe(number);
  });

  test.each(
    ['', ' ', '.', '-', '1.2.3', '1e3', '0x10', '1/0', '12 um', 'NaN', '5-6', '5 or 6', '12 34', '٣'].map(
      (text) => ({ text }),
    ),
  )('"$text" is no number', ({ text }) => expect(parseNumber(text)).toBeUndefined());

  test('a number with the unit of its field behind it is that number, with another it is none', () => {
    expect([parseNumber('12 um', 'um'), parseNumber('12um', 'um'), parseNumber('12', 'um')]).toEqual([
      12, 12, 12,
    ]);
    expect([parseNumber('12 um', 'mm'), parseNumber('12 um')]).toEqual([undefined, undefined]);
  });

  test.each([
    { text: '5,280', numbers: ['5280', '5.280'] },
    { text: '1,000', numbers: ['1000', '1.000'] },
    { text: '-1,000', numbers: ['-1000', '-1.000'] },
    { text: '12,345', numbers: ['12345', '12.345'] },
    { text: '１，０００', numbers: ['1000', '1.000'] },
  ])('"$text" may be two numbers and is taken for neither', ({ text, numbers }) => {
    expect(parseNumber(text)).toBeUndefined();
    expect(eitherOf(text)?.numbers).toEqual(numbers);
  });

  test.each(['0,125', '5.280', '1 280', '12,34', '1,0000', '1234,567', ',125', 'x'])(
    '"%s" does not ask',
    (text) => expect(eitherOf(text)).toBeUndefined(),
  );
});

describe('a unit behind the number', () => {
  test.each([
    { text: '3 mil', units: ['um', 'mil'], plain: { text: '3', unit: 'mil' } },
    { text: '3mils', units: ['um', 'mil'], plain: { text: '3', unit: 'mil' } },
    { text: '85 µm', units: ['um', 'mil'], plain: { text: '85', unit: 'um' } },
    { text: '68 °F', units: ['C', 'F'], plain: { text: '68', unit: 'F' } },
    { text: '２０％', units: ['%'], plain: { text: '20', unit: '%' } },
    { text: '２．５ ｃｍ', units: ['cm', 'in'], plain: { text: '2.5', unit: 'cm' } },
    { text: '20%', units: ['%'], plain: { text: '20', unit: '%' } },
    { text: '1 1/2 in', units: ['cm', 'in'], plain: { text: '1.5', unit: 'in' } },
    { text: '½"', units: ['cm', 'in'], plain: { text: '0.5', unit: 'in' } },
    { text: '8.6 sq. ft', units: ['m2', 'cm2', 'ft2', 'in2'], plain: { text: '8.6', unit: 'ft2' } },
    { text: '12 fl. oz.', units: ['mL', 'L', 'fl-oz-us'], plain: { text: '12', unit: 'fl-oz-us' } },
    { text: '2 hrs', units: ['min', 'h', 'd'], plain: { text: '2', unit: 'h' } },
  ])('"$text" chooses the unit', ({ text, units, plain }) => expect(inPlain(text, units)).toEqual(plain));

  test('that the field does not take is no number', () => {
    expect(inPlain('3 kg', ['um', 'mil'])).toBeUndefined();
    expect(readTyped({ text: '3 kg', unit: 'um' }, LIMITS.wetFilm).ok).toBe(false);
  });

  test('is read as that unit, not as the one chosen before', () => {
    // 3 mil is 76.2 um exactly
    expect(readTyped({ text: '3 mil', unit: 'um' }, LIMITS.wetFilm)).toMatchObject({
      ok: true,
      value: expect.closeTo(76.2e-6, 12),
    });
  });
});

test.each([
  { text: '5,280', unit: 'ft', limit: LIMITS.altitude, asks: 'Is that 5280 or 5.280? Choose one.' },
  { text: '1,000', unit: 'um', limit: LIMITS.wetFilm, asks: 'Is that 1000 or 1.000? Choose one.' },
] as const)('a field asks what $text $unit means', ({ text, unit, limit, asks }) =>
  expect(readTyped({ text, unit }, limit)).toEqual({ ok: false, failure: asks }),
);

test('what was said goes into the logbook in plain figures', () => {
  const said = {
    name: '1 1/2 mil clear',
    film: { by: 'wet', wetFilm: { text: '1 1/2 mil', unit: 'um' } },
    lines: [{ amount: { text: '½', unit: 'fl-oz-us' } }],
    coats: 3,
  };
  expect(withPlainNumbers(said)).toEqual({
    name: '1 1/2 mil clear',
    film: { by: 'wet', wetFilm: { text: '1.5', unit: 'mil' } },
    lines: [{ amount: { text: '0.5', unit: 'fl-oz-us' } }],
    coats: 3,
  });
});

test('what is no typed number is left as it was said', () => {
  const left = [
    null,
    7,
    '1/2',
    { text: '1/2', isPrivate: true },
    { text: 3, unit: 'g' },
    { text: '1/2', unit: 3 },
    { unit: 'g' },
    [null],
  ];
  expect(withPlainNumbers(left)).toEqual(left);
  expect(withPlainNumbers(null)).toBe(null);
  expect(withPlainNumbers({ text: 'a few', unit: 'g' })).toEqual({ text: 'a few', unit: 'g' });
});

test.each([
  { value: 0.55 / 20, text: '0.0275' },
  { value: 2 / 3, text: '0.666666667' },
  { value: 1e-7, text: '0.0000001' },
  { value: 1.23456789e-6, text: '0.000001234568' }, // twelve decimals, and no more
  { value: 1.25e-7, text: '0.000000125' },
  { value: 1e-13, text: '0' },
  { value: 100, text: '100' },
  { value: 1_234_567_890, text: '1234567890' },
  { value: -2.5, text: '-2.5' },
])('$value is written $text', ({ value, text }) => expect(plainText(value)).toBe(text));

test('a worked-out number is written so that the logbook reads it back', () => {
  fc.assert(
    fc.property(fc.double({ min: 1e-6, max: 1e6, noNaN: true }), (value) => {
      const read = plainNumber(plainText(value)) ?? Number.NaN;
      expect(Math.abs(read / value - 1)).toBeLessThan(1e-6);
    }),
  );
});
