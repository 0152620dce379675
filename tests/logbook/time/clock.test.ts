import { describe, expect, test } from 'vitest';
import { fold } from '../../../src/logbook/fold/fold';
import { clockSaidMs, isClockBehind, isClockFarOn } from '../../../src/logbook/time/clock';
import { DAY_MS, MINUTE_MS } from '../../../src/units';
import { entry, startPiece } from '../entries';

// A clock is known by what is logged alone: a jump shorter than any rest before cannot be told from one. Limits are judgement, no source.
const FIRST_MS = Date.UTC(2026, 0, 5, 8);

/** A shop in which something was logged on these days. */
const shopOn = (days: readonly number[]) =>
  fold(
    days.map((day, n) => {
      const at = new Date(FIRST_MS + day * DAY_MS).toISOString();
      return { ...entry(n + 1, startPiece()), at };
    }),
  );

describe('a clock that may have jumped forward', () => {
  test.each([
    { days: [0], restDays: 13.9, isAsked: false, why: 'a holiday' },
    { days: [0], restDays: 14, isAsked: false, why: 'a holiday of just two weeks' },
    { days: [0], restDays: 14.1, isAsked: true, why: 'nothing says that this shop ever rests so long' },
    { days: [0, 1, 2, 3], restDays: 31, isAsked: true, why: 'a month on, in a shop of every day' },
    { days: [0, 1, 22, 23], restDays: 20.9, isAsked: false, why: 'it has rested for 21 days before' },
    { days: [0, 1, 22, 23], restDays: 21, isAsked: false, why: 'it has rested just so long before' },
    { days: [0, 1, 22, 23], restDays: 21.1, isAsked: true, why: 'longer than ever before' },
    { days: [0, 300, 301], restDays: 179, isAsked: false, why: 'it has rested for longer' },
    { days: [0, 300, 301], restDays: 180, isAsked: false, why: 'just half a year is not asked about' },
    { days: [0, 300, 301], restDays: 181, isAsked: true, why: 'half a year is always asked about' },
  ])('$restDays days after $days: asked $isAsked, for $why', ({ days, restDays, isAsked }) => {
    const shop = shopOn(days);
    const saidMs = clockSaidMs(shop);
    expect(isClockFarOn(shop.entries, saidMs, saidMs + restDays * DAY_MS)).toBe(isAsked);
  });

  test('an empty logbook asks nothing', () => {
    const shop = fold([]);
    expect(isClockFarOn(shop.entries, clockSaidMs(shop), FIRST_MS)).toBe(false);
  });

  test('once the person has said that it is right, the rest is counted from then', () => {
    const { entries } = shopOn([0, 1]);
    const answeredMs = FIRST_MS + 100 * DAY_MS;
    expect(isClockFarOn(entries, answeredMs, answeredMs + 10 * DAY_MS)).toBe(false);
    expect(isClockFarOn(entries, answeredMs, answeredMs + 265 * DAY_MS)).toBe(true);
  });
});

test('a clock is behind where it says less than it said; two phones may differ by ten minutes', () => {
  expect(isClockBehind(FIRST_MS, FIRST_MS - 9 * MINUTE_MS)).toBe(false);
  expect(isClockBehind(FIRST_MS, FIRST_MS - 10 * MINUTE_MS)).toBe(false);
  expect(isClockBehind(FIRST_MS, FIRST_MS - 11 * MINUTE_MS)).toBe(true);
  expect(isClockBehind(FIRST_MS, FIRST_MS + 365 * DAY_MS)).toBe(false);
});
