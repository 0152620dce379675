import { batch, type ReadonlySignal, signal } from '@preact/signals';
import { fail, type Result, succeed } from '../result';
import type { Refusal } from './admit/admit';
import { type Entry, type EntryBody, type Issue, inItsVersion, parseEntry } from './entry';
import { fetchOnce } from './fetch-once';
import { createFold, type Shop } from './fold/fold';
import type { Mending } from './mend';
import { rowsOf } from './storage/rows-of';
import type { StorageFailure } from './storage/storage-failure';
import type { Known, Loaded, SetAside, Store } from './storage/store';
import { createTurns } from './turns';

export interface LogbookNeeds {
  readonly store: Store;
  /** The clock, in milliseconds since 1970. */
  readonly now: () => number;
  /** The IANA time zone of the shop. */
  readonly zone: () => string;
  readonly newId: () => string;
}

/** Entries in memory only, in the order logged, and why. */
export interface Held {
  readonly entries: readonly Entry[];
  readonly failure: StorageFailure;
}

/** Why nothing was logged: the entry is faulty, does not fit the shop, or could not be kept. */
export type AppendFailure =
  | { readonly kind: 'faulty'; readonly issues: readonly Issue[] }
  | Refusal
  | StorageFailure;

export interface Logbook {
  /** The shop as it is now; holds only what is kept, and what is held. */
  readonly shop: ReadonlySignal<Shop>;
  /** What this device would not keep: in memory only, until it can be kept. Undefined when there is nothing. */
  readonly held: ReadonlySignal<Held | undefined>;
  /** What is kept but cannot be read. */
  readonly setAside: ReadonlySignal<readonly SetAside[]>;
  /** How many entries the second copy has brought back, and how many it holds; undefined until it was asked. */
  readonly mended: ReadonlySignal<Mending | undefined>;
  /** How many entries the second copy is putting back; 0 while an empty logbook waits for what it says. Undefined otherwise. */
  readonly puttingBack: ReadonlySignal<number | undefined>;
  /** Whether everything kept has been read: before that, what the first screens show is right, but not all is there. */
  readonly isWhole: ReadonlySignal<boolean>;
  /** Reads what the first screens need of a long logbook; nothing of a short one. */
  openFirst(): Promise<Result<void, StorageFailure>>;
  /** Reads everything kept; what is logged meanwhile waits for it. Call it again when the page comes back from sleep. */
  open(): Promise<Result<void, StorageFailure>>;
  /** Tries again to keep what is held. */
  keepHeld(): Promise<Result<void, StorageFailure>>;
  /**
   * Logs what happened at an instant, now unless told otherwise: checked, then kept, then shown. Where the device will not keep it,
   * it is held and shown, so that the work can go on.
   */
  append(body: EntryBody, atMs?: number): Promise<Result<Entry, AppendFailure>>;
  /** Undoes an entry; undo of the strike itself brings it back. */
  strike(id: string): Promise<Result<Entry, AppendFailure>>;
  /** Keeps and shows what a backup brings. */
  take(brought: Loaded): Promise<Result<void, StorageFailure>>;
}

/** What fits the shop. The first screen does not wait for it. */
const later = fetchOnce(() => import('./later'));

/** What was lost is looked for behind the first screen. */
const mending = fetchOnce(() => import('./mend'));

/** So long is waited for the second copy of an empty database; what happened can always be logged. */
const MENDED_BY_MS = 5_000;

