import { afterEach, describe, expect, test } from 'vitest';
import {
  clockText,
  instantOf,
  instantsOf,
  NOW,
  widestSpan,
} from '../../../../src/parts/fields/time/time-choice';

const TAP_MS = new Date(2026, 10, 25, 14, 20, 30).getTime(); // local time, as the phone's owner reads it

test.each([
  { choice: NOW, expected: new Date(2026, 10, 25, 14, 20, 30) },
  { choice: { kind: 'ago', minutes: 20 } as const, expected: new Date(2026, 10, 25, 14, 0, 30) },
  { choice: { kind: 'clock', text: '2026-11-24T23:50' } as const, expected: new Date(2026, 10, 24, 23, 50) },
])('$choice is $expected', ({ choice, expected }) => {
  expect(instantOf(choice, TAP_MS)).toBe(expected.getTime());
});

test('a clock that is not filled in is no instant', () => {
  expect(instantOf({ kind: 'clock', text: '' }, TAP_MS)).toBeUndefined();
});

test('the clock field begins at the minute of the tap', () => {
  expect(clockText(TAP_MS)).toBe('2026-11-25T14:20');
});

// Clocks went back in 2026: New York 1 November 02:00 to 01:00, Berlin 25 October 03:00 to 02:00, Lord Howe 5 April 02:00 to
// 01:30 (IANA time zone database).
describe('the night the clocks go back', () => {
  const before = process.env['TZ'];
  afterEach(() => {
    if (before === undefined) delete process.env['TZ'];
    else process.env['TZ'] = before;
  });

  test('closed from one to the other covers whatever was meant', () => {
    process.env['TZ'] = 'America/New_York';
    expect(widestSpan('2026-11-01T01:00', '2026-11-01T01:30')).toEqual({
      fromMs: Date.UTC(2026, 10, 1, 5, 0),
      toMs: Date.UTC(2026, 10, 1, 6, 30),
    });
    expect(widestSpan('', '2026-11-01T01:30').fromMs).toBeNaN();
  });

  test.each([
    { zone: 'America/New_York', text: '2026-11-01T01:30', instants: ['05:30', '06:30'] },
    { zone: 'America/New_York', text: '2026-11-01T02:30', instants: ['07:30'] },
    { zone: 'America/New_York', text: '2026-11-01T00:59', instants: ['04:59'] },
    { zone: 'Europe/Berlin', text: '2026-10-25T02:00', instants: ['00:00', '01:00'] },
    { zone: 'Europe/Berlin', text: '2026-10-25T03:00', instants: ['02:00'] },
    { zone: 'Australia/Lord_Howe', text: '2026-04-05T01:45', instants: ['14:45', '15:15'] },
  ])('$zone: $text is $instants UTC', ({ zone, text, instants }) => {
    process.env['TZ'] = zone;
    const utc = instantsOf(text).map((instant) => new Date(instant).toISOString().slice(11, 16));
    expect(utc).toEqual(instants);
  });

  test('an hour that came twice is no instant until one is chosen', () => {
    process.env['TZ'] = 'America/New_York';
    const clock = { kind: 'clock', text: '2026-11-01T01:30' } as const;
    expect(instantOf(clock, TAP_MS)).toBeUndefined();
    expect(instantOf({ ...clock, turn: 'first' }, TAP_MS)).toBe(Date.parse('2026-11-01T05:30Z'));
    expect(instantOf({ ...clock, turn: 'second' }, TAP_MS)).toBe(Date.parse('2026-11-01T06:30Z'));
  });
});
