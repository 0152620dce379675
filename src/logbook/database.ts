import { createStore, entries, promisifyRequest } from 'idb-keyval';

const TABLE = 'entries';
const PATIENCE_MS = 10_000;

export type Row = readonly [key: string, value: unknown];

/** The few things the logbook asks of a database. Every promise settles, within ten seconds. */
export interface Database {
  readAll(): Promise<readonly Row[]>;
  read(keys: readonly string[]): Promise<readonly Row[]>;
  /** All rows in one transaction: every one of them is kept, or none. */
  write(rows: readonly Row[]): Promise<void>;
  empty(): Promise<void>;
}

/** A database of that name on this device. */
export function openDatabase(name: string, patienceMs = PATIENCE_MS): Database {
  const use = createStore(name, TABLE);

  function change(work: (table: IDBObjectStore) => void): Promise<void> {
    const limit = AbortSignal.timeout(patienceMs);
    // Too late to be believed: what was reported as not kept must not be kept after all.
    const start = ({ transaction }: IDBObjectStore) =>
      limit.aborted ? undefined : transact(transaction.db, work, limit);
    return orTimeOut(use('readonly', start), limit);
  }

  const readOnly = <Value>(work: () => Promise<Value>) => orTimeOut(work(), AbortSignal.timeout(patienceMs));

  return {
    readAll: () => readOnly(() => entries<string, unknown>(use)),
    read: (keys) =>
      readOnly(() =>
        use('readonly', (table) =>
          Promise.all(keys.map(async (key) => [key, await promisifyRequest(table.get(key))] as const)),
        ),
      ),
    write: (rows) =>
      change((table) => {
        for (const [key, value] of rows) table.put(value, key);
      }),
    empty: () => change((table) => table.clear()),
  };
}

function transact(database: IDBDatabase, work: (table: IDBObjectStore) => void, limit: AbortSignal) {
  // A phone that dies must not take a confirmed coat with it; the default may still be in a buffer.
  const transaction = database.transaction(TABLE, 'readwrite', { durability: 'strict' });
  limit.addEventListener('abort', () => abandon(transaction));
  try {
    work(transaction.objectStore(TABLE));
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