/** A live logbook on a store. */
export function createLogbook({ store, now, zone, newId }: LogbookNeeds): Logbook {
  const grow = createFold();
  const shop = signal(grow([]));
  const held = signal<Held | undefined>(undefined);
  const isWhole = signal(false);
  const mended = signal<Mending | undefined>(undefined);
  const puttingBack = signal<number | undefined>(undefined);
  const setAside = signal<readonly SetAside[]>([]);
  // So that each is checked against a shop that holds the one before: a double tap starts one piece.
  const inTurn = createTurns();
  // Where the database gave nothing: it may be new, or lost. What is logged is checked against what comes back.
  let sureOfNothing: Promise<unknown> | undefined;

  function show({ entries, setAside: more }: Loaded): void {
    batch(() => {
      if (entries.length > 0) shop.value = grow(entries);
      const aside = [...setAside.value, ...more];
      if (aside.length > 0) setAside.value = unread(aside, shop.value);
    });
  }

  async function load(loading: Promise<Result<Loaded, StorageFailure>>) {
    const loaded = await loading;
    if (loaded.ok) show(loaded.value);
    return loaded.ok ? succeed(undefined) : loaded;
  }

  async function keep(fresh: Loaded): Promise<Result<void, StorageFailure>> {
    const kept = await store.keep(rowsOf(fresh));
    if (kept.ok) show(fresh);
    return kept;
  }

  async function appendNow(body: EntryBody, atMs: number): Promise<Result<Entry, AppendFailure>> {
    const parsed = parseEntry(
      inItsVersion({ ...body, id: newId(), at: toInstant(atMs), zone: zone() }),
      now(),
    );
    if (!parsed.ok) return fail({ kind: 'faulty', issues: parsed.failure });
    const { admit } = await later();
    const admitted = admit(parsed.value, shop.value, now());
    if (!admitted.ok) return admitted;
    await keepOrHold(admitted.value);
    return admitted;
  }

  async function keepOrHold(entry: Entry): Promise<void> {
    const before = held.value;
    if (before) {
      // The device has refused already: the person does not wait for it to refuse again.
      held.value = { ...before, entries: [...before.entries, entry] };
      void keepHeld();
    } else {
      const kept = await store.keep(rowsOf({ entries: [entry], setAside: [] }));
      if (!kept.ok) held.value = { entries: [entry], failure: kept.failure };
    }
    show({ entries: [entry], setAside: [] });
  }

  async function keepHeld(): Promise<Result<void, StorageFailure>> {
    const waiting = held.value?.entries ?? [];
    if (waiting.length === 0) return succeed(undefined);
    const kept = await store.keep(rowsOf({ entries: waiting, setAside: [] }));
    const still = (held.value?.entries ?? []).filter((entry) => !kept.ok || !waiting.includes(entry));
    const failure = kept.ok ? held.value?.failure : kept.failure;
    held.value = still.length > 0 && failure ? { entries: still, failure } : undefined;
    return kept;
  }

  function knownNow(): Known {
    const { entries } = shop.value;
    const aside = new Set(setAside.value.map(({ key }) => key));
    const size = entries.size + aside.size - (held.value?.entries.length ?? 0);
    return { size, has: (key) => entries.has(key) || aside.has(key) };
  }

  async function keepFirstPage(): Promise<void> {
    const { firstPageOf } = await later();
    const page = firstPageOf(shop.value, now());
    if (page) await store.keepFirst(page);
  }

  async function take(brought: Loaded): Promise<Result<void, StorageFailure>> {
    const { news } = await later();
    const kept = await keep(news(brought, shop.value, setAside.value));
    if (kept.ok) void keepFirstPage().catch(() => undefined); // ten years brought to a new phone open as quickly there
    return kept;
  }

  const book = { store, shop, setAside, held, mended, puttingBack, show };
  /** Takes back what the database has lost; whether there is a second copy. */
  const mend = async (isBroken: boolean): Promise<boolean> => (await mending()).mend(book, isBroken);

  /** An empty logbook may be a new one, or a lost one: the second copy says so, or is waited for no longer. */
  async function askOfNothing(isMended: Promise<boolean>): Promise<void> {
    puttingBack.value = 0;
    await Promise.race([isMended, pause(MENDED_BY_MS)]);
    if (puttingBack.value === 0) puttingBack.value = undefined;
  }

  async function openWhole(): Promise<Result<void, StorageFailure>> {
    let opened = await load(store.loadAll(knownNow()));
    const isBroken = !opened.ok && opened.failure.kind !== 'no-answer'; // then another tab may only hold it up
    const isMended = isWhole.value && !isBroken ? undefined : mend(isBroken).catch(() => false);
    if (shop.value.entries.size === 0 && isMended) sureOfNothing = askOfNothing(isMended);
    if (isBroken && (await isMended)) opened = succeed(undefined);
    if (opened.ok && !isWhole.value) void keepFirstPage().catch(() => undefined);
    void later().catch(() => undefined); // on the way before the first coat needs them
    isWhole.value = true; // or as whole as it can be: what failed is said
    return opened;
  }

  store.onLost(() => void inTurn(async () => (await mending()).keepAgain(book)).catch(() => undefined));
  store.onKeptElsewhere((ids) => void load(store.load(ids)));
  const append: Logbook['append'] = (body, atMs = now()) =>
    inTurn(async () => {
      await sureOfNothing;
      return appendNow(body, atMs);
    });
  return {
    shop,
    setAside,
    held,
    keepHeld,
    append,
    isWhole,
    mended,
    puttingBack,
    openFirst: () => load(store.loadFirst()),
    open: () => inTurn(openWhole),
    strike: (id) => append({ kind: 'struck', entry: id }),
    take: (brought) => inTurn(() => take(brought)),
  };
}

const pause = (ms: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, ms));

/** What cannot be read, each once, without what has come in a form that can. */
const unread = (some: readonly SetAside[], { entries }: Shop): SetAside[] =>
  [...new Map(some.map((one) => [one.key, one])).values()].filter(({ key }) => !entries.has(key));

/** The instant as an entry writes it; empty when it is none, for the schema to refuse. */
function toInstant(atMs: number): string {
  const date = new Date(atMs);
  return Number.isNaN(date.getTime()) ? '' : date.toISOString();
}
