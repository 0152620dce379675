import 'fake-indexeddb/auto';
import { describe, expect, test } from 'vitest';
import { type Database, openDatabase } from '../../../src/logbook/storage/database';
import type { Journal } from '../../../src/logbook/storage/journal/journal';
import { openStore } from '../../../src/logbook/storage/store';
import { id } from '../entries';

import { failing, newName, open, row } from './a-store';

describe('the second copy', () => {
  const FULL = failing(new DOMException('', 'QuotaExceededError'));
  const DAMAGED = failing(new DOMException('', 'UnknownError'));

  /** A store and what its second copy was given. */
  function copiedFrom(database: Database, append = async () => true) {
    const copied: string[] = [];
    const second: Journal = {
      append(rows) {
        copied.push(...rows.map(([key]) => key));
        return append();
      },
      compare: async () => undefined,
      close: () => undefined,
    };
    const store = openStore('coatwait-demo', database, undefined, async () => second);
    open.push(store);
    return { store, copied };
  }

  test('is written while the database writes', async () => {
    let isWritten = (): void => undefined;
    const writing = new Promise<void>((resolve) => {
      isWritten = resolve;
    });
    const { store, copied } = copiedFrom({ ...openDatabase(newName()), write: () => writing });
    const keeping = store.keep([row(1)]);
    await expect.poll(() => copied).toEqual([id(1)]);
    isWritten();
    expect(await keeping).toMatchObject({ ok: true });
  });

  test('is waited for before an entry is said to be kept', async () => {
    let isCopied = (_: boolean): void => undefined;
    const copying = new Promise<boolean>((resolve) => {
      isCopied = resolve;
    });
    const { store } = copiedFrom(openDatabase(newName()), () => copying);
    let isSaid = false;
    const keeping = store.keep([row(1)]).then(() => {
      isSaid = true;
    });
    await expect.poll(() => store.load([id(1)])).toMatchObject({ value: { entries: [{ id: id(1) }] } });
    expect(isSaid).toBe(false);
    isCopied(true);
    await keeping;
  });

  test.each([
    { what: 'one entry', of: 'a full device', database: FULL, rows: 1, copied: 1, ok: false },
    { what: 'one entry', of: 'a damaged database', database: DAMAGED, rows: 1, copied: 1, ok: true },
    { what: 'a backup', of: 'a full device', database: FULL, rows: 2, copied: 0, ok: false },
    { what: 'a backup', of: 'a damaged database', database: DAMAGED, rows: 2, copied: 2, ok: true },
  ])('of $what that $of refuses takes $copied: kept $ok', async ({ database, rows, copied: most, ok }) => {
    const { store, copied } = copiedFrom(database);
    expect(await store.keep([row(1), row(2)].slice(0, rows))).toMatchObject({ ok });
    expect(copied).toEqual([id(1), id(2)].slice(0, most));
  });
});
