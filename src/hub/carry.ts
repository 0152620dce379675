import { effect, type ReadonlySignal, signal } from '@preact/signals';
import { isId } from '../logbook/entry';
import type { Logbook } from '../logbook/logbook';
import type { SetAside } from '../logbook/storage/store';
import { MINUTE_MS } from '../units';
import { HubFailure, troubleOf } from './hub-failure';
import { type Connect, entrySubject, type HubLink, idOf, type Stored } from './hub-link';
import { type HubStatus, NOTHING_HEARD, waitingSince } from './hub-status';
import type { KnownThere } from './known-there';
import { type Brought, contentOf, openMessages } from './message';
import { type ShopKey, seal } from './seal';

/** Sent at once, so that a long logbook does not wait for each answer. */
const IN_FLIGHT = 64;
const FIRST_PAUSE_MS = 1_000;
const LONGEST_PAUSE_MS = 30_000;

/** A full hub, or a full phone, is tried again after this. */
const FULL_PAUSE_MS = MINUTE_MS;

export interface CarryNeeds {
  readonly book: Pick<Logbook, 'shop' | 'setAside' | 'take'>;
  readonly password: string;
  readonly shop: ShopKey;
  readonly connect: Connect;
  readonly known: KnownThere;
  readonly now: () => number;
  /** Carries what is no entry, beside the entries and never before them. */
  readonly alongside?: (link: HubLink, tell: (waiting: number) => void) => Promise<void>;
}

/** Carries entries between a logbook and the hub. */
export interface Carrier {
  readonly status: ReadonlySignal<HubStatus>;
  /** The line while it is open. */
  readonly link: ReadonlySignal<HubLink | undefined>;
  /** The page was woken, or the network is back: the line is tried at once. */
  wake(): void;
  /** Cuts the line; settles once nothing more is carried. */
  stop(): Promise<void>;
}

/**
 * Carries what the hub has into the logbook, the way of a backup, and what it has not out of it, until it is stopped. Logging never waits
 * for it. Whatever goes wrong cuts the line, and the next one begins with a look at what is there.
 */
