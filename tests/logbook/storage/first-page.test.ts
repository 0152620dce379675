import 'fake-indexeddb/auto';
import { afterAll, expect, test } from 'vitest';
import { fold, type Shop } from '../../../src/logbook/fold/fold';
import { newId } from '../../../src/logbook/ids/new-id';
import { createLogbook } from '../../../src/logbook/logbook';
import { openDatabase } from '../../../src/logbook/storage/database';
import { openFirstPages } from '../../../src/logbook/storage/first-page';
import { openStore } from '../../../src/logbook/storage/store';
import { firstPageOf } from '../../../src/logbook/storage/write-first-page';
import { tenYears } from '../../bench/ten-years';
import { entry, id, startPiece, strike } from '../entries';

const NOW_MS = Date.UTC(2026, 2, 1);
const years = tenYears(6_000, NOW_MS);
const struckCoat = years.find(({ kind }) => kind === 'coat-laid');
const all = [
  ...years,
  entry(0xfff, strike(struckCoat?.id ?? ''), NOW_MS - 1000),
  entry(0xffe, { kind: 'settings-changed', patch: { units: 'us' } }, Date.parse(years[10]?.at ?? '')),
];
const whole = fold(all);
const page = firstPageOf(whole, NOW_MS);
const stores: { close(): void }[] = [];
afterAll(() => {
  for (const store of stores) store.close();
});

test('a short logbook has none: it is read whole', () => {
  expect(firstPageOf(fold(years.slice(0, 500)), NOW_MS)).toBeUndefined();
});

test('it holds every open piece as the whole logbook does, and what its coats lean on', () => {
  const early = fold(page?.entries ?? []);
  const open = [...whole.pieces.values()].filter(({ closedMs }) => closedMs === undefined);
  expect(open.length).toBeGreaterThan(5);
  for (const piece of open) {
    expect(early.pieces.get(piece.id)).toEqual(piece);
    for (const { jar } of piece.coats) expect(early.jars.has(jar)).toBe(true);
  }
  expect(early.settings).toEqual(whole.settings);
  expect(early.airReadings.at(-1)).toEqual(whole.airReadings.at(-1));
  expect(early.unplaced).toEqual([]);
});

test('it is a part of the logbook, much shorter than it, and nothing struck stands in it', () => {
  const early = fold(page?.entries ?? []);
  expect(page?.entries.length).toBeLessThan(all.length / 2);
  for (const one of page?.entries ?? []) expect(whole.entries.get(one.id)).toBe(one);
  for (const piece of early.pieces.values())
    expect(piece.coats.map((coat) => coat.id)).not.toContain(struckCoat?.id);
  expect(page?.after).toBe([...whole.entries.keys()].sort().at(-1));
});

test('a long logbook opens with it and with what was logged since; what is logged then waits for the rest', async () => {
  const database = openDatabase('long');
  const store = openStore('coatwait-demo', database, openFirstPages('long'));
  stores.push(store);
  const logbookNow = () => createLogbook({ store, now: () => NOW_MS, zone: () => 'Europe/Berlin', newId });
  await store.keep(all.map((one) => [one.id, one]));
  const before = logbookNow();
  await before.openFirst();
  expect(before.shop.value.entries.size).toBe(0);
  await before.open();
  await before.append(startPiece(id(0xeee)));
  const sizeOfFirst = async () => {
    const first = await store.loadFirst();
    return first.ok ? first.value.entries.length : 0;
  };
  await expect.poll(sizeOfFirst).toBeGreaterThan(100);

  const logbook = logbookNow();
  await logbook.openFirst();
  expect(logbook.isWhole.value).toBe(false);
  expect(logbook.shop.value.entries.size).toBeLessThan(all.length);
  expect(logbook.shop.value.pieces.has(id(0xeee))).toBe(true);
  const opening = logbook.open();
  const appended = logbook.append({ kind: 'piece-changed', piece: id(0xeee), name: 'Renamed' });
  await opening;
  expect(logbook.isWhole.value).toBe(true);
  expect(await appended).toMatchObject({ ok: true });
  const kept = await store.loadAll();
  expect(spread(logbook.shop.value)).toEqual(spread(fold(kept.ok ? kept.value.entries : [])));
});

test('ten years brought to a new phone have one too', async () => {
  const store = openStore('coatwait-demo', openDatabase('brought'), openFirstPages('brought'));
  stores.push(store);
  const logbook = createLogbook({ store, now: () => NOW_MS, zone: () => 'Europe/Berlin', newId });
  await logbook.open();
  await logbook.take({ entries: all, setAside: [] });
  const first = async () => {
    const loaded = await store.loadFirst();
    return loaded.ok ? loaded.value.entries : [];
  };
  await expect.poll(async () => (await first()).length).toBe(page?.entries.length);
});

test('one that was torn is no loss', async () => {
  const pages = openFirstPages('torn');
  await pages.keep({ entries: [{ id: 'half' } as never], after: id(1) });
  expect(await pages.read()).toEqual({ entries: [], after: id(1) });
});

/** With the entries as a map of their own, which can be compared. */
const spread = (shop: Shop) => ({ ...shop, entries: new Map(shop.entries) });
