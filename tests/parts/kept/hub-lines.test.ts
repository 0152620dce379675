import { expect, test } from 'vitest';
import type { HubTrouble } from '../../../src/hub/hub-failure';
import { type HubStatus, NOTHING_HEARD, waitingAsKnown } from '../../../src/hub/hub-status';
import { linesOf, staleWords } from '../../../src/parts/kept/hub-lines';
import { HUB_STATUS } from '../../../src/words/frame/hub';

const NOW_MS = Date.UTC(2026, 2, 1, 12);
const MINUTE_MS = 60_000;
const OPEN = { line: 'open', heardMs: NOW_MS } as const;

const CASES: readonly { what: string; status: Partial<HubStatus>; says: readonly string[] }[] = [
  { what: 'just opened', status: {}, says: ['Connecting to the hub…', '0 entries wait on this phone.'] },
  {
    what: 'opening, one logged before',
    status: { entries: 1 },
    says: ['Connecting to the hub…', '1 entry waits on this phone.'],
  },
  {
    what: 'all there',
    status: { ...OPEN, entries: 1204, there: 1204, heardMs: NOW_MS - 2 * MINUTE_MS },
    says: ['1,204 of 1,204 entries are on the hub. Last contact 2 min ago.'],
  },
  {
    what: 'one of one',
    status: { ...OPEN, entries: 1, there: 1 },
    says: ['1 of 1 entry is on the hub. Last contact just now.'],
  },
  {
    what: 'much to come and to go',
    status: { ...OPEN, entries: 20, there: 18, coming: 50_000, photosWaiting: 3, foreign: 2 },
    says: [
      '18 of 20 entries are on the hub. Last contact just now.',
      '50,000 entries still to fetch.',
      '3 photos waiting.',
      '2 messages on the hub were not sealed by this shop, so left out.',
    ],
  },
  {
    what: 'one of each',
    status: { ...OPEN, entries: 2, there: 1, coming: 1, photosWaiting: 1, foreign: 1 },
    says: [
      '1 of 2 entries are on the hub. Last contact just now.',
      '1 entry still to fetch.',
      '1 photo waiting.',
      '1 message on the hub was not sealed by this shop, so left out.',
    ],
  },
  {
    what: 'cut, heard before',
    status: { line: 'cut', trouble: 'unreachable', entries: 5, there: 3, heardMs: NOW_MS - 90 * MINUTE_MS },
    says: [
      'The hub does not answer. It may be off, or this phone is not in its network. Nothing is lost; it goes on by itself.',
      '3 of 5 entries are on the hub. Last contact 1 h 30 min ago.',
    ],
  },
];
test.each(CASES)('how it stands with the hub, $what', ({ status, says }) => {
  expect(linesOf({ ...NOTHING_HEARD, ...status }, NOW_MS)).toEqual(says);
});

const TROUBLES: Record<HubTrouble, string> = {
  unreachable: 'it goes on by itself',
  'wrong-sign-in': 'join again with the new code',
  'no-such-shop': 'Check that the code is the newest',
  'foreign-stream': 'Ask who runs the hub',
  starting: 'it goes on by itself',
  full: 'Give the hub more room',
  'this-phone-full': 'Free some space',
};
test.each(Object.entries(TROUBLES))(
  '%s comes first, and says what to do or that nothing is to be done',
  (trouble, act) => {
    const status = { ...NOTHING_HEARD, line: 'cut', trouble: trouble as HubTrouble } as const;
    const [first = '', ...others] = linesOf(status, NOW_MS);
    expect(first.toLowerCase()).toContain(act.toLowerCase());
    expect(others).toEqual(['0 entries wait on this phone.']);
  },
);

test.each([
  { heardMs: undefined, says: 'Not up to date: the hub has not been reached.' },
  { heardMs: NOW_MS - 5 * MINUTE_MS, says: 'Not up to date: the hub was last reached 5 min ago.' },
])('a board that is not up to date says: $says', ({ heardMs, says }) => {
  expect(staleWords(heardMs, NOW_MS)).toBe(says);
});

test('what waits for over an hour is counted', () => {
  expect([1, 1204].map(HUB_STATUS.long)).toEqual([
    '1 entry not on the hub for over an hour',
    '1,204 entries not on the hub for over an hour',
  ]);
});

test('what waits is told by what was last known: how many, and since the first of them', () => {
  const idAt = (ms: number) => {
    const time = ms.toString(16).padStart(12, '0');
    return `${time.slice(0, 8)}-${time.slice(8)}-7000-9000-000000000001`;
  };
  const ids = [0, 1, 2, 3].map((minutes) => idAt(NOW_MS + minutes * MINUTE_MS));
  const entries = new Map(ids.map((id) => [id, {}]));
  const there = (count: number) => waitingAsKnown(entries, (id) => ids.indexOf(id) < count);
  expect(there(2)).toEqual({ entries: 4, there: 2, waitingSinceMs: NOW_MS + 2 * MINUTE_MS });
  expect(there(4)).toEqual({ entries: 4, there: 4, waitingSinceMs: undefined });
});
