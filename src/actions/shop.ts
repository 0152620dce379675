import { type ReadonlySignal, type Signal, signal } from '@preact/signals';
import type { Estimator, WorkerPort } from '../estimator/run/client';
import type { Shop } from '../logbook/fold/fold';
import { newId } from '../logbook/ids/new-id';
import { createLogbook, type Held } from '../logbook/logbook';
import type { Mending } from '../logbook/mend';
import type { StorageFailure } from '../logbook/storage/storage-failure';
import { openStore, type SetAside } from '../logbook/storage/store';
import { type Result, succeed } from '../result';
import type { Standing } from '../verdicts/standing';
import { MODEL_STOPPED } from '../words/common';
import { afterPaint } from './after-paint';
import { type Actions, bindActions, fetchActions } from './bind';
import type { ActionNeeds } from './log';
import type { CardOutlooks } from './outlook/card-outlook';
import type { Outlook, PieceId } from './outlook/outlook';
import type { Outlooks } from './outlook/outlooks';
import { type Settled, settle } from './outlook/settled';
import type { Refused } from './refused';
import { keptStandings } from './verdicts/kept-standings';
import type { WhichShop } from './which-shop';

export type { Actions } from './bind';
export type { Outlook, PieceId } from './outlook/outlook';
export type { Refused } from './refused';

export type { WhichShop } from './which-shop';

/** What opening a shop takes from the world; tests bring their own. */
export interface ShopNeeds extends Omit<ActionNeeds, 'logbook'> {
  /** Calls back every so many milliseconds until the function it gives is called. */
  readonly every: (periodMs: number, job: () => void) => () => void;
  /** Calls back when the page comes back from sleep, until the function it gives is called. */
  readonly onWake: (job: () => void) => () => void;
  readonly startWorker: () => WorkerPort;
  /** How long the entries must rest before a piece is worked out anew. */
  readonly restMs: number;
  /** Calls back once the screen has been drawn. */
  readonly afterPaint: (job: () => void) => void;
  /** Calls back before the screen is drawn next. */
  readonly beforeDrawing: (job: () => void) => void;
}

