import type { CardReading, CardRequest } from '../card/card';
import type { CardForetold, CardPlanRequest } from '../card/foretell';
import type { Estimate, EstimateRequest } from '../estimate';

/** The part of a Worker that is needed here. */
export interface WorkerPort {
  postMessage(message: unknown): void;
  terminate(): void;
  onmessage: ((event: { readonly data: Answer }) => void) | null;
  onerror: ((event: { readonly message?: string }) => void) | null;
  onmessageerror: (() => void) | null;
}

/** What the worker answers. */
export type Answer =
  | { readonly ok: true; readonly estimate: Estimate }
  | { readonly ok: true; readonly reading: CardReading }
  | { readonly ok: true; readonly foretold: CardForetold }
  | { readonly ok: false; readonly why: 'too-thick' | 'unsolvable'; readonly message: string };

/** The estimate is no longer wanted. */
export class CancelledError extends Error {
  override name = 'CancelledError';
}

/** Why there is no estimate: too much to march, a stack that cannot be solved, a worker that is gone or does not answer. */
export type NoEstimate = Extract<Answer, { ok: false }>['why'] | 'lost';

/** The stack could not be worked out, or the worker was lost; the next request gets a new one. */
export class EstimatorError extends Error {
  override name = 'EstimatorError';
  readonly why: NoEstimate;
  constructor(message: string, why: NoEstimate = 'lost') {
    super(message);
    this.why = why;
  }
}

/** Calls back every few seconds until it is told to stop. */
export type LookEvery = (look: () => void) => () => void;

/** A worker that was silent for so many looks is ended: a page that slept looks once on waking. */
const MOST_LOOKS = 15;

export interface Estimator {
  estimate(request: EstimateRequest): Asked<Estimate>;
  /** What the weighings of a test card say. */
  weigh(request: CardRequest): Asked<CardReading>;
  /** What a test card that is yet to be made can tell. */
  foretell(request: CardPlanRequest): Asked<CardForetold>;
}

/** An answer that is on its way. */
interface Asked<Value> {
  readonly result: Promise<Value>;
  cancel(): void;
}
type Done = Extract<Answer, { ok: true }>;

interface Job {
  readonly request: EstimateRequest | CardRequest | CardPlanRequest;
  readonly resolve: (done: Done) => void;
  readonly reject: (reason: Error) => void;
}

/**
 * Runs estimates off the main thread, one at a time, in the order asked for. Every promise settles: with the estimate, or
 * because the stack could not be worked out, it was cancelled, or the worker was lost. A running job can only be stopped by
 * ending its worker, so that is what cancelling does; one that still waits is dropped. A worker that does not answer is ended.
 */
export function createEstimator(
  startWorker: () => WorkerPort,
  lookEvery: LookEvery = () => () => {},
): Estimator {
  const waiting: Job[] = [];
  let stopLooking: (() => void) | undefined;
  let worker: WorkerPort | undefined;
  let running: Job | undefined;

  function settle(how: (job: Job) => void): void {
    const job = running;
    running = undefined;
    stopLooking?.();
    if (job) how(job);
    runNext();
  }

  function loseWorker(reason: Error): void {
    worker?.terminate();
    worker = undefined;
    settle((job) => job.reject(reason));
  }

  function runNext(): void {
    if (running) return;
    running = waiting.shift();
    if (!running) return;
    try {
      worker ??= listenTo(startWorker());
      worker.postMessage(running.request);
      watchOver();
    } catch (error) {
      loseWorker(new EstimatorError(error instanceof Error ? error.message : String(error)));
    }
  }

  function watchOver(): void {
    let looks = 0;
    stopLooking = lookEvery(() => {
      if (++looks >= MOST_LOOKS) loseWorker(new EstimatorError('The worker does not answer.'));
    });
  }

  function listenTo(started: WorkerPort): WorkerPort {
    started.onmessage = ({ data }) =>
      settle((job) => (data.ok ? job.resolve(data) : job.reject(new EstimatorError(data.message, data.why))));
    started.onerror = ({ message }) => loseWorker(new EstimatorError(message || 'The worker did not load.'));
    started.onmessageerror = () => loseWorker(new EstimatorError('The answer could not be read.'));
    return started;
  }

  function ask<Value>(request: Job['request'], of: (done: Done) => Value | undefined): Asked<Value> {
    let job: Job | undefined;
    const answered = new Promise<Done>((resolve, reject) => {
      job = { request, resolve, reject };
      waiting.push(job);
      runNext();
    });
    return {
      result: answered.then((done) => {
        const value = of(done);
        if (value === undefined) throw new EstimatorError('The worker answered something else.');
        return value;
      }),
      cancel() {
        if (job === running) loseWorker(new CancelledError('Cancelled.'));
        const place = waiting.indexOf(job as Job);
        if (place >= 0) waiting.splice(place, 1)[0]?.reject(new CancelledError('Cancelled.'));
      },
    };
  }

  return {
    estimate: (request) => ask(request, (done) => ('estimate' in done ? done.estimate : undefined)),
    weigh: (request) => ask(request, (done) => ('reading' in done ? done.reading : undefined)),
    foretell: (request) => ask(request, (done) => ('foretold' in done ? done.foretold : undefined)),
  };
}
