import type { Entry, EntryOf } from '../entry';

type Strike = EntryOf<'struck'>;

/**
 * Ids of the entries that are struck out. A strike that is itself struck strikes nothing, so undo can be undone.
 *
 * A strike counts once every strike against it is known not to count. Strikes in a ring, which only a forged file can
 * hold, never get that far and strike nothing, in whatever order they arrive.
 */
export function struckIds(entries: readonly Entry[]): ReadonlySet<string> {
  const strikes = new Map<string, Strike>();
  for (const entry of entries) if (entry.kind === 'struck') strikes.set(entry.id, entry);
  const doubts = doubtsAgainst(strikes);
  const struck = new Set<string>();
  const certain = [...strikes.values()].filter(({ id }) => !doubts.has(id));
  const settle = (id: string): void => {
    const strike = strikes.get(id);
    if (strike) certain.push(strike);
  };
  for (let strike = certain.pop(); strike; strike = certain.pop()) {
    const target = strike.entry;
    if (struck.has(target)) continue;
    if (!struck.has(strike.id)) {
      struck.add(target);
      settle(target);
    } else if (oneDoubtLess(doubts, target)) settle(target);
  }
  return struck;
}

/** How many strikes stand against each strike. */
function doubtsAgainst(strikes: ReadonlyMap<string, Strike>): Map<string, number> {
  const doubts = new Map<string, number>();
  for (const { entry } of strikes.values())
    if (strikes.has(entry)) doubts.set(entry, (doubts.get(entry) ?? 0) + 1);
  return doubts;
}

/** Takes one doubt away; true when it was the last. */
function oneDoubtLess(doubts: Map<string, number>, id: string): boolean {
  const left = (doubts.get(id) ?? 0) - 1;
  doubts.set(id, left);
  return left === 0;
}
