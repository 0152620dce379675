import { fail, type Result, succeed } from '../../result';
import { type Entry, type Issue, parseEntry } from '../entry';
import { fetchOnce } from '../fetch-once';
import { entryInSi } from '../fold/in-si';
import { type Database, openDatabase, type Row } from './database';
import { type FirstPage, type FirstPages, openFirstPages } from './first-page';
import { type StorageFailure, toStorageFailure } from './storage-failure';

/** The shop's own logbook, and the one of the demo shop, kept apart. */
export type LogbookName = 'coatwait' | 'coatwait-demo';

/** The second copy of the own logbook, with code that comes after the first screen. What is invented has none. */
const journalOf = (name: LogbookName) =>
  name === 'coatwait' && typeof Worker === 'function'
    ? fetchOnce(async () => (await import('./journal/journal')).openJournal(name))
    : () => undefined;
const ignore = (): undefined => undefined; // the second copy never stops the first

/** Whether the database has refused for good. What it was only slow to keep it may keep yet, and one full device has no room for either. */
const isBroken = ({ kind }: StorageFailure): boolean => kind === 'damaged' || kind === 'unavailable';

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

/** What the second copy has brought back. */
export interface Mended {
  readonly brought: Loaded;
  /** Whether it is in the database again. */
  readonly isBack: boolean;
  /** How many rows the second copy holds; undefined where there is none. */
  readonly copied: number | undefined;
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
  /** What the database has lost and the second copy still has; it is put back into the database, once it was said how much. */
  mend(unread: readonly string[] | 'all', onFound: (rows: number) => Promise<void>): Promise<Mended>;
  /** Which of these keys are not in the database. */
  missing(keys: Iterable<string>): Promise<Result<readonly string[], StorageFailure>>;
  /** Calls back when the database was closed under the app: it may be gone. */
  onLost(listener: () => void): void;
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
  journal = journalOf(name),
): Store {
  const tabs = 'BroadcastChannel' in globalThis ? new BroadcastChannel(name) : undefined; // else a tab hears of another on waking
  return {
    loadAll: (known = NONE) =>
      answer(() => (known.size === 0 ? inChunks(database, known) : others(database, known))),
    load: (ids) => answer(() => some(database, ids)),
    loadFirst: () => answer(() => first(database, firstPages)),
    keepFirst: (page) => firstPages.keep(page),
    async keep(rows) {
      const copy = () => journal()?.then((second) => second.append(rows), ignore);
      // What was just done is written to both at once: where one refuses, it stands in the other. Of a backup, whole or not at all, the
      // second copy takes nothing that the database has refused.
      const copying = rows.length === 1 ? copy() : undefined;
      const kept = await answer(() => database.write(rows));
      if (!kept.ok && !isBroken(kept.failure)) return kept;
      const isCopied = await (copying ?? copy()); // before it is said to be kept
      if (!kept.ok && !isCopied) return kept;
      tabs?.postMessage(rows.map(([key]) => key));
      return succeed(undefined); // where one store fails, the other must do
    },
    async mend(unread, onFound) {
      const found = await journal()?.then((second) => second.compare(unread), ignore);
      const { lost = [], size } = { ...found };
      if (lost.length > 0) await onFound(lost.length);
      const isBack = lost.length === 0 || (await answer(() => database.write(lost))).ok;
      return { brought: sort(lost), isBack, copied: size };
    },
    missing: (keys) =>
      answer(async () => {
        const there = new Set(await database.keys());
        return [...keys].filter((key) => !there.has(key));
      }),
    onLost: (listener) => database.onLost?.(listener),
    empty: () => answer(() => database.empty()),
    onKeptElsewhere(listener) {
      if (tabs) tabs.onmessage = ({ data }) => listener(data as readonly string[]);
    },
    close() {
      tabs?.close();
      void journal()?.then((second) => second.close(), ignore);
    },
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
    for (const entry of read.entries) entryInSi(entry); // here, and not all at once in the fold
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
