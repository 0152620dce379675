import { expect, test } from 'vitest';
import type { EntryBody } from '../../../../src/logbook/entry';
import { fold } from '../../../../src/logbook/fold/fold';
import { id, inTurn, PIECE } from '../../entries';

const [OTHER, CLOSURE, LATER] = [id(0xa2), id(0xc1), id(0xc2)];
const [NOON, EVENING] = ['2026-03-09T12:00:00.000Z', '2026-03-09T18:00:00.000Z'];
const shopOf = (...bodies: readonly EntryBody[]) => fold(bodies.map(inTurn));

test('a promise is the one made last, and taken back it is none', () => {
  const promise = (piece: string, promised?: string): EntryBody => ({
    kind: 'piece-promised',
    piece,
    ...(promised && { promised }),
  });
  const told = (...bodies: EntryBody[]) => [...shopOf(...bodies).promises];
  expect(told(promise(PIECE, NOON), promise(OTHER, NOON), promise(PIECE, EVENING))).toEqual([
    [PIECE, Date.parse(EVENING)],
    [OTHER, Date.parse(NOON)],
  ]);
  expect(told(promise(PIECE, NOON), promise(OTHER, NOON), promise(PIECE))).toEqual([
    [OTHER, Date.parse(NOON)],
  ]);
});

test('a plan is the one set last for its piece; every mark of a step stays', () => {
  const plan = (piece: string, coatsADay: number): EntryBody => ({
    kind: 'piece-planned',
    piece,
    coatsADay,
    steps: [],
  });
  const mark = (as: 'done' | 'not-passed'): EntryBody => ({
    kind: 'step-marked',
    piece: PIECE,
    step: id(0xd1),
    as,
  });
  const { plans, stepMarks } = shopOf(
    plan(PIECE, 2),
    plan(OTHER, 3),
    plan(PIECE, 4),
    mark('not-passed'),
    mark('done'),
  );
  expect([...plans].map(([piece, { coatsADay }]) => [piece, coatsADay])).toEqual([
    [PIECE, 4],
    [OTHER, 3],
  ]);
  expect(stepMarks.map(({ as }) => as)).toEqual(['not-passed', 'done']);
});

test('the shop is closed as long as the closure is not lifted', () => {
  const close = (closure: string): EntryBody => ({
    kind: 'closure-set',
    closure,
    span: { from: NOON, to: EVENING },
    closes: 'everything',
  });
  const { closures } = shopOf(close(CLOSURE), close(LATER), { kind: 'closure-lifted', closure: CLOSURE });
  expect(closures.map(({ closure }) => closure)).toEqual([LATER]);
});

test('working hours are the ones set last', () => {
  const week = (open: string) => Array.from({ length: 7 }, () => ({ work: [{ open, close: '17:00' }] }));
  const { hours } = shopOf(
    { kind: 'hours-set', week: week('08:00') },
    { kind: 'hours-set', week: week('09:00') },
  );
  expect(hours?.week[0]?.work[0]?.open).toBe('09:00');
});

test('a phone is called what it was called last', () => {
  const called = (phone: string, name: string): EntryBody => ({ kind: 'phone-named', phone, name });
  const { phones } = shopOf(
    called('0123456789', 'Bench'),
    called('abcdef0123', 'Booth'),
    called('0123456789', 'Shelf'),
  );
  expect([...phones]).toEqual([
    ['0123456789', 'Shelf'],
    ['abcdef0123', 'Booth'],
  ]);
});

test('a filter stands as it was first opened, with the schedule that was set for it, until it was last thrown out', () => {
  const opened = (name: string, more: object = {}): EntryBody =>
    ({ kind: 'filter-opened', filter: id(0xf1), part: 'cartridge', name, ...more }) as EntryBody;
  const out = (filter: string): EntryBody => ({ kind: 'filter-thrown-out', filter });
  const wear = { text: '8', unit: 'h' } as const;
  const open = { text: '30', unit: 'd' } as const;
  const { filters } = shopOf(
    opened('A2', { wear, open, basis: 'The maker says so.' }),
    opened('P3'),
    out(id(0xf1)),
    out(id(0xf2)),
  );
  expect([...filters.values()]).toMatchObject([
    {
      id: id(0xf1),
      part: 'cartridge',
      name: 'A2',
      wear: { si: 28_800 },
      open: { si: 2_592_000 },
      basis: 'The maker says so.',
      openedMs: Date.UTC(2026, 2, 1, 8, 1),
      thrownOutMs: Date.UTC(2026, 2, 1, 8, 3),
      wornS: 0,
    },
  ]);
  expect(Object.keys(shopOf(opened('P3')).filters.get(id(0xf1)) ?? {}).sort()).toEqual([
    'id',
    'name',
    'openedMs',
    'part',
    'thrownOutMs',
    'wornS',
  ]);
});

test('room, reminders and cards are told in the order in which they were said', () => {
  const room = (mixing: string): EntryBody => ({
    kind: 'room-described',
    volume: { text: '60', unit: 'm3' },
    airFlow: { text: '500', unit: 'm3/h' },
    flowFrom: 'rated',
    mixing: { text: mixing, unit: 'ratio' },
  });
  const answer = (reminder: string): EntryBody => ({ kind: 'reminder-answered', reminder, answer: 'done' });
  const card = (name: string): EntryBody => ({ kind: 'card-ended', card: name });
  const shop = shopOf(room('2'), room('3'), answer('scuff'), answer('rags'), card(id(1)), card(id(2)));
  expect(shop.room?.mixing.si).toBe(3);
  expect(shop.reminderAnswers.map(({ reminder }) => reminder)).toEqual(['scuff', 'rags']);
  expect(shop.cardsEnded.map((line) => line.card)).toEqual([id(1), id(2)]);
});
