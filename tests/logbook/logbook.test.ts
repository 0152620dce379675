import 'fake-indexeddb/auto';
import { describe, expect, test } from 'vitest';
import type { Logbook } from '../../src/logbook/logbook';
import type { Store } from '../../src/logbook/storage/store';
import { DAY_1_MS, entry, fillJar, id, JAR, layCoat, MINUTE_MS, PIECE, startPiece } from './entries';

import { coatsIn, logbookOn, logged, NOW_MS, newName, setUp, storeOn } from './storage/a-logbook';

const HOUR_MS = 60 * MINUTE_MS;

describe('append', () => {
  test('keeps what it shows, now and in the zone of the shop', async () => {
    const { store, logbook } = await setUp();
    const coat = logged(await logbook.append(layCoat()));
    expect(coat).toMatchObject({ at: '2026-03-01T09:00:00.000Z', zone: 'Europe/Berlin', v: 1 });
    expect(coatsIn(logbook)).toMatchObject([{ id: coat.id, atMs: NOW_MS }]);
    expect(logged(await store.loadAll()).entries).toContainEqual(coat);
  });

  test('shows a coat marked 20 minutes late before one marked 5 minutes late', async () => {
    const { logbook } = await setUp();
    await logbook.append(layCoat(), NOW_MS - 5 * MINUTE_MS);
    await logbook.append(layCoat(), NOW_MS - 20 * MINUTE_MS);
    expect(coatsIn(logbook).map(({ atMs }) => (NOW_MS - atMs) / MINUTE_MS)).toEqual([20, 5]);
  });

  test('shows nothing before it is kept', async () => {
    const { store, logbook } = await setUp();
    let letGo = (): void => undefined;
    const held = new Promise<void>((resolve) => {
      letGo = resolve;
    });
    const slow = logbookOn({ ...store, keep: (rows) => held.then(() => store.keep(rows)) });
    await slow.open();
    const done = slow.append(layCoat());
    await new Promise((resolve) => setTimeout(resolve, 5));
    expect(coatsIn(slow)).toEqual([]);
    letGo();
    await done;
    expect(coatsIn(slow)).toHaveLength(1);
    expect(coatsIn(logbook)).toEqual([]);
  });

  test('holds and shows what could not be kept, and says so', async () => {
    const { store } = await setUp();
    const full = logbookOn({ ...store, keep: async () => ({ ok: false, failure: { kind: 'full' } }) });
    await full.open();
    const coats = [logged(await full.append(layCoat())), logged(await full.append(layCoat()))];
    expect(coatsIn(full)).toHaveLength(2);
    expect(full.held.value).toEqual({ entries: coats, failure: { kind: 'full' } });
    expect(logged(await store.loadAll()).entries).toHaveLength(2);
  });

  test('keeps what is held, in one go and once, as soon as there is room', async () => {
    const { store, name } = await setUp();
    let room = 0;
    const keep: Store['keep'] = async (rows) =>
      --room < 0 ? { ok: false, failure: { kind: 'full' } } : store.keep(rows);
    const logbook = logbookOn({ ...store, keep });
    await logbook.open();
    const coats = [logged(await logbook.append(layCoat())), logged(await logbook.append(layCoat()))];
    await logbook.keepHeld();
    expect(logbook.held.value?.entries).toEqual(coats);
    room = 9;
    expect(await logbook.keepHeld()).toEqual({ ok: true, value: undefined });
    expect(logbook.held.value).toBeUndefined();
    const kept = logged(await storeOn(name).loadAll()).entries.filter(({ kind }) => kind === 'coat-laid');
    expect(kept).toEqual(coats);
    expect(coatsIn(logbook)).toHaveLength(2);
  });

  test('what another phone brought is found on waking, though as much is in memory only', async () => {
    const store = storeOn(newName());
    let isFull = false;
    const refused = { ok: false, failure: { kind: 'full' } } as const;
    const logbook = logbookOn({
      ...store,
      keep: async (rows) => (isFull ? refused : store.keep(rows)),
      onKeptElsewhere: () => undefined, // it slept
    });
    await logbook.open();
    logged(await logbook.append(startPiece()));
    logged(await logbook.append(fillJar()));
    isFull = true;
    logged(await logbook.append(layCoat()));
    await store.keep([[id(0xabc), entry(0xabc, layCoat())]]);
    await logbook.open();
    expect(coatsIn(logbook)).toHaveLength(2);
  });

  test('work goes on in memory where storage cannot be opened, and is kept when it can', async () => {
    const store = storeOn(newName());
    let isThere = false;
    const refused = { ok: false, failure: { kind: 'unavailable', cause: 'private' } } as const;
    const logbook = logbookOn({
      ...store,
      loadAll: async (known) => (isThere ? store.loadAll(known) : refused),
      keep: async (rows) => (isThere ? store.keep(rows) : refused),
    });
    await logbook.open();
    for (const body of [startPiece(), fillJar(), layCoat()]) logged(await logbook.append(body));
    expect(coatsIn(logbook)).toHaveLength(1);
    isThere = true;
    logged(await logbook.append(layCoat()));
    await expect.poll(() => logbook.held.value).toBeUndefined();
    expect(logged(await store.loadAll()).entries.map(({ kind }) => kind)).toEqual([
      'piece-started',
      'jar-filled',
      'coat-laid',
      'coat-laid',
    ]);
  });

  test.each([
    {
      why: 'a faulty entry',
      atMs: NOW_MS,
      zeroFilm: true,
      failure: { kind: 'faulty', issues: [{ path: 'film.wetFilm' }] },
    },
    {
      why: 'a time that is no time',
      atMs: Number.NaN,
      zeroFilm: false,
      failure: { kind: 'faulty', issues: [{ path: 'at' }] },
    },
    { why: 'a coat in the future', atMs: NOW_MS + 1, zeroFilm: false, failure: { kind: 'in-the-future' } },
    { why: 'a coat before its piece', atMs: DAY_1_MS - 1, zeroFilm: false, failure: { kind: 'too-early' } },
  ])('keeps and shows nothing of $why', async ({ atMs, zeroFilm, failure }) => {
    const { store, logbook } = await setUp();
    const wetFilm = { text: zeroFilm ? '0' : '85', unit: 'um' } as const;
    const body = {
      kind: 'coat-laid',
      piece: PIECE,
      jar: JAR,
      how: 'spray',
      film: { by: 'wet', wetFilm },
    } as const;
    expect(await logbook.append(body, atMs)).toMatchObject({ ok: false, failure });
    expect(coatsIn(logbook)).toEqual([]);
    expect(logged(await store.loadAll()).entries).toHaveLength(2);
  });

  test('starts one piece on a double tap', async () => {
    const logbook = logbookOn(storeOn(newName()));
    const taps = await Promise.all([logbook.append(startPiece()), logbook.append(startPiece())]);
    expect(taps).toMatchObject([{ ok: true }, { ok: false, failure: { kind: 'piece-there-already' } }]);
  });
});

