import ICAL from 'ical.js';
import { expect, test } from 'vitest';
import { planBench } from '../../src/planner/plan-bench';
import type { Bench } from '../../src/planner/step';
import { calendarFile, type EventDraft } from '../../src/reminders/calendar/calendar';
import { planEvents } from '../../src/reminders/calendar/plan-events';
import { revise } from '../../src/reminders/calendar/revise';
import { bench, coat, piece, utc, wait, window, working } from '../planner/a-bench';

const at = (time: string): number => Date.parse(`2026-03-02T${time}:00Z`);
const draft = (uid: string, time: string, more: Partial<EventDraft> = {}): EventDraft => ({
  uid,
  time: { startMs: at(time), endMs: at(time) + 600_000 },
  summary: uid,
  description: '',
  alarmsBefore: [10],
  ...more,
});
const short = (events: ReturnType<typeof revise>) =>
  events.map(({ uid, sequence, revisedMs, isCancelled }) => [uid, sequence, revisedMs, isCancelled]);

test('first given out with sequence 0', () => {
  expect(short(revise([], [draft('a', '10:00')], 1000))).toEqual([['a', 0, 1000, false]]);
});

test('given out again unchanged it is the same', () => {
  const first = revise([], [draft('a', '10:00')], 1000);
  expect(revise(first, [draft('a', '10:00')], 2000)).toEqual(first);
});

test.each([
  { what: 'its time', changed: draft('a', '10:05') },
  { what: 'its name', changed: draft('a', '10:00', { summary: 'other' }) },
  { what: 'its alarms', changed: draft('a', '10:00', { alarmsBefore: [] }) },
])('counts one up when $what changes', ({ changed }) => {
  const first = revise([], [draft('a', '10:00')], 1000);
  expect(short(revise(first, [changed], 2000))).toEqual([['a', 1, 2000, false]]);
});

test('cancels what fell away, once, and takes it back', () => {
  const first = revise([], [draft('a', '10:00')], 1000);
  const gone = revise(first, [], 2000);
  expect(short(gone)).toEqual([['a', 1, 2000, true]]);
  expect(revise(gone, [], 3000)).toEqual(gone);
  expect(short(revise(gone, [draft('a', '10:00')], 4000))).toEqual([['a', 2, 4000, false]]);
});

test.each([
  { what: 'is over', now: '10:11' },
  { what: 'is going on', now: '10:05' },
  { what: 'begins now', now: '10:00' },
])('leaves what $what as it was', ({ now }) => {
  const first = revise([], [draft('a', '10:00')], 1000);
  expect(revise(first, [], at(now))).toEqual([]);
  expect(short(revise(first, [], at('09:59')))).toEqual([['a', 1, at('09:59'), true]]);
});

test('takes a day back out until it is over in every zone', () => {
  const day = Math.floor(at('10:00') / 86_400_000);
  const first = revise([], [draft('promise', '10:00', { time: { day } })], 1000);
  const overMs = (day + 2) * 86_400_000; // a day later at noon west of everything
  expect(short(revise(first, [], overMs - 1))).toEqual([['promise', 1, overMs - 1, true]]);
  expect(revise(first, [], overMs)).toEqual([]);
});

const NOW = utc('2026-03-02 09:00');
const done = { from: NOW - 10, to: NOW };
const whole: Bench = {
  now: NOW,
  working: working(9, 17),
  pieces: [
    piece('a', [coat('a1', { done }), window('aw', 45, 240), coat('a2'), window('aw2', 45, 240), coat('a3')]),
    piece('b', [bench('b1', 30), wait('bw', 60), coat('b2')], { promised: NOW + 1440 }),
  ],
};
const draftsOf = (it: Bench): EventDraft[] => {
  const plan = planBench(it);
  if (!plan.ok) throw new Error(JSON.stringify(plan.failure));
  return planEvents(plan.value, it, { piece: (id) => `Piece ${id}`, zone: 'Europe/Dublin' });
};

test('the feed of the bench has all work to come, the window that is open, the end of the day and the day promised', () => {
  expect(draftsOf(whole).map(({ uid, summary }) => [uid, summary])).toEqual([
    ['coatwait-a2', 'Coat: Piece a'],
    ['coatwait-a3', 'Coat: Piece a'],
    ['coatwait-b1', 'Level-sand: Piece b'],
    ['coatwait-b2', 'Coat: Piece b'],
    ['coatwait-aw', 'Recoat window closes: Piece a'],
    ['coatwait-rags:20514', 'End of day: rags, overspray, filters'], // 2 March 2026 is day 20514 since 1970
    ['coatwait-b-promise', 'Promised: Piece b'],
  ]);
});

test('a check is in the feed like any other work, a wait is not', () => {
  const look = {
    id: 'g',
    kind: 'gate',
    check: 'look-over',
    minutes: 5,
    againAfterMinutes: 60,
    failedAt: [],
    mostFailures: 3,
  } as const;
  const checked: Bench = { ...whole, pieces: [piece('c', [wait('w', 60), look])] };
  expect(draftsOf(checked).map(({ summary }) => summary)).toEqual(['Check: look over: Piece c']);
});

test('what has begun when it is shared is left out: a step that begins now, a window that closed', () => {
  const names = (now: number): string[] => draftsOf({ ...whole, now }).map(({ uid }) => uid);
  const free = { ...whole, pieces: whole.pieces.slice(1) }; // nothing else to do: it begins at once
  expect(draftsOf(free).map(({ uid }) => uid)).not.toContain('coatwait-b1');
  expect(draftsOf(free).map(({ uid }) => uid)).toContain('coatwait-b2');
  expect(names(NOW + 239)).toContain('coatwait-aw');
  expect(names(NOW + 240)).not.toContain('coatwait-aw');
  expect(names(NOW + 1440)).toContain('coatwait-b-promise'); // the day itself
  expect(names(NOW + 2880)).not.toContain('coatwait-b-promise');
});