/** A shop as the screens see it: what is so, what is expected, and what can be done. */
export interface OpenShop {
  readonly which: WhichShop;
  readonly shop: ReadonlySignal<Shop>;
  /** What is kept but cannot be read, named. */
  readonly setAside: ReadonlySignal<readonly SetAside[]>;
  /** Why the logbook could not be read; undefined when it could. */
  readonly failure: ReadonlySignal<StorageFailure | undefined>;
  /** Whether everything kept has been read; the bench, a piece and the next coat need not wait for it. */
  readonly isWhole: ReadonlySignal<boolean>;
  /** What the second copy has brought back, and how much it holds; undefined until it was asked. */
  readonly mended: ReadonlySignal<Mending | undefined>;
  /** How many entries are being put back; 0 while an empty logbook asks the second copy. */
  readonly puttingBack: ReadonlySignal<number | undefined>;
  /** What this device would not keep: in memory only. */
  readonly held: ReadonlySignal<Held | undefined>;
  /** The clock, moved on every 20 s. */
  readonly nowMs: ReadonlySignal<number>;
  /** By piece; worked out again whenever an entry changes one. */
  readonly outlooks: ReadonlySignal<ReadonlyMap<PieceId, Outlook>>;
  /** What the test cards say, by card; worked out with the outlooks. */
  readonly cards: ReadonlySignal<CardOutlooks>;
  /** By piece, by the judge: what comes next and whether it may be done. Empty until the judge has come, behind the first screen. */
  readonly standings: ReadonlySignal<ReadonlyMap<PieceId, Standing>>;
  /** Both, a moment behind: for what follows from them and may come after the screen. */
  readonly settled: ReadonlySignal<Settled>;
  readonly actions: Actions;
  /** For actions of other places, which bind themselves. */
  readonly needs: ActionNeeds;
  /** For what-ifs of other places; its code comes after the first screen. */
  readonly estimator: Promise<Estimator>;
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
const REST_MS = 150;

/** Opens the own shop, or the demo shop with its invented pieces. */
export async function openShop(
  which: WhichShop,
  given: Pick<ShopNeeds, 'beforeDrawing'> & Partial<ShopNeeds>,
): Promise<OpenShop> {
  const world: ShopNeeds = { ...THE_WORLD, ...given, store: given.store ?? openStore(NAMES[which]) };
  const needs: ActionNeeds = { ...world, logbook: createLogbook(world) };
  const { shop, setAside, held, mended, puttingBack, isWhole, openFirst, open, keepHeld } = needs.logbook;
  const failure = signal<StorageFailure | undefined>(undefined);
  const reopen = async (): Promise<void> => {
    const opened = await open();
    failure.value = opened.ok ? undefined : opened.failure;
    if (opened.ok) await keepHeld();
  };
  await openFirst();
  const whole = reopen();
  if (shop.value.entries.size === 0) await whole;
  if (which === 'demo' && !failure.value && shop.value.entries.size === 0)
    failure.value = await (await import('./keep/fill-demo')).fillDemo(needs);
  const { nowMs, stopClock } = startClock(world, reopen, shop);
  const followed = follow(which, shop, nowMs, world, whole);
  const { outlooks, cards, standings, estimator, look, stopFollowing } = followed;
  // A first frame may say only that it is logged: the page that this leads to is waited for.
  const { beforeDrawing } = world;
  const afterPaint = (job: () => void) => beforeDrawing(() => world.afterPaint(() => beforeDrawing(job)));
  const { settled, stopSettling } = settle({ shop, outlooks, afterPaint });
  const close = (): void => {
    stopClock();
    stopFollowing();
    stopSettling();
    world.store.close();
  };
  const leave = async () => {
    close();
    return which === 'demo' ? (await import('./keep/leave-demo')).leaveDemo(needs) : succeed(undefined);
  };
  whole.then(fetchActions).catch(() => undefined); // the first tap tries again
  const actions = bindActions(needs);
  const known = { isWhole, failure, nowMs, outlooks, cards, standings, settled, estimator };
  const seen = { which, shop, setAside, held, mended, puttingBack, ...known };
  return { ...seen, actions, needs, look, reopen, leave, close };
}

/** The clock of the screens; what was just logged is never in its future. */
function startClock(
  { now, every, onWake }: ShopNeeds,
  reopen: () => Promise<void>,
  shop: ReadonlySignal<Shop>,
) {
  const nowMs = signal(now());
  const tick = () => {
    nowMs.value = now();
  };
  const stopTicking = every(TICK_MS, tick);
  const stopListening = shop.subscribe(tick);
  const stopWaking = onWake(() => {
    tick();
    void reopen();
  });
  const stopClock = (): void => {
    stopTicking();
    stopListening();
    stopWaking();
  };
  return { nowMs, stopClock };
}

/** Follows the outlooks of the whole shop, which learn from all that was ever checked, with code that comes after the first screen. */
function follow(
  which: WhichShop,
  shop: ReadonlySignal<Shop>,
  nowMs: ReadonlySignal<number>,
  { startWorker, restMs, beforeDrawing }: ShopNeeds,
  whole: Promise<void>,
) {
  const kept = keptStandings(which, shop.value, nowMs.value);
  const outlooks: Signal<ReadonlyMap<PieceId, Outlook>> = signal(kept.outlooks);
  const cards: Signal<CardOutlooks> = signal(new Map());
  const following = whole
    .then(() => import('./outlook/outlooks'))
    .then(({ followOutlooks }) =>
      followOutlooks({ shop, nowMs, outlooks, cards, startWorker, restMs, beforeDrawing }),
    );
  const estimator = following.then((followed) => followed.estimator);
  estimator.catch(() => {
    const failed = { state: 'failed', message: MODEL_STOPPED } as const;
    outlooks.value = new Map([...shop.value.pieces.keys()].map((id) => [id, failed]));
  });
  const once = (job: (followed: Outlooks) => void) => void following.then(job, () => undefined);
  const standings: Signal<ReadonlyMap<PieceId, Standing>> = signal(kept.standings);
  const judging = import('./verdicts/follow-standings').then(({ followStandings }) =>
    followStandings({ which, shop, outlooks, nowMs, standings, beforeDrawing }),
  );
  return {
    outlooks,
    cards,
    standings,
    estimator,
    look: (piece: PieceId | undefined) => once((followed) => followed.look(piece)),
    stopFollowing() {
      once((followed) => followed.close());
      judging.then(
        (stop) => stop(),
        () => undefined,
      );
    },
  };
}

const NAMES = { own: 'coatwait', demo: 'coatwait-demo' } as const;

const THE_WORLD: Omit<ShopNeeds, 'store' | 'beforeDrawing'> = {
  now: () => Date.now(),
  zone: zoneNow,
  newId,
  every(periodMs, job) {
    const timer = setInterval(job, periodMs);
    return () => clearInterval(timer);
  },
  onWake(job) {
    const wake = () => document.visibilityState === 'visible' && job();
    document.addEventListener('visibilitychange', wake);
    return () => document.removeEventListener('visibilitychange', wake);
  },
  startWorker: () =>
    new Worker(new URL('../estimator/run/estimator.worker.ts', import.meta.url), {
      type: 'module',
    }) as WorkerPort,
  restMs: REST_MS,
  afterPaint,
};

let zoneSeen = { zone: '', atMs: Number.NEGATIVE_INFINITY };

/** The zone of the phone; asking takes milliseconds, so it is asked once a tick. */
function zoneNow(): string {
  if (Math.abs(Date.now() - zoneSeen.atMs) > TICK_MS)
    zoneSeen = { zone: Intl.DateTimeFormat().resolvedOptions().timeZone, atMs: Date.now() };
  return zoneSeen.zone;
}
