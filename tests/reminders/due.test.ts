import { expect, test } from 'vitest';
import { FIRE_KINDS, isOn, REMINDER_KINDS, type Switches } from '../../src/logbook/kinds/shop/reminder-kinds';
import { type Circumstances, remindersNow } from '../../src/reminders/due';
import { grouped } from '../../src/reminders/group';
import type { Reminder } from '../../src/reminders/reminder';
import { reminderText } from '../../src/reminders/say';
import { toUpcoming } from '../../src/reminders/upcoming';
import { clock, utc } from '../planner/a-bench';

const at = (time: string): number => utc(`2026-03-02 ${time}`);
const NIGHT = { open: 22 * 60, close: 31 * 60 }; // 22:00 to 07:00
const coat: Reminder = { id: 'next-coat:s1', kind: 'next-coat', at: at('14:00') };
const rags: Reminder = { id: 'rags:20514', kind: 'rags', at: at('17:00') };

const shown = (reminders: readonly Reminder[], now: number, more: Partial<Circumstances> = {}) => {
  const { due, missed, upcoming } = remindersNow(reminders, {
    now,
    acknowledgements: [],
    switches: {},
    zone: () => 0,
    ...more,
  });
  const times = (list: readonly Reminder[]) => list.map((it) => `${it.kind} ${clock(it.at)}`);
  return { due: times(due), missed: times(missed), upcoming: times(upcoming) };
};

test.each([
  { now: '13:59', due: [], missed: [], upcoming: ['next-coat 14:00'] },
  { now: '14:00', due: ['next-coat 14:00'], missed: [], upcoming: [] },
  { now: '14:15', due: ['next-coat 14:00'], missed: [], upcoming: [] },
  { now: '14:16', due: [], missed: ['next-coat 14:00'], upcoming: [] },
])('at $now a reminder for 14:00 stands where it belongs', ({ now, ...where }) => {
  expect(shown([coat], at(now))).toEqual(where);
});

test('shows the soonest first', () => {
  expect(shown([rags, coat], at('13:00')).upcoming).toEqual(['next-coat 14:00', 'rags 17:00']);
});

test('shows what was missed while the app was closed', () => {
  expect(shown([coat], at('14:00') + 3 * 1440).missed).toEqual(['next-coat 14:00']);
});

test('forgets after a day what has come too late', () => {
  const move: Reminder = { id: 'm', kind: 'move-piece', at: at('14:00'), until: at('14:30') };
  expect(shown([move], at('14:30') + 1440).missed).toHaveLength(1);
  expect(shown([move], at('14:31') + 1440).missed).toEqual([]);
});

const answer = (time: string, what: 'done' | 'later', reminderId = coat.id) => ({
  acknowledgements: [{ reminderId, at: at(time), answer: what }],
});
test.each([
  { what: 'done settles it', more: answer('14:01', 'done'), due: [], upcoming: [] },
  {
    what: 'later puts it off by 20 min',
    more: answer('14:01', 'later'),
    due: [],
    upcoming: ['next-coat 14:21'],
  },
  {
    what: 'an answer to another',
    more: answer('14:01', 'done', 'x'),
    due: ['next-coat 14:00'],
    upcoming: [],
  },
  {
    what: 'an answer to an earlier plan',
    more: answer('13:00', 'done'),
    due: ['next-coat 14:00'],
    upcoming: [],
  },
])('$what', ({ more, due, upcoming }) => {
  expect(shown([coat], at('14:02'), more)).toEqual({ due, missed: [], upcoming });
});

test('put off, it is of use as long after its new time as it was after its first', () => {
  const move: Reminder = { id: coat.id, kind: 'move-piece', at: at('14:00'), until: at('14:30') };
  const { upcoming } = remindersNow([move], {
    now: at('14:26'),
    ...answer('14:25', 'later'),
    switches: {},
    zone: () => 0,
  });
  expect(upcoming).toEqual([{ ...move, at: at('14:45'), until: at('15:15') }]);
  const [one] = toUpcoming(upcoming, () => undefined);
  expect([one?.atMs, one?.untilMs]).toEqual([at('14:45') * 60_000, at('15:15') * 60_000]);
});