/** The file as it is shared at a minute, read back by the reference library. */
function sharedAt(now: number): { readonly zone: unknown; readonly events: readonly ICAL.Event[] } {
  const file = calendarFile(revise([], draftsOf({ ...whole, now }), now * 60_000), 'Bench', 'Europe/Dublin');
  const read = new ICAL.Component(ICAL.parse(file));
  const events = read.getAllSubcomponents('vevent').map((component) => new ICAL.Event(component));
  return { zone: read.getFirstPropertyValue('x-wr-timezone'), events };
}

test.each([
  // [minutes from the opening of the window, what is in the file]: work from 09:00 to 17:00, promised for the day after
  { what: 'at once', after: 0, window: true, ends: [20514], promise: true },
  { what: 'in the middle of the first coat planned', after: 50, window: true, ends: [20514], promise: true },
  { what: 'the minute before the window closes', after: 239, window: true, ends: [20514], promise: true },
  { what: 'as the window closes', after: 240, window: false, ends: [20514], promise: true },
  { what: 'at closing time', after: 480, window: false, ends: [20515], promise: true },
  { what: 'in the evening', after: 600, window: false, ends: [20515], promise: true },
  { what: 'after the day that was promised', after: 2880, window: false, ends: [20516], promise: false },
])(
  'shared $what: nothing has begun, the rags of each day with work are in it, its zone is named',
  ({ after, window: isOpen, ends, promise }) => {
    const now = NOW + after;
    const { zone, events } = sharedAt(now);
    expect(zone).toBe('Europe/Dublin');
    const timed = events.filter(({ startDate }) => !startDate.isDate);
    for (const { startDate } of timed) {
      expect(startDate.toUnixTime()).toBeGreaterThan(now * 60);
      expect(startDate.zone).toBe(ICAL.Timezone.utcTimezone);
    }
    const uids = events.map(({ uid }) => uid);
    expect(uids.includes('coatwait-aw')).toBe(isOpen);
    expect(uids.includes('coatwait-b-promise')).toBe(promise);
    const rags = uids.flatMap((uid) => (uid.startsWith('coatwait-rags:') ? [Number(uid.slice(14))] : []));
    expect(rags).toEqual(expect.arrayContaining(ends));
    const worked = new Set(
      timed
        .filter(({ uid }) => /-[ab][123]$/.test(uid))
        .map(({ startDate }) => Math.floor(startDate.toUnixTime() / 86_400)),
    );
    expect(rags).toEqual(expect.arrayContaining([...worked]));
  },
);

test('the end of the day sounds an hour after its last work, says what to do, and every time names its zone', () => {
  const drafts = draftsOf(whole);
  const end = drafts.find(({ uid }) => uid.startsWith('coatwait-rags'));
  const lastMs = Math.max(
    ...drafts.flatMap(({ uid, time }) =>
      uid.endsWith('3') || uid.endsWith('b2') ? ['endMs' in time ? time.endMs : 0] : [],
    ),
  );
  expect(end?.time).toMatchObject({ startMs: lastMs + 3_600_000 });
  expect(end?.alarmsBefore).toEqual([0]);
  expect(end?.description).toMatch(/closed metal can with water/);
  const window = drafts.find(({ uid }) => uid === 'coatwait-aw');
  expect(window?.description).toMatch(/^13:00, Europe\/Dublin\./); // opened 09:00, 240 minutes
});

test('a second export updates and does not duplicate', () => {
  const first = revise([], draftsOf(whole), 0);
  const later = revise(first, draftsOf({ ...whole, now: NOW + 90 }), 1);
  const read = new ICAL.Component(ICAL.parse(calendarFile(later, 'Bench', 'UTC')));
  const events = read.getAllSubcomponents('vevent').map((component) => new ICAL.Event(component));
  expect(new Set(events.map(({ uid }) => uid)).size).toBe(first.length);
  const sequences = Object.fromEntries(events.map(({ uid, sequence }) => [uid, sequence]));
  // a2 could have begun at 09:45 and now begins at 10:30; the window closes when it did, the promise stands.
  expect(sequences).toMatchObject({ 'coatwait-a2': 1, 'coatwait-aw': 0, 'coatwait-b-promise': 0 });
});

test.each([
  { what: 'held', isHeld: true },
  { what: 'free', isHeld: false },
])(
  'every event says that it is as judged when written, and those of a piece that is $what whether it is held',
  ({ isHeld }) => {
    const [a, b] = whole.pieces as [Bench['pieces'][number], Bench['pieces'][number]];
    const drafts = draftsOf({ ...whole, pieces: [{ ...a, ...(isHeld && { isHeld }) }, b] });
    for (const { description } of drafts) expect(description).toMatch(/as judged when written/i);
    const held = drafts.filter(({ description }) => /\bheld\b/i.test(description)).map(({ uid }) => uid);
    expect(held).toEqual(isHeld ? ['coatwait-a2', 'coatwait-a3', 'coatwait-aw'] : []);
  },
);

test('the day promised of a piece that is held says so', () => {
  const [a, b] = whole.pieces as [Bench['pieces'][number], Bench['pieces'][number]];
  const drafts = draftsOf({ ...whole, pieces: [a, { ...b, isHeld: true }] });
  expect(drafts.find(({ uid }) => uid === 'coatwait-b-promise')?.description).toMatch(/^Held/);
});
