import type { Entry, Kind } from '../entry';
import { groupBy } from '../group-by';
import { type Dated, inOrder } from '../ids/order';
import { union } from '../union';
import { type Corrected, correctedIn } from './corrections';
import { type EntryInSi, entryInSi, grow, type Lines } from './in-si';
import { struckIds } from './strikes';
import { createTimeLine } from './time-line';

/** The entries as they were logged, by id and in time order, which of them are struck or corrected, and the lines of those that stand. */
export interface Ledger {
  readonly entries: ReadonlyMap<string, Entry>;
  /** The one that happened last. */
  readonly last: Entry | undefined;
  /** The id of the one that was logged last. */
  readonly newest: string;
  readonly struck: ReadonlySet<string>;
  readonly corrected: ReadonlyMap<string, Corrected>;
  /** Every entry about a piece as it stands corrected, struck ones too, by piece in time order. */
  readonly records: ReadonlyMap<string, readonly Entry[]>;
  readonly lines: Lines;
  /** Takes in more, in whatever order they come. Lines of a kind are a new array when they have changed, else the same. */
  add(logged: Iterable<Entry>): void;
}

type Line = EntryInSi<Kind>;
const NONE: readonly never[] = [];

/** An empty ledger. Ten years of entries are sorted once; after that, one more costs what it changes. */
export function createLedger(): Ledger {
  let timeLine = createTimeLine();
  let struck: ReadonlySet<string> = new Set();
  let corrected: ReadonlyMap<string, Corrected> = new Map();
  /** What corrections correct; one may come before its entry, from another phone. */
  const aims = new Set<string>();
  let last: Entry | undefined;
  let newest = '';
  let records: ReadonlyMap<string, readonly Entry[]> = new Map();
  const kinds = new Map<Kind, readonly Line[]>();

  function place(fresh: readonly Entry[]): void {
    timeLine.add(fresh);
    for (const { id } of fresh) if (id > newest) newest = id;
    if (!isOut(last, fresh.slice(-1))) last = fresh.at(-1);
    records = withMore(
      records,
      groupBy(fresh.filter(isOnPiece), ({ piece }) => piece),
    );
    for (const [kind, some] of byKind(fresh.filter(({ id }) => !struck.has(id)))) {
      const there = kinds.get(kind) ?? NONE;
      const all = there.concat(some.map(entryInSi)); // twice as fast as spreading, on thousands
      if (isOut(there.at(-1), some)) all.sort(inOrder);
      else grow(all, there);
      kinds.set(kind, all);
    }
  }

  /** Strikes and corrects what is newly so, and brings back what no longer is. */
  function revise(): void {
    const logged = [...timeLine.entries.values()];
    const before = struck;
    const said = corrected;
    struck = struckIds(logged);
    corrected = correctedIn(timeLine.entries, struck, said);
    const otherwise = [...said.keys(), ...corrected.keys()].filter(
      (id) => said.get(id) !== corrected.get(id),
    );
    const changed = [...before, ...struck].filter((id) => before.has(id) !== struck.has(id));
    const touched = new Set([...changed, ...otherwise].flatMap((id) => timeLine.entries.get(id)?.kind ?? []));
    const all = corrected.size > 0 ? logged.map(standing).sort(inOrder) : logged;
    const lines = byKind(all.filter(({ id, kind }) => touched.has(kind) && !struck.has(id)));
    for (const kind of touched) kinds.set(kind, lines.get(kind)?.map(entryInSi) ?? NONE);
    last = all.at(-1);
    if (otherwise.length > 0) records = groupBy(all.filter(isOnPiece), ({ piece }) => piece);
  }

  const standing = (entry: Entry): Entry => corrected.get(entry.id)?.entry ?? entry;

  function add(logged: Iterable<Entry>): void {
    const fresh = news(logged, timeLine.entries);
    if (fresh.some(({ id }) => timeLine.entries.has(id))) {
      // Only a forged file brings another content under a known id: then all begins anew.
      const all = [...timeLine.entries.values(), ...fresh];
      timeLine = createTimeLine();
      struck = new Set();
      corrected = new Map();
      last = undefined;
      records = new Map();
      kinds.clear();
      add(all);
    } else if (fresh.length > 0) {
      place(fresh);
      for (const entry of fresh) if (entry.kind === 'corrected') aims.add(entry.entry);
      if (fresh.some(({ kind, id }) => kind === 'struck' || kind === 'corrected' || aims.has(id))) revise();
    }
  }

  const lines = { of: (kind: Kind) => kinds.get(kind) ?? NONE } as unknown as Lines;
  return {
    get entries() {
      return timeLine.entries;
    },
    get last() {
      return last;
    },
    get newest() {
      return newest;
    },
    get struck() {
      return struck;
    },
    get corrected() {
      return corrected;
    },
    get records() {
      return records;
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

type Records = Ledger['records'];
const isOnPiece = (entry: Entry): entry is Entry & { readonly piece: string } => 'piece' in entry;

/** The records with more in them; whoever holds those before sees no change in them. */
function withMore(records: Records, more: Records): Records {
  if (more.size === 0) return records;
  const grown = new Map(records);
  for (const [piece, some] of more) {
    const there = grown.get(piece) ?? NONE;
    const all = [...there, ...some];
    grown.set(piece, isOut(there.at(-1), some) ? all.sort(inOrder) : all);
  }
  return grown;
}

const byKind = (some: readonly Entry[]) => groupBy(some, ({ kind }) => kind);
