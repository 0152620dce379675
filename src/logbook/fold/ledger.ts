import type { Entry, Kind } from '../entry';
import { type Dated, inOrder } from '../order';
import { union } from '../union';
import { struckIds } from './strikes';
import { type Lines, type Told, tell } from './told';

/** The entries by id and in time order, which of them are struck, and the lines of those that stand. */
export interface Ledger {
  readonly entries: ReadonlyMap<string, Entry>;
  readonly struck: ReadonlySet<string>;
  readonly lines: Lines;
  /** Takes in more, in whatever order they come. Lines of a kind are a new array when they have changed, else the same. */
  add(logged: Iterable<Entry>): void;
}

type Line = Told<Kind>;
const NONE: readonly never[] = [];

/** An empty ledger. Ten years of entries are sorted once; after that, one more costs what it changes. */
export function createLedger(): Ledger {
  let entries = new Map<string, Entry>();
  let latest: Entry | undefined;
  let struck: ReadonlySet<string> = new Set();
  const kinds = new Map<Kind, readonly Line[]>();

  function place(fresh: readonly Entry[]): void {
    entries = new Map(entries); // whoever holds the one before sees no change in it
    for (const entry of fresh) entries.set(entry.id, entry);
    if (isOut(latest, fresh))
      entries = new Map([...entries].sort(([, one], [, other]) => inOrder(one, other)));
    latest = [...(latest ? [latest] : []), ...fresh.slice(-1)].sort(inOrder).at(-1);
    for (const [kind, some] of byKind(fresh.filter(({ id }) => !struck.has(id)))) {
      const there = kinds.get(kind) ?? NONE;
      const all = [...there, ...some.map(tell)];
      kinds.set(kind, isOut(there.at(-1), some) ? all.sort(inOrder) : all);
    }
  }

  /** Strikes what is newly struck, and brings back what no longer is. */
  function strike(): void {
    const before = struck;
    const all = [...entries.values()];
    struck = struckIds(all);
    const changed = [...before, ...struck].filter((id) => before.has(id) !== struck.has(id));
    const touched = new Set(changed.flatMap((id) => entries.get(id)?.kind ?? []));
    const standing = byKind(all.filter(({ id, kind }) => touched.has(kind) && !struck.has(id)));
    for (const kind of touched) kinds.set(kind, standing.get(kind)?.map(tell) ?? NONE);
  }

  function add(logged: Iterable<Entry>): void {
    const fresh = news(logged, entries);
    if (fresh.some(({ id }) => entries.has(id))) {
      // Only a forged file brings another content under a known id: then all begins anew.
      const all = [...entries.values(), ...fresh];
      entries = new Map();
      latest = undefined;
      struck = new Set();
      kinds.clear();
      add(all);
    } else if (fresh.length > 0) {
      place(fresh);
      if (fresh.some(({ kind }) => kind === 'struck')) strike();
    }
  }

  const lines = { of: (kind: Kind) => kinds.get(kind) ?? NONE } as unknown as Lines;
  return {
    get entries() {
      return entries;
    },
    get struck() {
      return struck;
    },
    lines,
    add,
  };
}

/** What is not known yet, or takes the place of what is, in order. */
function news(logged: Iterable<Entry>, known: ReadonlyMap<string, Entry>): Entry[] {
  const brought = union(logged);
  const both = [...brought.keys()].flatMap((id) => known.get(id) ?? []);
  const united = union([...both, ...brought.values()]);
  return [...united.values()].filter((entry) => known.get(entry.id) !== entry).sort(inOrder);
}

/** Whether these, which are in order themselves, belong among or before what is there. Nearly everything comes after it. */
const isOut = (latest: Dated | undefined, [first]: readonly Dated[]): boolean =>
  latest !== undefined && first !== undefined && inOrder(latest, first) > 0;

function byKind(some: readonly Entry[]): Map<Kind, Entry[]> {
  const kinds = new Map<Kind, Entry[]>();
  for (const entry of some) {
    const others = kinds.get(entry.kind);
    if (others) others.push(entry);
    else kinds.set(entry.kind, [entry]);
  }
  return kinds;
}
