import 'fake-indexeddb/auto';
import { createStore, set } from 'idb-keyval';
import { describe, expect, test } from 'vitest';
import { type Database, openDatabase, salvage } from '../../../src/logbook/storage/database';
import { openFirstPages } from '../../../src/logbook/storage/first-page';
import { openStore } from '../../../src/logbook/storage/store';
import { entry, fillJar, id, layCoat, startPiece } from '../entries';

import { failing, holdUpgrade, newName, open, row, storeOn } from './a-store';

describe('a store', () => {
  test('is empty at first', async () => {
    const store = storeOn(openDatabase(newName()));
    expect(await store.loadAll()).toEqual({ ok: true, value: { entries: [], setAside: [] } });
  });

  test('gives back what it kept after it is opened again', async () => {
    const name = newName();
    await storeOn(openDatabase(name)).keep([row(1), [id(2), entry(2, fillJar())]]);
    const reopened = storeOn(openDatabase(name));
    const entries = [entry(1, startPiece()), entry(2, fillJar())];
    expect(await reopened.loadAll()).toEqual({ ok: true, value: { entries, setAside: [] } });
    expect(await reopened.load([id(2), id(3)])).toEqual({
      ok: true,
      value: { entries: entries.slice(1), setAside: [] },
    });
  });

  test('keeps an entry once, however often it is given', async () => {
    const store = storeOn(openDatabase(newName()));
    await store.keep([row(1)]);
    await store.keep([row(1)]);
    expect(await store.loadAll()).toMatchObject({ value: { entries: [{ id: id(1) }] } });
  });

  test('keeps all rows or none', async () => {
    const store = storeOn(openDatabase(newName()));
    const kept = await store.keep([row(1), [id(2), () => 'a function cannot be kept']]);
    expect(kept).toMatchObject({ ok: false, failure: { kind: 'unavailable' } });
    expect(await store.loadAll()).toMatchObject({ value: { entries: [] } });
  });

  test.each([
    { what: 'from a newer version', raw: { ...entry(2, layCoat()), v: 99 }, path: 'v' },
    { what: 'of an unknown kind', raw: { id: id(2), v: 1, kind: 'polished' }, path: 'kind' },
    { what: 'with an impossible film', raw: { ...entry(2, layCoat()), film: null }, path: 'film' },
    { what: 'that is a text', raw: 'half an ent', path: '' },
    { what: 'that is null', raw: null, path: '' },
  ])('sets aside and names a row $what; the rest opens, and it stays', async ({ raw, path }) => {
    const name = newName();
    await set(id(2), raw, createStore(name, 'entries'));
    const store = storeOn(openDatabase(name));
    await store.keep([row(1)]);
    for (let times = 0; times < 2; times++)
      expect(await store.loadAll()).toMatchObject({
        ok: true,
        value: { entries: [{ id: id(1) }], setAside: [{ key: id(2), raw, issues: [{ path }] }] },
      });
  });

  test('opens what it kept though the clock has fallen back', async () => {
    const store = storeOn(openDatabase(newName()));
    await store.keep([[id(1), entry(1, startPiece(), Date.UTC(2090, 0, 1))]]);
    expect(await store.loadAll()).toMatchObject({ value: { entries: [{ id: id(1) }], setAside: [] } });
  });

  test('is emptied at once, for the demo shop', async () => {
    const store = storeOn(openDatabase(newName()));
    await store.keep([row(1), row(2)]);
    expect(await store.empty()).toEqual({ ok: true, value: undefined });
    expect(await store.loadAll()).toMatchObject({ value: { entries: [] } });
  });

  test('tells the other tabs what it has kept, and not itself', async () => {
    const name = newName();
    const [one, other] = [storeOn(openDatabase(name)), storeOn(openDatabase(name))];
    const heard = new Promise((resolve) => other.onKeptElsewhere(resolve));
    let heardBySelf = false;
    one.onKeptElsewhere(() => {
      heardBySelf = true;
    });
    await one.keep([row(1)]);
    expect(await heard).toEqual([id(1)]);
    expect(heardBySelf).toBe(false);
  });
});

