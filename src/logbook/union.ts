import type { Entry } from './entry';

/**
 * Entries united by id, each once. Two phones that unite the same entries hold the same, in whatever order.
 *
 * An id never comes with two contents unless a file was forged; then the content whose text sorts first stands.
 */
export function union(entries: Iterable<Entry>): Map<string, Entry> {
  const united = new Map<string, Entry>();
  for (const entry of entries) {
    const known = united.get(entry.id);
    if (!known || (known !== entry && JSON.stringify(entry) < JSON.stringify(known)))
      united.set(entry.id, entry);
  }
  return united;
}
