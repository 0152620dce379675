import { expect, test } from 'vitest';
import { movedSince } from '../../../src/screens/piece/moved-moments';
import type { Moment } from '../../../src/verdicts/moments';

const DAY_MS = 86_400_000;
const NOW_MS = new Date(2026, 4, 4, 12).getTime(); // noon, where the test runs
const moment = (name: Moment['name'], days: number, state: Moment['state'] = 'waiting'): Moment => ({
  name,
  state,
  earliestMs: NOW_MS + (days - 1) * DAY_MS,
  likelyMs: NOW_MS + days * DAY_MS,
  lateMs: NOW_MS + (days + 4) * DAY_MS,
});
const shownOn = (days: number) => ({ level: NOW_MS + days * DAY_MS });

test.each([
  {
    what: 'ten days sooner',
    shown: shownOn(20),
    moments: [moment('level', 10)],
    moved: [['level', '24 May']],
  },
  { what: 'an hour later on the same day', shown: shownOn(10.04), moments: [moment('level', 10)], moved: [] },
  {
    what: 'what may be done already',
    shown: shownOn(20),
    moments: [moment('level', -1, 'reached')],
    moved: [],
  },
  { what: 'what was never shown', shown: {}, moments: [moment('level', 10)], moved: [] },
  { what: 'another moment than moved', shown: shownOn(20), moments: [moment('rubOut', 30)], moved: [] },
  { what: 'what will never come', shown: shownOn(20), moments: [moment('level', Infinity)], moved: [] },
])('$what', ({ shown, moments, moved }) => {
  expect([...movedSince(shown, moments, NOW_MS)]).toEqual(moved);
});
