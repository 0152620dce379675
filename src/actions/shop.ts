import { type ReadonlySignal, signal } from '@preact/signals';
import type { Shop } from '../logbook/fold/fold';
import { createLogbook } from '../logbook/logbook';
import { newId } from '../logbook/new-id';
import type { StorageFailure } from '../logbook/storage-failure';
import { openStore, type SetAside } from '../logbook/store';
import type { Result } from '../result';
import { type Actions, bindActions } from './bind';
import { leaveDemo } from './leave-demo';
import type { ActionNeeds } from './log';
import type { Outlook, PieceId } from './outlook';
import type { Refused } from './refused';

export type { Actions } from './bind';
export type { Outlook, PieceId } from './outlook';
export type { Refused } from './refused';

export type WhichShop = 'own' | 'demo';

/** What opening a shop takes from the world; tests bring their own. */
export interface ShopNeeds extends Omit<ActionNeeds, 'logbook'> {
  /** Calls back every so many milliseconds until the function it gives is called. */
  readonly every: (periodMs: number, job: () => void) => () => void;
}

/** A shop as the screens see it: what is so, what is expected, and what can be done. */
export interface OpenShop {
  readonly which: WhichShop;
  readonly shop: ReadonlySignal<Shop>;
  /** What is kept but cannot be read, named. */
  readonly setAside: ReadonlySignal<readonly SetAside[]>;
  /** Why the logbook could not be read; undefined when it could. */
  readonly failure: ReadonlySignal<StorageFailure | undefined>;
  /** The clock, moved on every 20 s. */
  readonly nowMs: ReadonlySignal<number>;
  /** By piece; worked out again whenever an entry changes one. */
  readonly outlooks: ReadonlySignal<ReadonlyMap<PieceId, Outlook>>;
  readonly actions: Actions;
  /** For actions of other places, which bind themselves. */
  readonly needs: ActionNeeds;
  /** Says which piece is looked at, so that it is worked out first. */
  look(piece: PieceId | undefined): void;
  /** Reads the logbook again, as after a failure or a long sleep. */
  reopen(): Promise<void>;
  /** Takes the demo shop's content away and closes it; the own shop is only closed. */
  leave(): Promise<Result<void, Refused>>;
  /** Stops the clock, the worker and the listening to other tabs. */
  close(): void;
}

const TICK_MS = 20_000;

/** Opens the own shop, or the demo shop with its invented pieces. */
export async function openShop(which: WhichShop, given: Partial<ShopNeeds> = {}): Promise<OpenShop> {
  const base = { ...theWorld(which), ...given };
  const needs: ActionNeeds = { ...base, logbook: createLogbook(base) };
  const failure = signal<StorageFailure | undefined>(undefined);
  const nowMs = signal(base.now());
  const outlooks = signal<ReadonlyMap<PieceId, Outlook>>(new Map());
  const reopen = async (): Promise<void> => {
    const opened = await needs.logbook.open();
    failure.value = opened.ok ? undefined : opened.failure;
  };
  await reopen();
  const stopClock = base.every(TICK_MS, () => {
    nowMs.value = base.now();
  });
  const close = (): void => {
    stopClock();
    base.store.close();
  };
  return {
    which,
    shop: needs.logbook.shop,
    setAside: needs.logbook.setAside,
    failure,
    nowMs,
    outlooks,
    actions: bindActions(needs),
    needs,
    look: () => {},
    reopen,
    async leave() {
      close();
      return leaveDemo(needs);
    },
    close,
  };
}

const theWorld = (which: WhichShop): ShopNeeds => ({
  store: openStore(which === 'demo' ? 'coatwait-demo' : 'coatwait'),
  now: () => Date.now(),
  zone: () => Intl.DateTimeFormat().resolvedOptions().timeZone,
  newId,
  every(periodMs, job) {
    const timer = setInterval(job, periodMs);
    return () => clearInterval(timer);
  },
});
