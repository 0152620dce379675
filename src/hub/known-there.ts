import type { Database } from '../logbook/storage/database';
import { openKnownDatabase } from './membership';

/*
 * What this phone knows of the hub: which entries are on it, and how far it was read. It may be lost: then the hub is read once more, and
 * the logbook takes what it has already as it takes a backup twice.
 */
const CURSOR = 'cursor';
const AT_ONCE = 5_000;

interface Cursor {
  readonly since: string;
  readonly at: number;
}

/** What is known to be on the hub. */
export interface KnownThere {
  /** Up to where it was read. */
  readonly at: number;
  /** When the hub began to hold the shop; empty where it was never read. */
  readonly since: string;
  has(id: string): boolean;
  /** Whether there is a message under this id that this shop did not seal. */
  isForeign(id: string): boolean;
  readonly foreign: number;
  /** How many of its messages are entries of this shop. */
  readonly entries: number;
  /** How many messages were read. */
  readonly read: number;
  /** Whether all of them are among these. */
  isWithin(ids: ReadonlySet<string>): boolean;
  /** Notes what was read up to a place, and then that it was. */
  note(ids: readonly string[], foreign: readonly string[], at: number): Promise<void>;
  /** Whether something that is no entry is there, such as a photo; and notes that it is. */
  hasToo(key: string): boolean;
  noteToo(key: string): Promise<void>;
  /** Begins anew with a hub that began at this moment. */
  forget(since: string): Promise<void>;
}

/** What was known when the app was last open. Where nothing can be kept, it is known as long as the page is open. */
export async function openKnownThere(database: Database = openKnownDatabase()): Promise<KnownThere> {
  const known = new Set<string>();
  const strange = new Set<string>();
  let cursor: Cursor = { since: '', at: 0 };
  const others = new Set<string>();
  const write = (rows: Parameters<Database['write']>[0]): Promise<void> =>
    database.write(rows).catch(() => undefined);

  let rows = await database.readAfter(undefined, AT_ONCE).catch(() => []);
  while (rows.length > 0) {
    for (const [key, value] of rows) {
      if (key === CURSOR) cursor = value as Cursor;
      else if (value === 'foreign') strange.add(key);
      else (value === 'other' ? others : known).add(key);
    }
    rows = await database.readAfter(rows.at(-1)?.[0], AT_ONCE).catch(() => []);
  }
  return {
    get at() {
      return cursor.at;
    },
    get since() {
      return cursor.since;
    },
    has: (id) => known.has(id),
    isForeign: (id) => strange.has(id),
    get foreign() {
      return strange.size;
    },
    get entries() {
      return known.size;
    },
    get read() {
      return known.size + strange.size;
    },
    isWithin: (ids) => [...known].every((id) => ids.has(id)),
    hasToo: (key) => others.has(key),
    async note(ids, foreign, at) {
      for (const id of ids) known.add(id);
      for (const id of foreign) strange.add(id);
      cursor = { ...cursor, at: Math.max(at, cursor.at) };
      await write([
        ...ids.map((id) => [id, 'entry'] as const),
        ...foreign.map((id) => [id, 'foreign'] as const),
        [CURSOR, cursor],
      ]);
    },
    async noteToo(key) {
      if (others.has(key)) return;
      others.add(key);
      await write([[key, 'other']]);
    },
    async forget(since) {
      known.clear();
      strange.clear();
      others.clear();
      cursor = { since, at: 0 };
      await database.empty().catch(() => undefined);
      await write([[CURSOR, cursor]]);
    },
  };
}