describe('strike', () => {
  test('undoes, redoes and undoes again, and every step is kept', async () => {
    const { name, logbook } = await setUp();
    const coat = logged(await logbook.append(layCoat()));
    const undo = logged(await logbook.strike(coat.id));
    expect(coatsIn(logbook)).toEqual([]);
    const redo = logged(await logbook.strike(undo.id));
    expect(coatsIn(logbook)).toHaveLength(1);
    await logbook.strike(redo.id);
    expect(coatsIn(logbook)).toEqual([]);
    const reopened = logbookOn(storeOn(name));
    await reopened.open();
    expect(reopened.shop.value).toEqual(logbook.shop.value);
  });
});

describe('open', () => {
  test('gives the same shop after the tab was killed', async () => {
    const { name } = await setUp();
    // Twelve coats, three a day two hours apart, over four days.
    const late = logbookOn(storeOn(name), DAY_1_MS + 96 * HOUR_MS);
    await late.open();
    for (let coat = 0; coat < 12; coat++)
      logged(await late.append(layCoat(), DAY_1_MS + (Math.floor(coat / 3) * 24 + (coat % 3) * 2) * HOUR_MS));
    const reopened = logbookOn(storeOn(name));
    expect(await reopened.open()).toEqual({ ok: true, value: undefined });
    expect(coatsIn(reopened)).toHaveLength(12);
    expect(reopened.shop.value).toEqual(late.shop.value);
  });

  test('again, after a sleep, changes nothing that is there', async () => {
    const { logbook } = await setUp();
    const before = logbook.shop.value;
    await logbook.open();
    expect(logbook.shop.value).toEqual(before);
    expect(logbook.shop.value.pieces.get(PIECE)).toEqual(before.pieces.get(PIECE));
  });

  test('names what cannot be read, and opens the rest', async () => {
    const { name, store } = await setUp();
    const newer = { ...entry(9, layCoat()), v: 99 };
    await store.keep([[id(9), newer]]);
    const logbook = logbookOn(storeOn(name));
    await logbook.open();
    expect(logbook.setAside.value).toMatchObject([{ key: id(9), raw: newer, issues: [{ path: 'v' }] }]);
    expect(logbook.shop.value.pieces.size).toBe(1);
  });

  test('says when storage cannot be read', async () => {
    const store = storeOn(newName());
    const unavailable = { ok: false, failure: { kind: 'unavailable', cause: 'x' } } as const;
    const logbook = logbookOn({ ...store, loadAll: async () => unavailable });
    expect(await logbook.open()).toEqual(unavailable);
  });
});

