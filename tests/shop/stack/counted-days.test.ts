import { describe, expect, test } from 'vitest';
import { fold } from '../../../src/logbook/fold/fold';
import { countedDays } from '../../../src/shop/stack/counted-days';
import { entry } from '../../logbook/entries';

const DAY_MS = 86_400_000;
const LAST_COAT = Date.UTC(2026, 0, 9, 9);
const read = (n: number, day: number, celsius: number) =>
  entry(
    n,
    {
      kind: 'air-read',
      temperature: { text: String(celsius), unit: 'C' },
      humidity: { text: '50', unit: '%' },
      movement: 'still',
    },
    LAST_COAT + day * DAY_MS,
  );

// Common practice, no source: ten days at 12 C are worth 5.4 (4.6 to 6.0) days at 21 C; of 21 wanted 15.6 are left.
describe('a winter garage', () => {
  const shop = fold([read(1, 0, 12), read(2, 10, 21)]);
  const counted = countedDays(shop, LAST_COAT, LAST_COAT + 10 * DAY_MS);

  test.each([
    { end: 'low', days: 4.6 },
    { end: 'likely', days: 5.4 },
    { end: 'high', days: 6.0 },
  ] as const)('counts ten days at 12 C as $days ($end)', ({ end, days }) => {
    expect(Math.abs(counted[end] - days)).toBeLessThan(0.1);
    expect(counted.days).toBe(10);
  });

  test('has 21 of them about Wed 4 Feb, not 30 Jan', () => {
    const over = counted.overMs ?? Number.NaN;
    expect(new Date(over).toISOString().slice(0, 10)).toBe('2026-02-04');
    expect((over - LAST_COAT) / DAY_MS).toBeCloseTo(25.6, 1);
  });
});

test('in a warm room a day is a day', () => {
  const counted = countedDays(fold([read(1, 0, 21)]), LAST_COAT, LAST_COAT + 7 * DAY_MS);
  expect([counted.low, counted.likely, counted.high]).toEqual([7, 7, 7]);
});
