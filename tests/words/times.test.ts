import { describe, expect, test } from 'vitest';
import { agoWords, bandWords, dayWords, MUCH_LATER, spanWords } from '../../src/words/times';

// Local time, so that the table holds in whatever zone the tests run.
const at = (day: number, hour: number, minute = 0, month = 10): number =>
  new Date(2026, month, day, hour, minute).getTime();
const NOW_MS = at(25, 13);

describe('a band', () => {
  test.each([
    {
      name: 'of this day is told in clock times',
      band: [at(25, 14, 5), at(25, 14, 20), at(25, 14, 50)],
      words: { likely: '14:20', earliest: '14:05', late: '14:50', day: undefined },
    },
    {
      name: 'of tomorrow names the day',
      band: [at(26, 9), at(26, 10), at(26, 12)],
      words: { likely: '10:00', earliest: '09:00', late: '12:00', day: 'tomorrow' },
    },
    {
      name: 'across midnight names the day of the end that is not the likely one',
      band: [at(25, 22), at(25, 23), at(26, 1)],
      words: { likely: '23:00', earliest: '22:00', late: 'Thu 01:00', day: undefined },
    },
    {
      name: 'of days is told in dates',
      band: [at(28, 3), at(6, 7, 0, 11), at(1, 9, 0, 12)],
      words: { likely: '6 Dec', earliest: '28 Nov', late: '1 Jan 2027', day: undefined },
    },
    {
      name: 'whose end is not reached says so',
      band: [at(28, 3), at(6, 7, 0, 11), Number.POSITIVE_INFINITY],
      words: { likely: '6 Dec', earliest: '28 Nov', late: MUCH_LATER, day: undefined },
    },
    {
      name: 'that is never reached says so',
      band: [at(28, 3), Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY],
      words: { likely: MUCH_LATER, earliest: '28 Nov', late: MUCH_LATER, day: undefined },
    },
  ])('$name', ({ band: [earliestMs = 0, likelyMs = 0, lateMs = 0], words }) => {
    expect(bandWords({ earliestMs, likelyMs, lateMs }, NOW_MS)).toEqual(words);
  });
});

test.each([
  { atMs: at(25, 0, 1), words: 'today' },
  { atMs: at(24, 23, 59), words: 'yesterday' },
  { atMs: at(26, 23, 59), words: 'tomorrow' },
  { atMs: at(28, 8), words: 'Sat 28 Nov' },
  { atMs: at(12, 8), words: '12 Nov' },
])('$words', ({ atMs, words }) => {
  expect(dayWords(atMs, NOW_MS)).toBe(words);
});

const MINUTE_MS = 60_000;
const HOUR_MS = 60 * MINUTE_MS;
const DAY_MS = 24 * HOUR_MS;

test.each([
  { ms: 12.4 * MINUTE_MS, words: '12 min' },
  { ms: 82 * MINUTE_MS, words: '82 min' },
  { ms: 101 * MINUTE_MS, words: '1 h 40 min' },
  { ms: 2 * HOUR_MS, words: '2 h' },
  { ms: 23 * HOUR_MS, words: '23 h' },
  { ms: 2.2 * DAY_MS, words: '2 days' },
  { ms: 36 * DAY_MS, words: '5 weeks' },
  { ms: 152 * DAY_MS, words: '5 months' },
  { ms: Number.POSITIVE_INFINITY, words: 'over a year' },
])('a span of $ms ms is $words', ({ ms, words }) => {
  expect(spanWords(ms)).toBe(words);
});

test('what was just done is not told in minutes', () => {
  expect(agoWords(20_000)).toBe('just now');
  expect(agoWords(5 * MINUTE_MS)).toBe('5 min ago');
});
