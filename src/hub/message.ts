import { type Entry, isId, parseEntry } from '../logbook/entry';
import type { Loaded, SetAside } from '../logbook/storage/store';
import { idOf, type Stored } from './hub-link';
import { unseal } from './seal';

/** What some messages bring: entries as a backup would bring them, and the ids under which lies what this shop did not seal. */
export interface Brought extends Loaded {
  readonly ids: readonly string[];
  readonly foreign: readonly string[];
}

/** An entry, or what cannot be read of the logbook, as it goes out. */
export const contentOf = (raw: unknown): Uint8Array<ArrayBuffer> =>
  new TextEncoder().encode(JSON.stringify(raw));

/** Opens messages and reads each as an entry of a backup is read: what only a newer app can read is set aside, named and kept. */
export async function openMessages(
  key: CryptoKey,
  some: readonly Pick<Stored, 'subject' | 'body'>[],
): Promise<Brought> {
  const opened = await Promise.all(some.map(({ subject, body }) => unseal(key, subject, body)));
  const entries: Entry[] = [];
  const setAside: SetAside[] = [];
  const ids: string[] = [];
  const foreign: string[] = [];
  for (const [index, content] of opened.entries()) {
    const id = idOf(some[index]?.subject ?? '');
    const raw = content && jsonOf(content);
    if (raw === undefined || !isAbout(raw, id)) {
      foreign.push(id);
      continue;
    }
    const parsed = parseEntry(raw, Number.POSITIVE_INFINITY);
    if (parsed.ok) entries.push(parsed.value);
    else setAside.push({ key: id, issues: parsed.failure, raw });
    ids.push(id);
  }
  return { entries, setAside, ids, foreign };
}

/** Whether something is the entry of this id: a message under another id would be there twice. */
const isAbout = (raw: unknown, id: string): boolean =>
  isId(id) && typeof raw === 'object' && raw !== null && (raw as { readonly id?: unknown }).id === id;

function jsonOf(content: Uint8Array<ArrayBuffer>): unknown {
  try {
    return JSON.parse(new TextDecoder('utf-8', { fatal: true }).decode(content));
  } catch {
    return undefined;
  }
}
