import { expect, test } from 'vitest';
import { closingAfter, createOpeningTimes } from '../../../src/planner/windows/opening-times';
import { dateTime, utc, working } from '../a-bench';

// Open from nine to five: from the first minute on, and not at the last.
test.each([
  { at: '2026-03-02 08:59', open: 9, close: 17, closes: undefined },
  { at: '2026-03-02 09:00', open: 9, close: 17, closes: '2026-03-02 17:00' },
  { at: '2026-03-02 16:59', open: 9, close: 17, closes: '2026-03-02 17:00' },
  { at: '2026-03-02 17:00', open: 9, close: 17, closes: undefined },
  // Late hours run on into the next day.
  { at: '2026-03-03 01:00', open: 20, close: 27, closes: '2026-03-03 03:00' },
  { at: '2026-03-03 03:00', open: 20, close: 27, closes: undefined },
])('open from $open to $close, at $at it closes at $closes', ({ at, open, close, closes }) => {
  const minute = closingAfter(working(open, close), utc(at));
  expect(minute === undefined ? undefined : dateTime(minute)).toBe(closes);
});

test('hours that are asked for again are the same ones, each sort of air by itself', () => {
  const times = createOpeningTimes(working(9, 17), utc('2026-03-02 09:00'));
  expect(times('booth', ['blush'])).toBe(times('booth', ['blush']));
  expect(times('booth', ['blush'])).not.toBe(times('booth', ['damp']));
  expect(times('booth')).not.toBe(times('bench'));
});
