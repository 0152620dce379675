import { withPlainNumbers } from '../logbook/as-typed';
import type { EntryBody, EntryOf, Kind } from '../logbook/entry';
import type { Logbook } from '../logbook/logbook';
import type { Store } from '../logbook/storage/store';
import { type Result, succeed } from '../result';
import { type Refused, refuse } from './refused';

/** What every action works with. */
export interface ActionNeeds {
  readonly logbook: Logbook;
  readonly store: Store;
  /** The clock, in milliseconds since 1970. */
  readonly now: () => number;
  /** The IANA time zone of the shop. */
  readonly zone: () => string;
  readonly newId: () => string;
}

/** What a person says of one kind of entry. */
export type Said<K extends Kind> = Omit<EntryOf<K>, 'id' | 'v' | 'at' | 'zone' | 'kind'>;
/** The entry as it was kept, or why it was not. */
export type Logged<K extends Kind> = Promise<Result<EntryOf<K>, Refused>>;

/** Checks, keeps and then shows one entry, its numbers in plain figures; what was not kept is not shown. */
export async function log<K extends Kind>(
  { logbook, zone }: ActionNeeds,
  kind: K,
  said: Said<K>,
  atMs?: number,
): Logged<K> {
  const kept = await logbook.append({ ...withPlainNumbers(said), kind } as unknown as EntryBody, atMs);
  return kept.ok ? succeed(kept.value as EntryOf<K>) : refuse(kept.failure, zone());
}
