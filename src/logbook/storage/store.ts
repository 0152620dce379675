import { fail, type Result, succeed } from '../../result';
import { type Entry, type Issue, parseEntry } from '../entry';
import { tell } from '../fold/told';
import { type Database, openDatabase, type Row } from './database';
import { type FirstPage, type FirstPages, openFirstPages } from './first-page';
import { type StorageFailure, toStorageFailure } from './storage-failure';

/** The shop's own logbook, and the one of the demo shop, kept apart. */
export type LogbookName = 'coatwait' | 'coatwait-demo';

const CHUNK = 1_000;
const FEW = 500;
const NONE: ReadonlySet<string> = new Set();

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

/** Keys that are known already. */
export interface Known {
  /** How many of them are kept on this device. */
  readonly size: number;
  has(key: string): boolean;
}

/** Keeps entries on this device. No method throws: each says how it failed. */
export interface Store {
  /** Everything kept, but for what is known already. */
  loadAll(known?: Known): Promise<Result<Loaded, StorageFailure>>;
  load(ids: readonly string[]): Promise<Result<Loaded, StorageFailure>>;
  /** What a long logbook opens with, before the rest is read; nothing for a short one. */
  loadFirst(): Promise<Result<Loaded, StorageFailure>>;
  /** Keeps what the next cold start opens with. */
  keepFirst(page: FirstPage): Promise<void>;
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
export function openStore(
  name: LogbookName,
  database = openDatabase(name),
  firstPages = openFirstPages(name),
): Store {
  const tabs = 'BroadcastChannel' in globalThis ? new BroadcastChannel(name) : undefined; // else a tab hears of another on waking
  return {
    loadAll: (known = NONE) =>
      answer(() => (known.size === 0 ? inChunks(database, known) : others(database, known))),
    load: (ids) => answer(() => some(database, ids)),
    loadFirst: () => answer(() => first(database, firstPages)),
    keepFirst: (page) => firstPages.keep(page),
    async keep(rows) {
      const kept = await answer(() => database.write(rows));
      if (kept.ok) tabs?.postMessage(rows.map(([key]) => key));
      return kept;
    },
    empty: () => answer(() => database.empty()),
    onKeptElsewhere(listener) {
      if (tabs) tabs.onmessage = ({ data }) => listener(data as readonly string[]);
    },
    close: () => tabs?.close(),
  };
}

/** Every row that is not known, a chunk at a time: the next is on its way while one is read, and a tap between two is answered. */
async function inChunks(database: Database, known: Known, after?: string): Promise<Loaded> {
  const entries: Entry[] = [];
  const setAside: SetAside[] = [];
  let chunk = await database.readAfter(after, CHUNK);
  while (chunk.length > 0) {
    const next = database.readAfter(chunk.at(-1)?.[0], CHUNK);
    const read = sort(chunk.filter(([key]) => !known.has(key)));
    for (const entry of read.entries) tell(entry); // here, and not all at once in the fold
    entries.push(...read.entries);
    setAside.push(...read.setAside);
    chunk = await next;
  }
  return { entries, setAside };
}

/** The first page, and whatever was logged since it was kept. */
async function first(database: Database, pages: FirstPages): Promise<Loaded> {
  const page = await pages.read();
  if (!page) return { entries: [], setAside: [] };
  const since = await inChunks(database, NONE, page.after);
  return { ...since, entries: [...page.entries, ...since.entries] };
}

async function some(database: Database, ids: readonly string[]): Promise<Loaded> {
  return sort((await database.read(ids)).filter(([, raw]) => raw !== undefined));
}

async function others(database: Database, known: Known): Promise<Loaded> {
  // Whenever the page comes back from sleep, and nearly always nothing has come meanwhile: then ten years of keys are not read.
  if ((await database.count()) === known.size) return { entries: [], setAside: [] };
  const missing = (await database.keys()).filter((key) => !known.has(key));
  return missing.length < FEW ? some(database, missing) : inChunks(database, known);
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
