import type { Difference } from '../../planner/difference';
import { keep, kept } from '../keep/kept-text';
import type { WhichShop } from '../shop';

// What moved is kept on this phone until it is seen: it cannot be worked out again from the entries alone, as the estimates from
// before the last one are gone.

interface Kept {
  /** The newest entry then; with a newer one it is no longer what the last entry moved. */
  readonly newest: string;
  readonly found: Difference;
}

const KEYS: Record<WhichShop, string> = { own: 'coatwait-moved', demo: 'coatwait-demo-moved' };

/** What the newest entry moved, as far as it is kept and not seen yet. */
export function keptMove(which: WhichShop, entries: Iterable<string>): Difference | undefined {
  const kept = moveKept(KEYS[which]);
  return kept?.newest === newestOf(entries) ? kept.found : undefined;
}

/** Keeps what the newest entry moved, in place of what was kept before; undefined drops it. */
export function keepMove(which: WhichShop, entries: Iterable<string>, found: Difference | undefined): void {
  const move: Kept | undefined = found && { newest: newestOf(entries), found };
  keep(KEYS[which], move);
}

/** Ids sort by when they were logged. */
function newestOf(entries: Iterable<string>): string {
  let newest = '';
  for (const id of entries) if (id > newest) newest = id;
  return newest;
}

function moveKept(key: string): Kept | undefined {
  const move = kept(key) as Partial<Kept> | undefined;
  return Array.isArray(move?.found?.moved) && Array.isArray(move.found.pieces) ? (move as Kept) : undefined;
}
