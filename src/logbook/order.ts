import type { Entry } from './entry';

/** Entries in the order in which they happened; what happened at one instant, in the order it was logged. */
export function inOrder(one: Entry, other: Entry): number {
  if (one.at !== other.at) return one.at < other.at ? -1 : 1;
  if (one.id === other.id) return 0;
  return one.id < other.id ? -1 : 1;
}
