import { connect } from './connection';

const PATIENCE_MS = 10_000;

export type Row = readonly [key: string, value: unknown];

/** The few things the logbook asks of a database. Every promise settles, within ten seconds or what else was said. */
export interface Database {
  /** The next so many rows by key, after a key or from the first. A row that the browser cannot read has no value. */
  readAfter(key: string | undefined, most: number): Promise<readonly Row[]>;
  read(keys: readonly string[]): Promise<readonly Row[]>;
  keys(): Promise<readonly string[]>;
  count(): Promise<number>;
  /** All rows in one transaction: every one of them is kept, or none. */
  write(rows: readonly Row[]): Promise<void>;
  remove(keys: readonly string[]): Promise<void>;
  empty(): Promise<void>;
  /** Calls back when the browser or another tab has closed it: it may have been deleted, and the next use opens an empty one. */
  onLost?(listener: () => void): void;
}

/** A database of that name on this device, with the one table that it has. */
export function openDatabase(name: string, table = 'entries', patienceMs = PATIENCE_MS): Database {
  let hear = (): void => undefined;
  const opened = connect(name, table, () => hear());

  function change(work: (rows: IDBObjectStore) => void): Promise<void> {
    const limit = AbortSignal.timeout(patienceMs);
    const start = async (): Promise<void> => {
      const database = await opened();
      // Too late to be believed: what was reported as not kept must not be kept after all.
      if (!limit.aborted) await transact(database.transaction(table, 'readwrite', STRICT), work, limit);
    };
    return orTimeOut(start(), limit);
  }

  function look<Value>(work: (rows: IDBObjectStore) => Promise<Value>): Promise<Value> {
    const start = async () => work((await opened()).transaction(table).objectStore(table));
    return orTimeOut(start(), AbortSignal.timeout(patienceMs));
  }

  const read = (keys: readonly string[]) =>
    look((rows) => Promise.all(keys.map(async (key) => [key, await answer(rows.get(key))] as const)));

  return {
    async readAfter(key, most) {
      const range = key === undefined ? null : IDBKeyRange.lowerBound(key, true);
      const keys = (await look((rows) => answer(rows.getAllKeys(range, most)))) as string[];
      const values = await look((rows) => answer(rows.getAll(range, most))).catch(() => undefined);
      // One value that cannot be read must not hide the others.
      if (values?.length === keys.length) return keys.map((one, i) => [one, values[i]] as const);
      return salvage(keys, read);
    },
    read,
    keys: () => look((rows) => answer(rows.getAllKeys())) as Promise<string[]>,
    count: () => look((rows) => answer(rows.count())),
    write: (fresh) =>
      change((rows) => {
        for (const [key, value] of fresh) rows.put(value, key);
      }),
    remove: (keys) =>
      change((rows) => {
        for (const key of keys) rows.delete(key);
      }),
    empty: () => change((rows) => rows.clear()),
    onLost(listener) {
      hear = listener;
    },
  };
}

/** The rows of these keys, each read alone; without its value where that cannot be read. */
export const salvage = (keys: readonly string[], read: Database['read']): Promise<Row[]> =>
  Promise.all(keys.map(async (key) => (await read([key]).catch(() => []))[0] ?? [key, undefined]));

const answer = <Value>(asked: IDBRequest<Value>): Promise<Value> =>
  new Promise((resolve, reject) => {
    asked.onsuccess = () => resolve(asked.result);
    asked.onerror = () => reject(asked.error);
  });

// A phone that dies must not take a confirmed coat with it; the default may still be in a buffer.
const STRICT: IDBTransactionOptions = { durability: 'strict' };

function transact(transaction: IDBTransaction, work: (rows: IDBObjectStore) => void, limit: AbortSignal) {
  limit.addEventListener('abort', () => abandon(transaction));
  try {
    work(transaction.objectStore(transaction.objectStoreNames[0] ?? ''));
    transaction.commit(); // at once: else only after each row was answered
  } catch (error) {
    // A row that cannot be cloned: the rows before it are queued already and must not be kept alone.
    abandon(transaction);
    throw error;
  }
  return committed(transaction);
}

// Only the end of the transaction says that it was kept, and only its abort carries the reason.
const committed = (transaction: IDBTransaction): Promise<void> =>
  new Promise((resolve, reject) => {
    transaction.oncomplete = () => resolve();
    transaction.onabort = () => reject(transaction.error ?? new DOMException('', 'AbortError'));
  });

function abandon(transaction: IDBTransaction): void {
  try {
    transaction.abort();
  } catch {
    // It has ended in the meantime: its own events have answered.
  }
}

const orTimeOut = <Value>(work: Promise<Value>, limit: AbortSignal): Promise<Value> =>
  Promise.race([
    work,
    new Promise<never>((_, reject) => {
      limit.addEventListener('abort', () => reject(limit.reason));
    }),
  ]);