async function seen(logbook: Logbook, coats: number) {
  await expect.poll(() => coatsIn(logbook).length).toBe(coats);
  return coatsIn(logbook);
}

test('two tabs show each other what they keep', async () => {
  const { name, logbook } = await setUp();
  const other = logbookOn(storeOn(name));
  await other.open();
  await other.append(layCoat());
  await logbook.append(layCoat());
  await seen(logbook, 2);
  expect((await seen(other, 2)).map((coat) => coat.id)).toEqual(coatsIn(logbook).map((coat) => coat.id));
});

describe('take', () => {
  const brought = [entry(1, startPiece()), entry(2, fillJar()), entry(3, layCoat())];

  test('keeps and shows what a backup brings, once, however often', async () => {
    const name = newName();
    const logbook = logbookOn(storeOn(name));
    for (let times = 0; times < 3; times++) logged(await logbook.take({ entries: brought, setAside: [] }));
    expect([...logbook.shop.value.entries.values()]).toEqual(brought);
    expect(logged(await storeOn(name).loadAll()).entries).toEqual(brought);
  });

  test('never puts something unreadable in the place of what is there', async () => {
    const store = storeOn(newName());
    const logbook = logbookOn(store);
    await logbook.take({ entries: brought, setAside: [] });
    const forged = { key: id(3), issues: [], raw: { id: id(3), kind: 'struck', v: 9 } };
    await logbook.take({ entries: [], setAside: [forged] });
    expect(logbook.setAside.value).toEqual([]);
    expect(logged(await store.loadAll())).toEqual({ entries: brought, setAside: [] });
  });

  test('heals a row that could not be read', async () => {
    const store = storeOn(newName());
    await store.keep([[id(3), 'half an ent']]);
    const logbook = logbookOn(store);
    await logbook.open();
    expect(logbook.setAside.value).toHaveLength(1);
    await logbook.take({ entries: brought, setAside: [] });
    expect(logbook.setAside.value).toEqual([]);
    expect(logged(await store.loadAll())).toEqual({ entries: brought, setAside: [] });
  });

  test('shows nothing that could not be kept', async () => {
    const full = { ok: false, failure: { kind: 'full' } } as const;
    const logbook = logbookOn({ ...storeOn(newName()), keep: async () => full });
    expect(await logbook.take({ entries: brought, setAside: [] })).toEqual(full);
    expect(logbook.shop.value.entries.size).toBe(0);
  });
});
