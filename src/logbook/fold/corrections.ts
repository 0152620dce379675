import { type Entry, type EntryOf, inItsVersion, KINDS, parseEntry } from '../entry';
import { groupBy } from '../group-by';
import { withoutPlace } from './piece/on-marked';

type Correction = EntryOf<'corrected'>;

/** An entry as it stands corrected, and the corrections that made it so, oldest first. */
export interface Corrected {
  readonly entry: Entry;
  readonly by: readonly string[];
}

/** What an entry brings into being keeps its name: whatever else is said of it would lose its ground. */
const OWN: Partial<Record<Entry['kind'], string>> = {
  'piece-started': 'piece',
  'jar-filled': 'jar',
  'zone-described': 'zoneId',
};

/**
 * The entry as if it had been said so from the first; undefined where it has nothing of the kind or would be faulty.
 * What is struck or itself a correction is never corrected: it is undone.
 */
export function asCorrected(entry: Entry, to: Correction['to']): Entry | undefined {
  if (entry.kind === 'struck' || entry.kind === 'corrected') return undefined;
  const { entries } = KINDS[entry.kind].latest;
  const fits = Object.keys(to).every((field) => field in entries && field !== OWN[entry.kind]);
  if (!fits) return undefined;
  // A place is on one piece: what was on another counts for the whole of that. What cannot do without its place is then faulty.
  const said = to.zoneId === undefined && isOnOther(entry, to) ? withoutPlace(entry) : entry;
  const parsed = parseEntry(inItsVersion({ ...said, ...to } as Entry), Number.POSITIVE_INFINITY);
  return parsed.ok ? parsed.value : undefined;
}

const isOnOther = (entry: Entry, { piece }: Correction['to']): boolean =>
  piece !== undefined && 'piece' in entry && entry.piece !== piece;

/** Every corrected entry by id; what was corrected the same way before is the same object. The correction logged last has the last word. */
export function correctedIn(
  entries: ReadonlyMap<string, Entry>,
  struck: ReadonlySet<string>,
  before: ReadonlyMap<string, Corrected>,
): ReadonlyMap<string, Corrected> {
  const standing = [...entries.values()].filter(
    (entry): entry is Correction => entry.kind === 'corrected' && !struck.has(entry.id),
  );
  const corrected = new Map<string, Corrected>();
  for (const [id, some] of groupBy(standing, ({ entry }) => entry)) {
    let entry = entries.get(id);
    if (!entry) continue;
    const by: string[] = [];
    for (const correction of some.sort((one, other) => (one.id < other.id ? -1 : 1))) {
      const next = asCorrected(entry, correction.to);
      if (!next) continue;
      by.push(correction.id);
      entry = next;
    }
    const known = before.get(id);
    if (by.length > 0) corrected.set(id, known && `${known.by}` === `${by}` ? known : { entry, by });
  }
  return corrected;
}
