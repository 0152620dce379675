import { describe, expect, test } from 'vitest';
import { readTyped } from '../../src/logbook/as-typed';
import { LIMITS, rangeIn } from '../../src/logbook/limits';
import { plainNumber, quantity } from '../../src/logbook/typed';

describe('a kept number', () => {
  test.each([
    { text: '3.5', number: 3.5 },
    { text: '3,5', number: 3.5 },
    { text: ' 12 ', number: 12 },
    { text: '-4', number: -4 },
    { text: '\u22124', number: -4 },
    { text: '+4', number: 4 },
    { text: '.5', number: 0.5 },
    { text: '5.', number: 5 },
    { text: '0,034', number: 0.034 },
    { text: '1,000', number: 1 }, // as it was read when it was logged; a form asks today
  ])('"$text" is read', ({ text, number }) => expect(plainNumber(text)).toBe(number));

  test.each(
    [
      '',
      ' ',
      '.',
      '-',
      '1.2.3',
      '1.234,5',
      '1,234.5',
      '1 000',
      '1e3',
      '0x10',
      '1/2',
      '12 um',
      'NaN',
      'Infinity',
      '٣',
      '1'.repeat(400),
    ].map((text) => ({ text })),
  )('"$text" is refused', ({ text }) => expect(plainNumber(text)).toBeUndefined());
});

describe('a typed quantity', () => {
  // 1 mil = 25.4 um, 1 ft2 = 0.09290304 m2, 1 in2 = 6.4516 cm2, 1 ft = 0.3048 m: exact by the international inch of
  // 1959. Temperatures: 273.15 K = 0 C = 32 F, by definition.
  test.each([
    { typed: { text: '3,5', unit: 'mil' }, si: 88.9e-6 },
    { typed: { text: '85', unit: 'um' }, si: 85e-6 },
    { typed: { text: '32', unit: 'F' }, si: 273.15 },
    { typed: { text: '21', unit: 'C' }, si: 294.15 },
    { typed: { text: '2', unit: 'm2' }, si: 2 },
    { typed: { text: '50', unit: 'cm2' }, si: 50e-4 },
    { typed: { text: '2', unit: 'ft2' }, si: 0.18580608 },
    { typed: { text: '10', unit: 'in2' }, si: 64.516e-4 },
    { typed: { text: '100', unit: 'ft' }, si: 30.48 },
    { typed: { text: '7', unit: 'm' }, si: 7 },
    { typed: { text: '48', unit: '%' }, si: 0.48 },
    { typed: { text: '20', unit: 'ratio' }, si: 20 },
  ] as const)('of $typed.text $typed.unit is kept as typed and is $si in SI', ({ typed, si }) => {
    const { si: given, typed: kept } = quantity(typed);
    expect(given).toBeCloseTo(si, 12);
    expect(kept).toEqual(typed);
  });

  test.each([
    { limit: 'volumeSolids', typed: { text: '0', unit: '%' }, problem: 'Enter a value from 0.1 to 100 %.' },
    {
      limit: 'volumeSolids',
      typed: { text: '100,1', unit: '%' },
      problem: 'Enter a value from 0.1 to 100 %.',
    },
    { limit: 'humidity', typed: { text: '140', unit: '%' }, problem: 'Enter a value from 1 to 100 %.' },
    {
      limit: 'temperature',
      typed: { text: '-300', unit: 'C' },
      problem: 'Enter a value from \u221220 to 60 °C.',
    },
    {
      limit: 'temperature',
      typed: { text: '141', unit: 'F' },
      problem: 'Enter a value from \u22124 to 140 °F.',
    },
    {
      limit: 'wetFilm',
      typed: { text: '85', unit: 'mil' },
      problem: 'Enter a value from 0.0394 to 39.3 mil.',
    },
    {
      limit: 'wetFilm',
      typed: { text: 'much', unit: 'um' },
      problem: 'Enter a number, such as 3.5 or 3,5.',
    },
  ] as const)('of $typed.text $typed.unit is refused as $limit: $problem', ({ limit, typed, problem }) => {
    expect(readTyped(typed, LIMITS[limit])).toEqual({ ok: false, failure: problem });
  });

  const units = Object.entries(LIMITS).flatMap(([name, limit]) =>
    limit.units.map((unit) => ({ name, limit, unit })),
  );
  test.each(units)(
    'as $name in $unit is accepted at both ends of the range that is shown',
    ({ limit, unit }) => {
      const { lowest, highest } = rangeIn(limit, unit);
      expect(lowest).toBeLessThan(highest);
      for (const end of [lowest, highest])
        expect(readTyped({ text: String(end), unit }, limit)).toMatchObject({ ok: true });
    },
  );
});
