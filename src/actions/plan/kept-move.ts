import type { Difference } from '../../planner/difference';
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
  const kept = read(KEYS[which]);
  return kept?.newest === newestOf(entries) ? kept?.found : undefined;
}

/** Keeps what the newest entry moved, in place of what was kept before; undefined drops it. */
export function keepMove(which: WhichShop, entries: Iterable<string>, found: Difference | undefined): void {
  try {
    const kept: Kept | undefined = found && { newest: newestOf(entries), found };
    if (kept) localStorage.setItem(KEYS[which], JSON.stringify(kept));
    else localStorage.removeItem(KEYS[which]);
  } catch {
    // Storage is switched off or full; it is shown until the page is closed.
  }
}

/** Ids sort by when they were logged. */
function newestOf(entries: Iterable<string>): string {
  let newest = '';
  for (const id of entries) if (id > newest) newest = id;
  return newest;
}

function read(key: string): Kept | undefined {
  try {
    const kept = JSON.parse(localStorage.getItem(key) ?? 'null');
    return Array.isArray(kept?.found?.moved) && Array.isArray(kept.found.pieces) ? kept : undefined;
  } catch {
    return undefined; // storage is switched off, or what lies there is not ours
  }
}
