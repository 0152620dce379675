import type { Entry } from '../entry';
import { inOrder } from '../ids/order';

/** Entries by id in time order, which may be added to. */
export interface TimeLine {
  /** As it is now; whoever holds the one before sees no change in it. */
  readonly entries: ReadonlyMap<string, Entry>;
  /** Takes in new ones, which are in time order themselves. */
  add(fresh: readonly Entry[]): void;
}

/** So many of the newest are copied when one is added; a coat is seldom written down later than that. */
const MOST_RECENT = 100;

/** An empty time line. One more entry costs a copy of the newest, however many there are before. */
export function createTimeLine(mostRecent = MOST_RECENT): TimeLine {
  let old: ReadonlyMap<string, Entry> = new Map();
  let oldLast: Entry | undefined;
  let recent: readonly Entry[] = [];
  let entries: ReadonlyMap<string, Entry> = old;

  function settle(all: readonly Entry[]): void {
    const settled = all.slice(0, -mostRecent);
    old = new Map(settled.map((entry) => [entry.id, entry]));
    oldLast = settled.at(-1);
    recent = all.slice(-mostRecent);
  }

  return {
    get entries() {
      return entries;
    },
    add(fresh) {
      const [first] = fresh;
      if (!first) return;
      const isAmongOld = oldLast !== undefined && inOrder(oldLast, first) > 0;
      const all = [...(isAmongOld ? old.values() : []), ...recent, ...fresh].sort(inOrder);
      if (isAmongOld || all.length > 2 * mostRecent) settle(isAmongOld ? all : [...old.values(), ...all]);
      else recent = all;
      entries = oneAfterOther(old, new Map(recent.map((entry) => [entry.id, entry])));
    },
  };
}

/** Two maps without a common key, read as one: first the one, then the other. */
function oneAfterOther<Key, Value>(
  one: ReadonlyMap<Key, Value>,
  other: ReadonlyMap<Key, Value>,
): ReadonlyMap<Key, Value> {
  if (one.size === 0) return other;
  function* both(): MapIterator<[Key, Value]> {
    yield* one;
    yield* other;
  }
  function* keys(): MapIterator<Key> {
    yield* one.keys();
    yield* other.keys();
  }
  function* values(): MapIterator<Value> {
    yield* one.values();
    yield* other.values();
  }
  return {
    size: one.size + other.size,
    get: (key) => other.get(key) ?? one.get(key),
    has: (key) => other.has(key) || one.has(key),
    keys,
    values,
    entries: both,
    [Symbol.iterator]: both,
    forEach(visit) {
      for (const [key, value] of both()) visit(value, key, this);
    },
  };
}
