import { batch, type ReadonlySignal, type Signal } from '@preact/signals';
import { news } from './backup/news';
import type { Entry } from './entry';
import type { Shop } from './fold/fold';
import { rowsOf } from './storage/rows-of';
import type { Loaded, SetAside, Store } from './storage/store';

/** How many entries the database had lost, and how many the second copy holds; undefined where there is none. */
export interface Mending {
  readonly count: number;
  readonly copied: number | undefined;
  /** Whether the database cannot be used, and the second copy alone holds the logbook. */
  readonly isAlone: boolean;
}

/** So long the screen has to say how much is put back, before that work holds it. */
const SEEN_MS = 60;

/** The logbook that is mended. */
interface Book {
  readonly store: Store;
  readonly shop: ReadonlySignal<Shop>;
  readonly setAside: ReadonlySignal<readonly SetAside[]>;
  readonly held: ReadonlySignal<{ readonly entries: readonly Entry[] } | undefined>;
  readonly mended: Signal<Mending | undefined>;
  readonly puttingBack: Signal<number | undefined>;
  readonly show: (loaded: Loaded) => void;
}

/**
 * Takes back what the database has lost, from the second copy; gives whether there is one.
 * @param isBroken whether the database gave nothing at all
 */
export async function mend(
  { store, shop, setAside, mended, puttingBack, show }: Book,
  isBroken: boolean,
): Promise<boolean> {
  const unread = setAside.value.filter(({ raw }) => raw === undefined).map(({ key }) => key);
  const { brought, isBack, copied } = await store.mend(isBroken ? 'all' : unread, (rows) => {
    puttingBack.value = rows;
    return new Promise((resolve) => setTimeout(resolve, SEEN_MS));
  });
  const count = brought.entries.length + brought.setAside.length;
  const isAlone = isBroken && copied !== undefined && !(isBack && count > 0);
  batch(() => {
    show(news(brought, shop.value, []));
    mended.value = { count: isAlone ? 0 : count + (mended.value?.count ?? 0), copied, isAlone };
    puttingBack.value = undefined;
  });
  return copied !== undefined;
}

/** Where the database has gone under the app, what is in memory is kept once more. */
export async function keepAgain(book: Book): Promise<void> {
  const { store, shop, held, mended } = book;
  await mend(book, false);
  const { entries } = shop.value;
  const missing = await store.missing(entries.keys());
  const isHeld = new Set(held.value?.entries.map(({ id }) => id));
  const gone = (missing.ok ? missing.value : []).filter((id) => !isHeld.has(id));
  if (gone.length === 0) return;
  const rows = rowsOf({ entries: gone.flatMap((id) => entries.get(id) ?? []), setAside: [] });
  if (!(await store.keep(rows)).ok || !mended.value) return;
  mended.value = { ...mended.value, count: gone.length + mended.value.count };
}