test('of several answers the one that puts it off furthest counts, in whatever order they came', () => {
  const answers = ['14:05', '14:01'].map((time) => ({
    reminderId: coat.id,
    at: at(time),
    answer: 'later' as const,
  }));
  expect(shown([coat], at('14:10'), { acknowledgements: answers }).upcoming).toEqual(['next-coat 14:25']);
});

test('comes again 20 min later', () => {
  expect(shown([coat], at('14:21'), answer('14:01', 'later')).due).toEqual(['next-coat 14:21']);
});

test.each([
  { what: 'after the quiet hours', reminder: { ...coat, at: at('23:00') }, sounds: '07:00' },
  { what: 'after them in the small hours too', reminder: { ...coat, at: at('02:00') }, sounds: '07:00' },
  { what: 'at once at their end', reminder: { ...coat, at: at('07:00') }, sounds: '07:00' },
  {
    what: 'just before them when after them is too late',
    reminder: { ...coat, at: at('23:00'), until: at('23:59') },
    sounds: '21:59',
  },
  {
    what: 'in the middle of them when it is about fire',
    reminder: { ...rags, at: at('23:00') },
    sounds: '23:00',
  },
])('sounds $what', ({ reminder, sounds }) => {
  const { upcoming } = shown([reminder], at('00:00') - 1440, { quiet: NIGHT });
  expect(upcoming).toEqual([`${reminder.kind} ${sounds}`]);
});

test('keeps quiet hours by the wall clock when the clocks change', () => {
  // New York, 8 March 2026: 02:00 becomes 03:00; 07:00 on the wall is 11:00 UTC, the day before it was 12:00.
  const zone = (minute: number): number => (minute >= utc('2026-03-08 07:00') ? -240 : -300);
  const night = { ...coat, at: utc('2026-03-08 06:30') };
  expect(shown([night], utc('2026-03-08 00:00'), { zone, quiet: NIGHT }).upcoming).toEqual([
    'next-coat 11:00',
  ]);
});

test.each(REMINDER_KINDS)('%s can be switched off, unless it is about fire', (kind) => {
  const isFire = FIRE_KINDS.some((fire) => fire === kind);
  const stored: Switches = JSON.parse(JSON.stringify({ [kind]: false })); // as if a file said so
  expect(isOn(kind, stored)).toBe(isFire);
  expect(isOn(kind, {})).toBe(true);
});

test('has no switch for fire', () => {
  // @ts-expect-error rags cannot be switched off
  const switches: Switches = { rags: false };
  expect(shown([rags], at('17:00'), { switches }).due).toEqual(['rags 17:00']);
});

test('rags stand until they are acknowledged, and one answer serves for all days before', () => {
  const yesterday: Reminder = { ...rags, id: 'rags:20513', at: rags.at - 1440 };
  const both = [yesterday, rags];
  const now = at('18:00');
  expect(shown(both, now).missed).toEqual(['rags 17:00', 'rags 17:00']);
  expect(shown(both, now, answer('17:30', 'done', rags.id)).missed).toEqual([]);
  // An answer from before today's work is not about today's rags.
  expect(shown(both, now, answer('08:00', 'done', yesterday.id)).missed).toEqual(['rags 17:00']);
  expect(shown([rags], now + 30 * 1440).missed).toEqual(['rags 17:00']);
});

test.each([
  { seen: '16:10', missed: [] },
  { seen: '15:59', missed: ['rags 17:00'] }, // work came after it
])(
  'rags that were seen to at $seen, after work that ended at 16:00: $missed are asked about',
  ({ seen, missed }) => {
    const afterWork: Reminder = { ...rags, answeredFrom: at('16:00') };
    expect(shown([afterWork], at('17:30'), answer(seen, 'done', 'rags:day-end')).missed).toEqual(missed);
  },
);