export function carry({ book, password, shop, connect, known, now, alongside }: CarryNeeds): Carrier {
  const status = signal<HubStatus>(NOTHING_HEARD);
  const link = signal<HubLink | undefined>(undefined);
  let isOver = false;
  let pauseMs = FIRST_PAUSE_MS;
  let endPause = (): void => undefined;
  let change = gate();
  let sent = gate();
  /** Put out over this line, and yet to be read back. */
  let out = new Set<string>();

  const set = (patch: Partial<HubStatus>): void => {
    status.value = { ...status.peek(), ...patch };
  };

  /** What goes out under an id: the entries, and what cannot be read here but perhaps elsewhere. */
  function* all(): Generator<readonly [id: string, raw: unknown]> {
    yield* book.shop.peek().entries;
    for (const { key, raw } of outOf(book.setAside.peek())) yield [key, raw];
  }

  function* ids(): Generator<string> {
    for (const [id] of all()) yield id;
  }

  function tell(): void {
    const entries = book.shop.peek().entries.size + outOf(book.setAside.peek()).length;
    const there = Math.min(entries, known.entries);
    const since = () => status.peek().waitingSinceMs ?? waitingSince(ids(), known.has);
    const waitingSinceMs = there < entries ? since() : undefined;
    set({ entries, there, waitingSinceMs, foreign: known.foreign });
  }
  const hear = (): void => set({ heardMs: now() });

  async function takeIn(some: readonly Stored[]): Promise<void> {
    const ours = some.map(({ subject }) => idOf(subject)).filter((id) => out.has(id));
    const brought = await openMessages(
      shop.key,
      some.filter(({ subject }) => !out.has(idOf(subject))),
    );
    await take(brought);
    await known.note([...ours, ...brought.ids], brought.foreign, some.at(-1)?.seq ?? known.at);
    for (const id of ours) out.delete(id);
    set({ coming: Math.max(0, status.peek().coming - some.length) });
    hear();
    tell();
  }

  async function take(brought: Brought): Promise<void> {
    if (brought.entries.length + brought.setAside.length === 0) return;
    if (!(await book.take(brought)).ok) throw new HubFailure('this-phone-full');
  }

  async function putOut(open: HubLink, id: string, raw: unknown): Promise<void> {
    const subject = entrySubject(shop.name, id);
    out.add(id);
    const answer = await open.put(subject, await seal(shop.key, subject, contentOf(raw)));
    hear();
    if (answer === 'stored') return;
    // Stored before, and the answer was lost; or something of somebody else's lies there.
    const there = await openMessages(shop.key, [{ subject, body: answer }]);
    await take(there);
    await known.note([], there.foreign, known.at);
  }

  /** Everything that is not on the hub, a few at a time; some may be logged meanwhile. */
  async function sendAll(open: HubLink): Promise<void> {
    const some: (readonly [id: string, raw: unknown])[] = [];
    const sendSome = () => Promise.all(some.splice(0).map(([id, raw]) => putOut(open, id, raw)));
    for (const [id, raw] of all()) {
      if (known.has(id) || known.isForeign(id) || out.has(id)) continue;
      some.push([id, raw]);
      if (some.length === IN_FLIGHT) await sendSome();
    }
    await sendSome();
  }

  async function keepSending(open: HubLink): Promise<void> {
    while (link.peek() === open) {
      change = gate();
      await sendAll(open);
      sent.open();
      sent = gate();
      await change.passed;
    }
  }

  /** In a loop of its own: a coat does not wait for the photos of a month. */
  async function keepSendingAlongside(open: HubLink): Promise<void> {
    while (link.peek() === open) {
      const { passed } = sent;
      await alongside?.(open, (photosWaiting) => set({ photosWaiting }));
      await passed;
    }
  }

  /** One line from its opening until it is cut. */
  async function session(): Promise<void> {
    set({ line: 'opening' });
    const open = await connect({ password, shop: shop.name }, 'hold');
    try {
      out = new Set();
      sent = gate();
      const { since, count, last } = await open.look();
      const isSame = since === known.since && (last === known.at ? count === known.read : last > known.at);
      // The hub began anew or was put back from a copy, or this phone has lost entries: nothing is taken for granted.
      if (!isSame || !known.isWithin(new Set(ids()))) await known.forget(since);
      if (isOver) return; // stopped while it was being opened
      set({ line: 'open', trouble: undefined, coming: last - known.at });
      hear();
      tell();
      link.value = open;
      pauseMs = FIRST_PAUSE_MS;
      const caughtUp = gate();
      const reading = open.follow(known.at, async (some) => {
        await takeIn(some);
        if (known.at >= last) caughtUp.open();
      });
      if (known.at >= last) caughtUp.open();
      const sending = caughtUp.passed.then(() =>
        Promise.race([keepSending(open), keepSendingAlongside(open)]),
      );
      await Promise.race([reading, sending, open.cut]);
    } finally {
      link.value = undefined;
      await open.close();
      change.open();
      sent.open();
    }
  }

  async function run(): Promise<void> {
    while (!isOver) {
      await session().catch((error: unknown) => {
        const trouble = troubleOf(error);
        set({ trouble });
        if (trouble === 'full' || trouble === 'this-phone-full') pauseMs = FULL_PAUSE_MS;
      });
      set({ line: 'cut', trouble: status.peek().trouble ?? 'unreachable' });
      if (isOver) break;
      await new Promise<void>((resolve) => {
        endPause = resolve;
        setTimeout(resolve, pauseMs);
      });
      pauseMs = Math.min(2 * pauseMs, LONGEST_PAUSE_MS);
    }
  }

  const stopWatching = effect(() => {
    void [book.shop.value, book.setAside.value];
    tell();
    change.open();
  });
  const running = run();
  return {
    status,
    link,
    wake() {
      pauseMs = FIRST_PAUSE_MS;
      endPause();
      const open = link.peek();
      open?.isAlive().catch(() => open.close());
    },
    async stop() {
      isOver = true;
      stopWatching();
      endPause();
      await link.peek()?.close();
      await running;
    },
  };
}

/** What cannot be read here and has an id: it goes out, for a newer app. */
const outOf = (setAside: readonly SetAside[]): readonly SetAside[] =>
  setAside.filter(({ key, raw }) => isId(key) && raw !== undefined);

/** Something to be waited for. */
function gate() {
  let open = (): void => undefined;
  const passed = new Promise<void>((resolve) => {
    open = resolve;
  });
  return { passed, open };
}
