import 'fake-indexeddb/auto';
import { signal } from '@preact/signals';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { giveCalendar } from '../../../src/actions/plan/calendar';
import type { OpenShop } from '../../../src/actions/shop';
import type { EntryBody } from '../../../src/logbook/entry';
import { fold } from '../../../src/logbook/fold/fold';
import { keepEvents, keptEvents } from '../../../src/reminders/phone/kept';
import { DAY_1_MS, entry, id, PIECE, startPiece } from '../../logbook/entries';

/** The browser may refuse to say what was given out. */
const kept = vi.hoisted(() => ({ isRefused: false }));
vi.mock('../../../src/reminders/phone/kept', async (original) => {
  const real = await original<typeof import('../../../src/reminders/phone/kept')>();
  const keptEvents = () => (kept.isRefused ? Promise.reject(new Error('refused')) : real.keptEvents());
  return { ...real, keptEvents };
});

const DAY_MS = 86_400_000;
const HOURS: EntryBody = {
  kind: 'hours-set',
  week: Array.from({ length: 7 }, () => ({ work: [{ open: '07:00', close: '20:00' }] })),
};
const AFTER = { kind: 'work', id: id(0x22), task: 'rub-out', place: 'bench', minutes: 60 };
const plan = (minutes: number): EntryBody =>
  ({
    kind: 'piece-planned',
    piece: PIECE,
    coatsADay: 3,
    steps: [{ kind: 'work', id: id(0x21), task: 'level-sand', place: 'bench', minutes }, { ...AFTER }],
  }) as unknown as EntryBody;

/** What the share sheet was given, and how it ends. */
let given: File[] = [];
let share: () => Promise<void>;
beforeEach(async () => {
  given = [];
  kept.isRefused = false;
  share = async () => undefined;
  await keepEvents([]);
  vi.stubGlobal('localStorage', undefined);
  vi.stubGlobal('navigator', {
    canShare: () => true,
    share: ({ files }: { files: File[] }) => {
      given.push(...files);
      return share();
    },
  });
});
afterEach(() => void vi.unstubAllGlobals());

function opened(minutes = 60, more: { which?: 'own' | 'demo'; days?: number } = {}): OpenShop {
  const { which = 'own', days = 0 } = more;
  const bodies = [HOURS, startPiece(), plan(minutes)];
  const shop = signal(fold(bodies.map((body, n) => entry(n + 1, body, DAY_1_MS))));
  const settled = signal({ shop: shop.value, outlooks: new Map() });
  const nowMs = DAY_1_MS + days * DAY_MS;
  const needs = { zone: () => 'UTC', now: () => nowMs };
  return { which, shop, settled, nowMs: signal(nowMs), needs, isWhole: signal(true) } as unknown as OpenShop;
}
const text = () => given.at(-1)?.text();

test('the bench is given out as a calendar with its pieces by name, and what was given out is remembered', async () => {
  expect(await giveCalendar(opened())).toBe('shared');
  expect(given[0]?.name).toMatch(/\.ics$/);
  expect(await text()).toContain('Small box');
  expect(await text()).toContain('SEQUENCE:0');
  expect((await keptEvents()).length).toBeGreaterThan(0);
});

test('what moved since is corrected by the next file, not doubled', async () => {
  await giveCalendar(opened());
  const uids = async () => (await text())?.match(/UID:.*/g);
  const before = await uids();
  await giveCalendar(opened(90));
  expect(await uids()).toEqual(before);
  expect(await text()).toContain('SEQUENCE:1');
});

test('what was not taken is not remembered, nor is anything of the demo', async () => {
  share = () => Promise.reject(new DOMException('', 'AbortError'));
  expect(await giveCalendar(opened())).toBe('given-up');
  expect(await keptEvents()).toEqual([]);
  share = async () => undefined;
  await giveCalendar(opened());
  const own = await keptEvents();
  expect(await giveCalendar(opened(90, { which: 'demo' }))).toBe('shared');
  expect(await text()).toContain('SEQUENCE:0');
  expect(await keptEvents()).toEqual(own);
});

test('a plan with a fault gives no file: an empty one would cancel what was given out', async () => {
  expect(await giveCalendar(opened(900))).toBe('failed');
  expect(given).toEqual([]);
});

test('what is past is not remembered any more, and what fell away is, as called off', async () => {
  const at = {
    sequence: 0,
    revisedMs: 0,
    isCancelled: false,
    summary: '',
    description: '',
    alarmsBefore: [],
  };
  const hours = (startMs: number) => ({ time: { startMs, endMs: startMs } });
  await keepEvents([
    { ...at, uid: 'past', ...hours(DAY_1_MS - DAY_MS) },
    { ...at, uid: 'gone', ...hours(DAY_1_MS + DAY_MS) },
  ]);
  await giveCalendar(opened());
  const others = (await keptEvents()).filter(({ uid }) => !uid.startsWith('coatwait'));
  expect(others.map(({ uid, isCancelled }) => [uid, isCancelled])).toEqual([['gone', true]]);
});

test('where this phone cannot tell what was given out, all is given out as new', async () => {
  await giveCalendar(opened());
  const first = await text();
  kept.isRefused = true;
  expect(await giveCalendar(opened())).toBe('shared');
  expect(await text()).toBe(first);
});