test('groups what falls together, fire first', () => {
  const list: Reminder[] = [
    { id: '1', kind: 'move-piece', at: at('16:50') },
    { id: '2', kind: 'next-coat', at: at('16:55') },
    rags,
    { id: '4', kind: 'scuff', at: at('17:01') },
  ];
  const groups = grouped(list);
  expect(
    groups.map((group) => [clock(group.at), group.reminders.map(({ kind }) => kind), group.mustAcknowledge]),
  ).toEqual([
    ['16:50', ['rags', 'move-piece', 'next-coat'], true],
    ['17:01', ['scuff'], false],
  ]);
});

test('acts are told when the last of them is ready, and never before', () => {
  const act = (id: string, minute: string): Reminder => ({
    id,
    kind: 'next-coat',
    at: at(minute),
    word: 'ready',
  });
  const groups = grouped([
    { id: '1', kind: 'move-piece', at: at('16:50') },
    act('2', '16:55'),
    act('3', '17:01'),
  ]);
  expect(groups.map((group) => [clock(group.at), group.reminders.map(({ id }) => id)])).toEqual([
    ['16:50', ['1']],
    ['17:01', ['2', '3']],
  ]);
  const [, both] = toUpcoming(
    groups.flatMap(({ reminders }) => reminders),
    ({ id }) => id,
  );
  expect(both?.text).toBe('Ready. Next coat: 2\nReady. Next coat: 3');
});

test('groups what falls within ten minutes of the first, and no chain of them', () => {
  const list = ['16:00', '16:10', '16:11', '16:20'].map(
    (time, n): Reminder => ({ id: `${n}`, kind: 'scuff', at: at(time) }),
  );
  const ids = grouped(list.toReversed()).map(({ reminders }) => reminders.map(({ id }) => id).join());
  expect(ids).toEqual(['0,1', '2,3']);
});

test('groups come in the order of their times, whatever is in them', () => {
  const groups = grouped([
    { id: 'act', kind: 'next-coat', at: at('16:00'), word: 'ready' },
    { id: 'late', kind: 'move-piece', at: at('17:00') },
    { id: 'early', kind: 'move-piece', at: at('15:00') },
  ]);
  expect(groups.map(({ reminders }) => reminders[0]?.id)).toEqual(['early', 'act', 'late']);
});

test('a notification is of use until all in it are past, at most a day', () => {
  const until = (...ends: (string | undefined)[]) => {
    const list = ends.map(
      (end, n): Reminder => ({
        id: `${n}`,
        kind: 'move-piece',
        at: at('14:00'),
        ...(end && { until: at(end) }),
      }),
    );
    return ((toUpcoming(list, () => undefined)[0]?.untilMs ?? 0) / 60_000 - at('14:00')) / 60;
  };
  expect([until('14:30'), until('14:30', '15:00'), until('14:30', undefined)]).toEqual([0.5, 1, 24]);
});

test('a notification of one thing leads to it, one of several to the bench', () => {
  const leadsTo = (...list: Partial<Reminder>[]) =>
    toUpcoming(
      list.map((one, n): Reminder => ({ id: `${n}`, kind: 'next-coat', at: at('14:00'), ...one })),
      () => 'Box',
    )[0]?.address;
  expect(leadsTo({ pieceId: 'p' })).toBe('#/piece/p');
  expect(leadsTo({ kind: 'weigh-card', thingId: 'c' })).toBe('#/more/cards/c');
  expect(leadsTo({ kind: 'cartridge', thingId: 'c' })).toBe('#/bench');
  expect(leadsTo({ kind: 'weigh-card' })).toBe('#/bench');
  expect(leadsTo({ pieceId: 'p' }, { pieceId: 'q' })).toBe('#/bench');
});

test('groups nothing into nothing', () => {
  expect(grouped([])).toEqual([]);
});

test('says what it is about', () => {
  expect(reminderText({ ...coat, kind: 'window-closing', minutesLeft: 30 }, 'Radio cabinet')).toEqual({
    title: 'Recoat window closing: Radio cabinet',
    text: '30 min left. After it, scuff first, tomorrow.',
  });
  for (const kind of REMINDER_KINDS) {
    const { title, text } = reminderText({ ...coat, kind }, undefined);
    expect(`${title} ${text}`).not.toMatch(/\bsafe/i);
  }
});
