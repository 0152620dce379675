import { fail, type Result, succeed } from '../result';
import { type Database, openDatabase, type Row } from './database';
import { type Entry, type Issue, parseEntry } from './entry';
import { type StorageFailure, toStorageFailure } from './storage-failure';

/** The shop's own logbook, and the one of the demo shop, kept apart. */
export type LogbookName = 'coatwait' | 'coatwait-demo';

const CHUNK = 2_000;

/** Something kept that cannot be read, with what is wrong; it stays in storage as it is. */
export interface SetAside {
  readonly key: string;
  readonly issues: readonly Issue[];
  readonly raw: unknown;
}

/** What was read from storage. */
export interface Loaded {
  readonly entries: readonly Entry[];
  readonly setAside: readonly SetAside[];
}

/** Keeps entries on this device. No method throws: each says how it failed. */
export interface Store {
  /** Everything kept, but for what is known already. */
  loadAll(known?: ReadonlyMap<string, unknown>): Promise<Result<Loaded, StorageFailure>>;
  load(ids: readonly string[]): Promise<Result<Loaded, StorageFailure>>;
  /** Keeps every row under its key, all or none, and tells the other tabs. */
  keep(rows: readonly Row[]): Promise<Result<void, StorageFailure>>;
  /** Takes everything away: for leaving the demo shop. */
  empty(): Promise<Result<void, StorageFailure>>;
  /** Calls back with the ids that another tab has kept. */
  onKeptElsewhere(listener: (ids: readonly string[]) => void): void;
  /** Stops listening to other tabs. */
  close(): void;
}

/** Opens the storage of a logbook. */
export function openStore(name: LogbookName, database = openDatabase(name)): Store {
  const tabs = new BroadcastChannel(name);
  return {
    loadAll: (known = new Map()) =>
      answer(() => (known.size === 0 ? inChunks(database) : others(database, known))),
    load: (ids) => answer(() => some(database, ids)),
    async keep(rows) {
      const kept = await answer(() => database.write(rows));
      if (kept.ok) tabs.postMessage(rows.map(([key]) => key));
      return kept;
    },
    empty: () => answer(() => database.empty()),
    onKeptElsewhere(listener) {
      tabs.onmessage = ({ data }) => listener(data as readonly string[]);
    },
    close: () => tabs.close(),
  };
}

/** Every row, a chunk at a time: the next is on its way while one is read, and a tap between two is answered. */
async function inChunks(database: Database): Promise<Loaded> {
  const entries: Entry[] = [];
  const setAside: SetAside[] = [];
  let chunk = await database.readAfter(undefined, CHUNK);
  while (chunk.length > 0) {
    const next = database.readAfter(chunk.at(-1)?.[0], CHUNK);
    const read = sort(chunk);
    entries.push(...read.entries);
    setAside.push(...read.setAside);
    chunk = await next;
  }
  return { entries, setAside };
}

async function some(database: Database, ids: readonly string[]): Promise<Loaded> {
  return sort((await database.read(ids)).filter(([, raw]) => raw !== undefined));
}

async function others(database: Database, known: ReadonlyMap<string, unknown>): Promise<Loaded> {
  return some(
    database,
    (await database.keys()).filter((key) => !known.has(key)),
  );
}

function sort(rows: readonly Row[]): Loaded {
  const entries: Entry[] = [];
  const setAside: SetAside[] = [];
  for (const [key, raw] of rows) {
    // No upper end of time here: a phone whose clock fell back must not lose sight of what it has kept.
    const parsed = parseEntry(raw, Number.POSITIVE_INFINITY);
    if (parsed.ok) entries.push(parsed.value);
    else setAside.push({ key, issues: parsed.failure, raw });
  }
  return { entries, setAside };
}

async function answer<Value>(work: () => Promise<Value>): Promise<Result<Value, StorageFailure>> {
  try {
    return succeed(await work());
  } catch (error) {
    return fail(toStorageFailure(error));
  }
}
