import { expect, test } from 'vitest';
import type { EstimateRequest } from '../../src/estimator/estimate';
import { answer } from '../../src/estimator/run/answer';
import {
  CancelledError,
  createEstimator,
  EstimatorError,
  type WorkerPort,
} from '../../src/estimator/run/client';
import { HOUR_S, stack } from './stacks';

const history = stack({ coats: 1 });
const REQUEST: EstimateRequest = { history, nowS: HOUR_S, checks: [], whatIf: [] };

/** A worker in the same thread: what crosses is cloned as it would be, and the real handler answers a turn later. */
function startWorker(
  handle: (port: WorkerPort, message: unknown) => void,
): WorkerPort & { isEnded: boolean } {
  const port = {
    isEnded: false,
    onmessage: null,
    onerror: null,
    onmessageerror: null,
    postMessage(message: unknown) {
      const crossed = structuredClone(message);
      setTimeout(() => port.isEnded || handle(port, crossed));
    },
    terminate() {
      port.isEnded = true;
    },
  } as WorkerPort & { isEnded: boolean };
  return port;
}

const really = (port: WorkerPort, message: unknown) =>
  port.onmessage?.({ data: structuredClone(answer(message as EstimateRequest)) });

test('an estimate crosses the wall and comes back', async () => {
  const { result } = createEstimator(() => startWorker(really)).estimate(REQUEST);
  expect((await result).milestones.recoat.likelyS).toBeGreaterThan(0);
});

test('a stack that cannot be worked out is refused with its reason, and the next one is done', async () => {
  const estimator = createEstimator(() => startWorker(really));
  const empty = { ...REQUEST, history: { ...REQUEST.history, events: [] } };
  const [refused, done] = [estimator.estimate(empty), estimator.estimate(REQUEST)];
  await expect(refused.result).rejects.toThrow('no coat');
  expect((await done.result).profiles.length).toBeGreaterThan(0);
});

test('a worker that does not answer is ended, and the next request gets a new one', async () => {
  const looks: (() => void)[] = [];
  const started: { isEnded: boolean }[] = [];
  const estimator = createEstimator(
    () => {
      const port = startWorker(started.length === 0 ? () => undefined : really);
      started.push(port);
      return port;
    },
    (look) => {
      looks.push(look);
      return () => looks.splice(0);
    },
  );
  const [silent, next] = [estimator.estimate(REQUEST), estimator.estimate(REQUEST)];
  looks[0]?.();
  expect(started[0]?.isEnded).toBe(false); // a page that slept looks once on waking
  for (let k = 0; k < 20; k++) looks[0]?.();
  await expect(silent.result).rejects.toThrow('does not answer');
  expect(started[0]?.isEnded).toBe(true);
  await next.result;
  expect(looks).toHaveLength(0);
});

test('a worker that does not load is told of, and the next request gets a new one', async () => {
  let starts = 0;
  const estimator = createEstimator(() =>
    startWorker(starts++ === 0 ? (port) => port.onerror?.({ message: 'gone' }) : really),
  );
  await expect(estimator.estimate(REQUEST).result).rejects.toThrow(EstimatorError);
  await estimator.estimate(REQUEST).result;
  expect(starts).toBe(2);
});

test.each([
  { why: 'does not load, without a word', does: (port) => port.onerror?.({}), says: 'did not load' },
  { why: 'answers what cannot be read', does: (port) => port.onmessageerror?.(), says: 'could not be read' },
] satisfies { why: string; does: (port: WorkerPort) => void; says: string }[])(
  'a worker that $why is ended and told of',
  async ({ does, says }) => {
    const started: { isEnded: boolean }[] = [];
    const estimator = createEstimator(() => {
      const port = startWorker(started.length === 0 ? does : really);
      started.push(port);
      return port;
    });
    const { result } = estimator.estimate(REQUEST);
    await expect(result).rejects.toThrow(says);
    await expect(result).rejects.toMatchObject({ why: 'lost' });
    expect(started[0]?.isEnded).toBe(true);
    await estimator.estimate(REQUEST).result;
  },
);

test('where no worker can be started, that is said, and so is an answer to another question', async () => {
  const none = createEstimator(() => {
    throw new Error('no workers here');
  });
  await expect(none.estimate(REQUEST).result).rejects.toThrow('no workers here');
  const other = createEstimator(() => startWorker(really));
  await expect(other.weigh(REQUEST as never).result).rejects.toThrow('something else');
});

test('a card and a plan of one cross the wall as an estimate does', async () => {
  const { weigh, foretell } = createEstimator(() => startWorker(really));
  const plan = { history, areaM2: 0.02, divisionKg: 1e-6 };
  const foretold = await foretell({ plan }).result;
  expect(foretold.plain).toBeLessThan(foretold.prior);
  const read = await weigh({ card: { ...plan, bareKg: 1e-3, weighings: [], lookAtS: [HOUR_S] } }).result;
  expect(read.expected.map(({ atS }) => atS)).toEqual([HOUR_S]);
  await expect(weigh({ card: { ...plan, bareKg: Number.NaN, weighings: [] } }).result).rejects.toMatchObject({
    message: 'No number: request.card.bareKg',
    why: 'unsolvable',
  });
});

test('cancelling ends the running one and drops the waiting one; the others are done', async () => {
  let starts = 0;
  const estimator = createEstimator(() => {
    starts++;
    return startWorker(really);
  });
  const [running, waiting, kept] = [1, 2, 3].map(() => estimator.estimate(REQUEST)) as [
    ReturnType<typeof estimator.estimate>,
    ReturnType<typeof estimator.estimate>,
    ReturnType<typeof estimator.estimate>,
  ];
  waiting.cancel();
  running.cancel();
  await expect(running.result).rejects.toThrow(CancelledError);
  await expect(waiting.result).rejects.toThrow(CancelledError);
  await kept.result;
  expect(starts).toBe(2);
  kept.cancel(); // after the answer: ends nothing
  await estimator.estimate(REQUEST).result;
  expect(starts).toBe(2);
});
