import 'fake-indexeddb/auto';
import { signal } from '@preact/signals';
import { afterEach, beforeEach, expect, onTestFinished, test, vi } from 'vitest';
import { deliverReminders } from '../../../src/actions/reminders/deliver';
import { testReminder } from '../../../src/actions/reminders/test-reminder';
import type { OpenShop } from '../../../src/actions/shop';
import type { Entry, EntryBody } from '../../../src/logbook/entry';
import { fold } from '../../../src/logbook/fold/fold';
import type { Upcoming } from '../../../src/reminders/upcoming';
import { DAY_1_MS, entry, fillJar, id, MINUTE_MS } from '../../logbook/entries';

const phone = vi.hoisted(() => ({
  rings: 0,
  shown: [] as Upcoming[],
  withdrawn: [] as string[],
  kept: [] as (readonly Upcoming[])[],
  permission: 'granted',
  asked: 0,
}));
vi.mock('../../../src/reminders/phone/ring', () => ({
  armSound: () => undefined,
  ring: () => void phone.rings++,
}));
vi.mock('../../../src/reminders/phone/notify', () => ({
  notify: async (one: Upcoming) => phone.shown.push(one) > 0,
  withdraw: async (ids: readonly string[]) => void phone.withdrawn.push(...ids),
  permissionNow: () => phone.permission,
  registration: async () => ({}),
}));
vi.mock('../../../src/reminders/phone/periodic', () => ({
  askForPeriodicSync: async () => ++phone.asked > 0,
}));
vi.mock('../../../src/reminders/phone/kept', () => ({
  keptAnswers: async () => [],
  keepUpcoming: async (some: readonly Upcoming[]) => void phone.kept.push(some),
}));

beforeEach(() => {
  Object.assign(phone, { rings: 0, shown: [], withdrawn: [], kept: [], permission: 'granted', asked: 0 });
  vi.useFakeTimers();
  vi.stubGlobal('document', { visibilityState: 'hidden' });
  vi.stubGlobal('navigator', {});
});
afterEach(() => void vi.useRealTimers());

const HOUR = 60;
/** Pots of eight hours, filled so many minutes into the day: each is told of seven hours later. */
const pot = (n: number): EntryBody =>
  ({
    ...fillJar(id(0xb0 + n)),
    name: `Pot ${n}`,
    life: { span: { text: '8', unit: 'h' }, as: 'pot' },
  }) as EntryBody;

function opened(pots: readonly number[], which: 'own' | 'demo' = 'own') {
  const entries: Entry[] = pots.map((minute, n) => entry(n + 1, pot(n), DAY_1_MS + minute * MINUTE_MS));
  const shop = signal(fold(entries));
  const settled = signal({ shop: shop.value, outlooks: new Map() });
  const nowMs = signal(DAY_1_MS);
  const needs = { zone: () => 'UTC', now: () => nowMs.value };
  const open = {
    which,
    shop,
    settled,
    cards: signal(new Map()),
    nowMs,
    needs,
    isWhole: signal(true),
  } as unknown as OpenShop;
  const stop = deliverReminders(open, () => undefined);
  onTestFinished(stop);
  const goTo = (minute: number): void => {
    nowMs.value = DAY_1_MS + minute * MINUTE_MS;
  };
  const log = (body: EntryBody): void => {
    entries.push(entry(entries.length + 1, body, nowMs.value));
    shop.value = fold(entries);
    settled.value = { ...settled.value, shop: shop.value };
  };
  return { goTo, log, stop };
}
const DUE = 7 * HOUR;

test('what comes due rings once, and is notified where the page is not seen', () => {
  const { goTo } = opened([0, 30]);
  goTo(DUE - 1);
  expect(phone.rings).toBe(0);
  goTo(DUE);
  goTo(DUE + 1);
  expect(phone.rings).toBe(1);
  expect(phone.shown.map(({ text, title }) => `${title} ${text}`.includes('Pot 0'))).toEqual([true]);
  vi.stubGlobal('document', { visibilityState: 'visible' });
  goTo(DUE + 30);
  expect([phone.rings, phone.shown.length]).toEqual([2, 1]);
});

test('who has logged something less than a minute ago is looking: nothing rings', () => {
  const { goTo } = opened([0]);
  goTo(DUE);
  expect(phone.rings).toBe(1); // seven hours after the pot was filled
  const next = opened([0]);
  next.goTo(DUE - 1);
  next.log({ kind: 'settings-changed', patch: { units: 'us' } } as EntryBody);
  next.goTo(DUE);
  expect(phone.rings).toBe(1);
});

test('what was answered is taken back, what was only missed stays on the screen of the phone', () => {
  const { goTo, log } = opened([0]);
  goTo(DUE);
  goTo(DUE + 20);
  expect(phone.withdrawn).toEqual([]);
  log({ kind: 'reminder-answered', reminder: `jar-end:${id(0xb0)}`, answer: 'done' });
  expect(phone.withdrawn).toEqual([`jar-end:${id(0xb0)}`]);
});

test('a second after all is still, what is due and to come is kept for the worker, sixty of it', () => {
  const { goTo, stop } = opened([0, 30]);
  vi.advanceTimersByTime(999);
  expect(phone.kept).toEqual([]);
  goTo(DUE);
  vi.advanceTimersByTime(999);
  expect(phone.kept).toEqual([]);
  vi.advanceTimersByTime(1);
  expect(phone.kept.map((some) => some.flatMap(({ ids }) => ids))).toEqual([
    [`jar-end:${id(0xb0)}`, `jar-end:${id(0xb1)}`],
  ]);
  goTo(DUE + 1);
  stop();
  vi.advanceTimersByTime(2000);
  expect(phone.kept).toHaveLength(1);
  opened(Array.from({ length: 70 }, (_, n) => n));
  vi.advanceTimersByTime(1000);
  expect(phone.kept.at(-1)?.flatMap(({ ids }) => ids)).toHaveLength(60);
});

test('of the demo nothing leaves the page: it rings, and no more', () => {
  const { goTo, log } = opened([0], 'demo');
  goTo(DUE);
  log({ kind: 'reminder-answered', reminder: `jar-end:${id(0xb0)}`, answer: 'done' });
  vi.advanceTimersByTime(5000);
  expect(phone).toMatchObject({ rings: 1, shown: [], withdrawn: [], kept: [], asked: 0 });
});

test.each([
  { permission: 'granted', asked: 1 },
  { permission: 'denied', asked: 0 },
])('where notifications are $permission the phone is asked to wake the worker $asked times', async (row) => {
  phone.permission = row.permission;
  opened([]);
  await vi.advanceTimersByTimeAsync(0);
  expect(phone.asked).toBe(row.asked);
});

test('a test rings, and shows one notification', async () => {
  expect(await testReminder(DAY_1_MS)).toBe(true);
  expect(phone.rings).toBe(1);
  expect(phone.shown).toMatchObject([{ atMs: DAY_1_MS, mustAcknowledge: false }]);
});
