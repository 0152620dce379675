import { fail, type Result, succeed } from '../result';
import { openDatabase, type Row } from './database';
import { type Entry, type Issue, parseEntry } from './entry';
import { type StorageFailure, toStorageFailure } from './storage-failure';

/** The shop's own logbook, and the one of the demo shop, kept apart. */
export type LogbookName = 'coatwait' | 'coatwait-demo';

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
  loadAll(): Promise<Result<Loaded, StorageFailure>>;
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
    loadAll: () => answer(async () => sort(await database.readAll())),
    load: (ids) => answer(async () => sort(await database.read(ids))),
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

function sort(rows: readonly Row[]): Loaded {
  const entries: Entry[] = [];
  const setAside: SetAside[] = [];
  for (const [key, raw] of rows) {
    if (raw === undefined) continue;
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
