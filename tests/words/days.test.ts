import { differenceInCalendarDays, isSameYear } from 'date-fns';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { dayWords } from '../../src/words/times';

const DAY_MS = 86_400_000;
const anyMs = fc.integer({ min: Date.UTC(2020, 0, 1), max: Date.UTC(2035, 0, 1) });

test('a day is named by the calendar, as a library made for it counts, over every change of the clocks', () => {
  fc.assert(
    fc.property(anyMs, fc.integer({ min: -9 * DAY_MS, max: 9 * DAY_MS }), (nowMs, byMs) => {
      const atMs = nowMs + byMs;
      const days = differenceInCalendarDays(atMs, nowMs);
      const said = dayWords(atMs, nowMs);
      expect(said === 'today').toBe(days === 0);
      expect(said === 'tomorrow').toBe(days === 1);
      expect(said === 'yesterday').toBe(days === -1);
      expect(/^[A-Z]/.test(said)).toBe(Math.abs(days) > 1 && Math.abs(days) <= 6);
      if (Math.abs(days) > 6) expect(/\d{4}$/.test(said)).toBe(!isSameYear(atMs, nowMs));
    }),
  );
});
