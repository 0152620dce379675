import { afterEach, describe, expect, test, vi } from 'vitest';
import type { Database, Row } from '../../../src/logbook/storage/database';
import { openFirstPages } from '../../../src/logbook/storage/first-page';
import type { Compared } from '../../../src/logbook/storage/journal/ask';
import type { Journal } from '../../../src/logbook/storage/journal/journal';
import { openStore, type Store } from '../../../src/logbook/storage/store';
import 'fake-indexeddb/auto';
import { entry, id, startPiece } from '../entries';

const row = (n: number): Row => [id(n), entry(n, startPiece())];
const opened: Store[] = [];
afterEach(() => {
  for (const store of opened.splice(0)) store.close();
});

/** A store whose database refuses by an error of that name, beside a second copy that answers so. */
function storeBeside(refusal: string | undefined, second: Partial<Journal> | 'none' | 'fails') {
  const written: Row[] = [];
  const database = {
    write: async (rows: readonly Row[]) => {
      if (refusal) throw new DOMException('', refusal);
      written.push(...rows);
    },
    keys: async () => written.map(([key]) => key),
  } as unknown as Database;
  const journal = () => {
    if (second === 'none') return undefined;
    return second === 'fails'
      ? Promise.reject(new Error('no code'))
      : Promise.resolve({ close: () => undefined, ...second } as Journal);
  };
  const store = openStore(
    'coatwait-demo',
    database,
    openFirstPages('second-copy'),
    journal as () => Promise<Journal>,
  );
  opened.push(store);
  return { store, written };
}

describe('what is kept', () => {
  const takes = async () => true;
  const refuses = async () => false;

  test.each<{ refusal?: string; append?: Journal['append']; is: string }>([
    { append: takes, is: 'kept' },
    { append: refuses, is: 'kept' },
    { is: 'kept' },
    { refusal: 'UnknownError', append: takes, is: 'kept' },
    { refusal: 'UnknownError', append: refuses, is: 'damaged' },
    { refusal: 'UnknownError', is: 'damaged' },
    { refusal: 'SecurityError', append: takes, is: 'kept' },
    // One full device has no room for either, and what is only slow may keep it yet.
    { refusal: 'QuotaExceededError', append: takes, is: 'full' },
    { refusal: 'TimeoutError', append: takes, is: 'no-answer' },
  ])('where the database answers $refusal: $is', async ({ refusal, append, is }) => {
    const kept = await storeBeside(refusal, append ? { append } : 'none').store.keep([row(1)]);
    expect(kept.ok ? 'kept' : kept.failure.kind).toBe(is);
  });

  test('goes to the second copy too; of a backup nothing does that the database has no room for', async () => {
    const copied: string[] = [];
    const append = async (rows: readonly Row[]) => copied.push(...rows.map(([key]) => key)) > 0;
    await storeBeside(undefined, { append }).store.keep([row(1), row(2)]);
    await storeBeside('QuotaExceededError', { append }).store.keep([row(3), row(4)]);
    expect(copied).toEqual([id(1), id(2)]);
  });

  test('is kept where the code of the second copy could not be had', async () => {
    expect(await storeBeside(undefined, 'fails').store.keep([row(1)])).toEqual({
      ok: true,
      value: undefined,
    });
    expect(await storeBeside('UnknownError', 'fails').store.keep([row(1)])).toMatchObject({ ok: false });
  });
});

describe('what the database has lost', () => {
  const compare = async (): Promise<Compared> => ({ lost: [row(1), [id(2), 'torn']], size: 7 });

  test('is said, put back and brought', async () => {
    const { store, written } = storeBeside(undefined, { compare });
    const found: number[] = [];
    const { brought, isBack, copied } = await store.mend([], async (rows) => void found.push(rows));
    expect({ found, isBack, copied }).toEqual({ found: [2], isBack: true, copied: 7 });
    expect(brought.entries.map((one) => one.id)).toEqual([id(1)]);
    expect(brought.setAside.map(({ key }) => key)).toEqual([id(2)]);
    expect(written.map(([key]) => key)).toEqual([id(1), id(2)]);
  });

  test('is brought, though it cannot be put back', async () => {
    const { store } = storeBeside('UnknownError', { compare });
    expect(await store.mend('all', async () => undefined)).toMatchObject({
      isBack: false,
      copied: 7,
      brought: { entries: [{ id: id(1) }] },
    });
  });

  test('is nothing where nothing was lost, or there is no second copy', async () => {
    const none = { brought: { entries: [], setAside: [] }, isBack: true };
    const found = vi.fn();
    const nothing = async (): Promise<Compared> => ({ lost: [], size: 7 });
    expect(await storeBeside('UnknownError', { compare: nothing }).store.mend([], found)).toEqual({
      ...none,
      copied: 7,
    });
    for (const second of ['none', 'fails', { compare: async () => undefined }] as const)
      expect(await storeBeside('UnknownError', second).store.mend([], found)).toEqual({
        ...none,
        copied: undefined,
      });
    expect(found).not.toHaveBeenCalled();
  });

  test('is named by its keys', async () => {
    const { store } = storeBeside(undefined, 'none');
    await store.keep([row(1)]);
    expect(await store.missing([id(1), id(2)])).toEqual({ ok: true, value: [id(2)] });
  });
});