describe('a store that fails', () => {
  test.each([
    { why: 'the device is full', error: new DOMException('', 'QuotaExceededError'), kind: 'full' },
    { why: 'the browser refuses', error: new DOMException('', 'SecurityError'), kind: 'unavailable' },
    { why: 'its files cannot be read', error: new DOMException('', 'UnknownError'), kind: 'damaged' },
    { why: 'nobody knows why', error: undefined, kind: 'unavailable' },
  ])('says so when $why, in every method', async ({ error, kind }) => {
    const store = storeOn(failing(error));
    const answers = [store.loadAll(), store.load([id(1)]), store.keep([row(1)]), store.empty()];
    for (const answer of await Promise.all(answers))
      expect(answer).toMatchObject({ ok: false, failure: { kind } });
  });

  test('tells no other tab of what it has not kept', async () => {
    const [one, other] = [storeOn(failing(undefined)), storeOn(openDatabase(newName()))];
    const heard: unknown[] = [];
    other.onKeptElsewhere((ids) => heard.push(ids));
    await one.keep([row(1)]);
    await storeOn(openDatabase(newName())).keep([row(2)]);
    await expect.poll(() => heard).not.toEqual([]);
    expect(heard[0]).toEqual([id(2)]);
  });

  test('does not wait for ever for a database that will not open, and keeps nothing late', async () => {
    const name = newName();
    const blocker = await holdUpgrade(name);
    const store = storeOn(openDatabase(name, 'entries', 30));
    expect(await store.keep([row(1)])).toEqual({ ok: false, failure: { kind: 'no-answer' } });
    expect(await store.loadAll()).toEqual({ ok: false, failure: { kind: 'no-answer' } });
    blocker.release();
    expect(await storeOn(openDatabase(name)).loadAll()).toMatchObject({ value: { entries: [] } });
  });
});

test('a device that never answers holds up neither the first page nor the words about it', async () => {
  const name = newName();
  const blockers = await Promise.all([name, `${name}-first`].map(holdUpgrade));
  const startMs = performance.now();
  const store = openStore('coatwait-demo', openDatabase(name, 'entries', 30), openFirstPages(name));
  open.push(store);
  expect(await store.loadFirst()).toEqual({ ok: true, value: { entries: [], setAside: [] } });
  expect(await store.loadAll()).toEqual({ ok: false, failure: { kind: 'no-answer' } });
  expect(performance.now() - startMs).toBeLessThan(5_000);
  for (const blocker of blockers) blocker.release();
});

describe('a database that was damaged', () => {
  test('without its table, as an upgrade that was broken off leaves it, is made whole', async () => {
    const name = newName();
    await new Promise<void>((resolve) => {
      const opening = indexedDB.open(name);
      opening.onsuccess = () => {
        opening.result.close();
        resolve();
      };
    });
    const store = storeOn(openDatabase(name));
    expect(await store.keep([row(1)])).toEqual({ ok: true, value: undefined });
    expect(await storeOn(openDatabase(name)).loadAll()).toMatchObject({
      value: { entries: [{ id: id(1) }] },
    });
  });

  test('with one row that the browser cannot read, names it and opens the rest', async () => {
    const whole = openDatabase(newName());
    await whole.write([row(1), row(2), row(3)]);
    const torn = (keys: readonly string[]) =>
      keys.includes(id(2)) ? Promise.reject(new DOMException('', 'DataError')) : whole.read(keys);
    const readAfter: Database['readAfter'] = async (key, most) =>
      key === undefined ? salvage(await whole.keys(), torn) : whole.readAfter(key, most);
    expect(await storeOn({ ...whole, read: torn, readAfter }).loadAll()).toMatchObject({
      value: { entries: [{ id: id(1) }, { id: id(3) }], setAside: [{ key: id(2), raw: undefined }] },
    });
  });

  test('is opened again after the browser has closed it, or another tab had to change it', async () => {
    const name = newName();
    const store = storeOn(openDatabase(name));
    await store.keep([row(1)]);
    await new Promise<void>((resolve, reject) => {
      const opening = indexedDB.open(name, 7);
      opening.onblocked = () => reject(new Error('the store holds the upgrade up'));
      opening.onsuccess = () => {
        opening.result.close();
        resolve();
      };
    });
    expect(await store.keep([row(2)])).toEqual({ ok: true, value: undefined });
    expect(await store.loadAll()).toMatchObject({ value: { entries: [{ id: id(1) }, { id: id(2) }] } });
  });
});

test('a long logbook is read in chunks, each row once and in order', async () => {
  const database = openDatabase(newName());
  const rows = Array.from({ length: 4_500 }, (_, n) => row(n + 1));
  await database.write(rows);
  const loaded = await storeOn(database).loadAll();
  expect(loaded.ok && loaded.value.entries.map((one) => one.id)).toEqual(rows.map(([key]) => key));
});

test('what is known already is not read again', async () => {
  const database = openDatabase(newName());
  await database.write([row(1), row(2), row(3)]);
  const known = new Map([
    [id(1), true],
    [id(3), true],
  ]);
  expect(await storeOn(database).loadAll(known)).toMatchObject({ value: { entries: [{ id: id(2) }] } });
});

test('where nothing has come since, not even the keys are read', async () => {
  const database = openDatabase(newName());
  await database.write([row(1), row(2)]);
  const unread = () => Promise.reject(new Error('was read'));
  const store = storeOn({ ...database, keys: unread, read: unread, readAfter: unread });
  const known = new Set([id(1), id(2)]);
  expect(await store.loadAll(known)).toEqual({ ok: true, value: { entries: [], setAside: [] } });
});
