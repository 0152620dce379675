import type { Entry } from '../entry';

/** What an order needs of an entry. */
export type Dated = Pick<Entry, 'id' | 'at'>;

/** Entries in the order in which they happened; what happened at one instant, in the order it was logged. */
export function inOrder(one: Dated, other: Dated): number {
  if (one.at !== other.at) return one.at < other.at ? -1 : 1;
  if (one.id === other.id) return 0;
  return one.id < other.id ? -1 : 1;
}
