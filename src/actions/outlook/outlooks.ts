import type { ReadonlySignal, Signal } from '@preact/signals';
import type { Estimate } from '../../estimator/estimate';
import { createEstimator, type Estimator, EstimatorError, type WorkerPort } from '../../estimator/run/client';
import type { Shop } from '../../logbook/fold/fold';
import { standById } from '../../shop/zone/stands';
import { NO_OUTLOOK_WORDS } from '../../words/frame/actions';
import { anew } from './anew';
import { published } from './awaited';
import type { CardOutlooks } from './card-outlook';
import { followCards } from './follow-cards';
import { lawOutlook } from './law-outlook';
import { taughtTo } from './learn/taught';
import type { Outlook, PieceId } from './outlook';
import { requestFor } from './request';
import { firstOf, isWorked, review, type Worked } from './review';
import { movedToSheet } from './to-sheet';

export interface OutlooksNeeds {
  readonly shop: ReadonlySignal<Shop>;
  readonly nowMs: ReadonlySignal<number>;
  /** Where the outlooks are shown. */
  readonly outlooks: Signal<ReadonlyMap<PieceId, Outlook>>;
  readonly startWorker: () => WorkerPort;
  /** Where what the test cards say is shown. */
  readonly cards: Signal<CardOutlooks>;
  /** How long the entries must rest before a piece is worked out anew. */
  readonly restMs: number;
  /** Calls back before the screen is drawn next. */
  readonly beforeDrawing: (job: () => void) => void;
}

export interface Outlooks {
  readonly estimator: Estimator;
  /** Says which piece is on screen: it goes first, even when it is closed. */
  look(piece: PieceId | undefined): void;
  close(): void;
}

/** The worker was ended in mid-work, by the phone or for its silence: that says nothing of the piece. */
const LOST: Outlook = { state: 'failed', message: NO_OUTLOOK_WORDS.lost };

interface Job extends Worked {
  readonly piece: PieceId;
  readonly cancel: () => void;
}

const everyTwoSeconds = (look: () => void) => {
  const timer = setInterval(look, 2000);
  return () => clearInterval(timer);
};

/** Keeps an outlook for every piece on the bench, worked out again when an entry changes it, one piece at a time. */
export function followOutlooks({
  shop,
  nowMs,
  outlooks,
  cards,
  startWorker,
  restMs,
  beforeDrawing,
}: OutlooksNeeds): Outlooks {
  const estimator = createEstimator(startWorker, everyTwoSeconds);
  const worked = new Map<PieceId, Worked>();
  let wanted: ReadonlyMap<PieceId, string> = new Map();
  const failed = new Set<PieceId>();
  const lost = new Map<PieceId, string>(); // the inputs that a worker was lost over; it gets one more
  let running: Job | undefined;
  let looked: PieceId | undefined;
  let own = outlooks.peek(); // what was kept stands until it is worked out again
  let rest: ReturnType<typeof setTimeout> | undefined;
  const reviewCards = followCards({
    shop,
    nowMs,
    cards,
    estimator,
    onRead: () => {
      reviewAll();
      workAfter(0);
    },
  });

  function reviewAll(): void {
    const now = { shop: shop.value, nowMs: nowMs.value, outlooks: own, cards: cards.value, worked, looked };
    ({ wanted, outlooks: own } = review(now));
    for (const id of worked.keys()) if (!isWorked(own.get(id))) worked.delete(id); // a coat that is gone may come back
    outlooks.value = published(shop.value, own);
    if (running && wanted.get(running.piece) !== running.inputs) stop();
  }

  function stop(): void {
    running?.cancel();
    running = undefined;
  }

  function workNext(): void {
    const piece = running ? undefined : firstOf(wanted, { shop: shop.value, looked, worked, failed });
    if (piece === undefined) return;
    const from = { inputs: wanted.get(piece) ?? '', atMs: nowMs.value };
    work(piece, from).catch(() => finish(piece, from, LOST));
  }

  async function work(id: PieceId, from: Worked): Promise<void> {
    const stand = standById(id, shop.value);
    if (!stand) return;
    const { piece } = stand;
    const taught = taughtTo(stand, { shop: shop.value, outlooks: own, cards: cards.value });
    const byLaw = lawOutlook(piece, shop.value, from.atMs, taught.law);
    if (byLaw) return finish(id, from, byLaw);
    const asked = requestFor(piece, shop.value, from.atMs, taught.diffusivity);
    if (!asked.ok)
      return finish(id, from, { state: 'failed', message: NO_OUTLOOK_WORDS[asked.failure.kind] });
    const { result, cancel } = estimator.estimate({ ...asked.value.request, stack: id });
    const job: Job = { ...from, piece: id, cancel };
    running = job;
    const { request, startMs } = asked.value;
    const onSheet = result.then((estimate) => movedToSheet(estimate, request, piece, shop.value, estimator));
    const outlook = await answerOf(onSheet, startMs);
    await new Promise<void>(beforeDrawing); // never between a tap and what it says
    if (running !== job) return; // an entry has made it worthless meanwhile
    running = undefined;
    finish(id, from, outlook);
  }

  function finish(id: PieceId, from: Worked, outlook: Outlook): void {
    const isTriedAgain = outlook === LOST && lost.get(id) !== from.inputs;
    if (outlook === LOST) lost.set(id, from.inputs);
    if (!isTriedAgain) {
      worked.set(id, from);
      own = new Map(own).set(id, outlook);
    }
    if (outlook.state === 'failed') failed.add(id);
    else failed.delete(id);
    reviewAll();
    workAfter(0); // the screen draws this one first
  }

  function workAfter(ms: number): void {
    clearTimeout(rest);
    rest = setTimeout(() => beforeDrawing(workNext), ms);
  }

  const stopFollowing = anew({
    goBy() {
      shop.value;
      nowMs.value;
    },
    job() {
      reviewCards();
      reviewAll();
      workAfter(restMs);
    },
    beforeDrawing,
  });

  return {
    estimator,
    look(piece) {
      looked = piece;
      reviewAll();
      workNext();
    },
    close() {
      stopFollowing();
      clearTimeout(rest);
      wanted = new Map();
      stop();
    },
  };
}

async function answerOf(result: Promise<Estimate>, startMs: number): Promise<Outlook> {
  try {
    return { state: 'ready', estimate: await result, startMs, stale: false };
  } catch (error) {
    const why = error instanceof EstimatorError ? error.why : 'lost';
    return why === 'lost' ? LOST : { state: 'failed', message: NO_OUTLOOK_WORDS[why] };
  }
}
