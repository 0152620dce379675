import fc from 'fast-check';
import { expect, test } from 'vitest';
import { dayWords } from '../../src/words/times';

const DAY_MS = 86_400_000;
/** The day on the wall, counted from 1970 in a calendar without changes of the clocks. */
const CALENDAR = new Intl.DateTimeFormat('en-CA', { year: 'numeric', month: '2-digit', day: '2-digit' });
const dayOf = (ms: number): number => Date.parse(CALENDAR.format(ms)) / DAY_MS;
const yearOf = (ms: number): string => CALENDAR.format(ms).slice(0, 4);
const anyMs = fc.integer({ min: Date.UTC(2020, 0, 1), max: Date.UTC(2035, 0, 1) });

test('a day is named by the calendar, as the engine’s own calendar has it, over every change of the clocks', () => {
  fc.assert(
    fc.property(anyMs, fc.integer({ min: -9 * DAY_MS, max: 9 * DAY_MS }), (nowMs, byMs) => {
      const atMs = nowMs + byMs;
      const days = dayOf(atMs) - dayOf(nowMs);
      const said = dayWords(atMs, nowMs);
      expect(said === 'today').toBe(days === 0);
      expect(said === 'tomorrow').toBe(days === 1);
      expect(said === 'yesterday').toBe(days === -1);
      expect(/^[A-Z]/.test(said)).toBe(Math.abs(days) > 1 && Math.abs(days) <= 6);
      if (Math.abs(days) > 6) expect(/\d{4}$/.test(said)).toBe(yearOf(atMs) !== yearOf(nowMs));
    }),
  );
});
