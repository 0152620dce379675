import { signal } from '@preact/signals';
import { describe, expect, test } from 'vitest';
import { followReminders } from '../../../src/actions/reminders/follow-reminders';
import type { OpenShop } from '../../../src/actions/shop';
import type { EntryBody } from '../../../src/logbook/entry';
import { fold } from '../../../src/logbook/fold/fold';
import { DAY_1_MS, entry, fillJar, id, layCoat, MINUTE_MS, PIECE, startPiece } from '../../logbook/entries';

const HOUR = 60;
const DAY = 24 * HOUR;
// On UTC; open from 07:00 to 20:00 on every day; entries are of 08:00 unless told otherwise.
const HOURS: EntryBody = {
  kind: 'hours-set',
  week: Array.from({ length: 7 }, () => ({ work: [{ open: '07:00', close: '20:00' }] })),
};
type Timed = EntryBody | readonly [minute: number, body: EntryBody];
const work = (n: number, task: string, more: object = {}) => ({
  kind: 'work',
  id: id(n),
  task,
  place: 'bench',
  minutes: 10,
  ...more,
});
const plan = (...steps: readonly unknown[]): EntryBody =>
  ({ kind: 'piece-planned', piece: PIECE, coatsADay: 3, steps }) as unknown as EntryBody;
const days = (n: number, many: number) => ({
  kind: 'wait',
  id: id(n),
  until: 'recoat',
  isOwn: true,
  minutes: { earliest: many * DAY, likely: many * DAY, late: many * DAY },
});

function at(minute: number, ...bodies: readonly Timed[]) {
  const timed = [HOURS, startPiece(), fillJar(), ...bodies].map(
    (one) => (Array.isArray(one) ? one : [0, one]) as [number, EntryBody],
  );
  const shop = fold(timed.map(([after, body], n) => entry(n + 1, body, DAY_1_MS + after * MINUTE_MS)));
  const nowMs = DAY_1_MS + minute * MINUTE_MS;
  const open = {
    which: 'own',
    shop: signal(shop),
    settled: signal({ shop, outlooks: new Map() }),
    cards: signal(new Map()),
    nowMs: signal(nowMs),
    isWhole: signal(true),
    needs: { zone: () => 'UTC', now: () => nowMs },
  } as unknown as OpenShop;
  expect(followReminders(open)).toBe(followReminders(open));
  const { due, missed, upcoming } = followReminders(open).value;
  const kinds = (some: readonly { readonly kind: string }[]) => some.map(({ kind }) => kind);
  return { due: kinds(due), missed: kinds(missed), upcoming: kinds(upcoming) };
}

describe('what was missed', () => {
  const PLAN = plan(work(0x21, 'glue'), days(0x22, 2), work(0x23, 'other'));
  const glued: Timed = [0, { kind: 'ground-laid', piece: PIECE, ground: 'glue' } as EntryBody];

  test('is told; of a day of rest that has begun there is nothing to miss', () => {
    expect(at(5, PLAN, glued).due).toContain('rest-day');
    const later = at(HOUR, PLAN, glued);
    expect([...later.due, ...later.missed]).not.toContain('rest-day');
    expect(at(20, plan(work(0x21, 'glue')))).toMatchObject({ missed: ['next-step'] });
  });

  test('is not told once it is of no use any more', () => {
    const sprayed = plan(work(0x21, 'coat', { place: 'booth', moveMinutes: 5, isCoat: true }));
    const kinds = (minute: number) => at(minute, sprayed, layCoat()).missed;
    expect(at(1, sprayed, layCoat()).due).toContain('move-piece');
    const seen = [20, 40, 60, 120, 240].map((minute) => kinds(minute).includes('move-piece'));
    expect(seen.at(-1)).toBe(false);
  });
});

test('what is switched off is not reminded of, all else is', () => {
  const pot = { ...fillJar(id(0xb2)), life: { span: { text: '8', unit: 'h' }, as: 'pot' } } as EntryBody;
  const glue = plan(work(0x21, 'glue'));
  const settings = (...off: string[]): EntryBody => ({ kind: 'reminders-set', off }) as unknown as EntryBody;
  expect(at(0, pot, glue).upcoming).toContain('jar-end');
  expect(at(0, pot, glue, settings('jar-end'))).toEqual({ ...at(0, pot, glue), upcoming: ['rags'] });
  expect(at(0, pot, glue, settings('jar-end', 'next-step')).due).toEqual([]);
  expect(at(0, pot, glue, settings('jar-end'), settings()).upcoming).toContain('jar-end');
});

describe('where there is no plan for a fault in it', () => {
  const FAULTY = plan(work(0x21, 'coat', { isCoat: true }), work(0x22, 'other', { minutes: 900 }));

  test('the rags of what was done are reminded of all the same, and what keeps in the shop', () => {
    const pot = { ...fillJar(id(0xb2)), life: { span: { text: '8', unit: 'h' }, as: 'pot' } } as EntryBody;
    expect(at(5, FAULTY, layCoat(), pot).upcoming).toEqual(['rags', 'jar-end']);
    expect(at(65, FAULTY, layCoat()).due).toEqual(['rags']);
    expect(at(65, FAULTY)).toEqual({ due: [], missed: [], upcoming: [] });
  });
});

test('only the end of the day that is confirmed answers for its rags', () => {
  const done = plan(work(0x21, 'coat', { isCoat: true }));
  const read = (act: string): Timed => [
    64,
    { kind: 'cautions-read', act, cautions: ['fire-rags'] } as unknown as EntryBody,
  ];
  expect(at(65, done, layCoat()).due).toEqual(['rags']);
  expect(at(65, done, layCoat(), read('spray')).due).toEqual(['rags']);
  expect(at(65, done, layCoat(), read('end-day')).due).toEqual([]);
});
