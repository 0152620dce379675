import { describe, expect, test } from 'vitest';
import { readTyped } from '../../src/logbook/as-typed';
import { LIMITS, type Limit, rangeIn } from '../../src/logbook/limits';
import type { Unit } from '../../src/logbook/unit';

// Every quantity that any field asks for, in every unit it offers, typed as people type: each field reads by the one parser.

const fullWidth = (text: string): string =>
  text.replace(/[!-~]/g, (sign) => String.fromCharCode(sign.charCodeAt(0) + 0xfee0));

/** A number and a half that the field takes. */
function halfWithin(limit: Limit, unit: Unit): number {
  const { lowest, highest } = rangeIn(limit, unit);
  const found = [0.5, 1.5, 2.5, 20.5, 50.5, 250.5].find((one) => one >= lowest && one <= highest);
  return found ?? expect.unreachable(`nothing for ${unit}`);
}

/** The same number as different hands write it. */
function spellings(value: number, unit: Unit): readonly string[] {
  const [plain, whole] = [String(value), Math.floor(value)];
  const bare = [
    plain,
    `  ${plain} `,
    `+${plain}`,
    `${plain}0`,
    plain.replace('.', ','),
    fullWidth(plain),
    `${whole > 0 ? whole : ''}½`,
    whole > 0 ? `${whole} 1/2` : '1/2',
    `${value * 2}/2`,
  ];
  return unit === 'ratio' ? bare : [...bare, ...bare.slice(-4).map((one) => `${one} ${unit}`)];
}

const FIELDS = Object.entries(LIMITS).flatMap(([field, limit]: [string, Limit]) =>
  limit.units.map((unit) => ({ field, unit, limit })),
);

describe.each(FIELDS)('$field in $unit', ({ unit, limit }) => {
  const value = halfWithin(limit, unit);
  const plain = readTyped({ text: String(value), unit }, limit);

  test('is read as one number, however it is written', () => {
    expect(plain.ok).toBe(true);
    for (const text of spellings(value, unit)) expect(readTyped({ text, unit }, limit), text).toEqual(plain);
  });

  test('is refused with a sentence where it is no one number, or out of range', () => {
    const { highest } = rangeIn(limit, unit);
    for (const text of [
      '',
      ' ',
      'x',
      '1e3',
      '12 34',
      '5-6',
      '--1',
      'NaN',
      'Infinity',
      '1,234',
      String(highest * 10),
    ]) {
      const read = readTyped({ text, unit }, limit);
      expect(read.ok, text).toBe(false);
      expect(!read.ok && read.failure).toMatch(/\w.*\.$/);
    }
  });
});
