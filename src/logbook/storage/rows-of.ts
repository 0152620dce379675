import type { Row } from './database';
import type { Loaded } from './store';

/** What is kept of these, by key. */
export const rowsOf = ({ entries, setAside }: Loaded): Row[] => [
  ...setAside.map(({ key, raw }) => [key, raw] as const),
  ...entries.map((entry) => [entry.id, entry] as const),
];
