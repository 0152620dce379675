import { signal } from '@preact/signals';
import { afterEach, beforeEach, describe, expect, onTestFinished, test, vi } from 'vitest';
import type { CardOutlooks } from '../../../src/actions/outlook/card-outlook';
import type { Outlook } from '../../../src/actions/outlook/outlook';
import { followOutlooks } from '../../../src/actions/outlook/outlooks';
import type { EstimateRequest } from '../../../src/estimator/estimate';
import { MILESTONES } from '../../../src/estimator/estimate';
import type { WorkerPort } from '../../../src/estimator/run/client';
import type { Entry, EntryBody } from '../../../src/logbook/entry';
import { fold } from '../../../src/logbook/fold/fold';
import { DAY_1_MS, entry, fillJar, id, layCoat, PIECE, startPiece, strike } from '../../logbook/entries';

const REST_MS = 150;
const TRAY = id(0xa2);
beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

/** A shop whose worker answers when it is told. */
function following(...bodies: readonly EntryBody[]) {
  const entries: Entry[] = [startPiece(), fillJar(), ...bodies].map((body, n) =>
    entry(n + 1, body, DAY_1_MS),
  );
  const shop = signal(fold(entries));
  const nowMs = signal(DAY_1_MS + 3_600_000);
  const outlooks = signal<ReadonlyMap<string, Outlook>>(new Map());
  const cards = signal<CardOutlooks>(new Map());
  const asked: EstimateRequest[] = [];
  const port: WorkerPort = {
    postMessage: (message) => void asked.push(message as EstimateRequest),
    terminate: () => undefined,
    onmessage: null,
    onerror: null,
    onmessageerror: null,
  };
  const followed = followOutlooks({
    shop,
    nowMs,
    outlooks,
    cards,
    startWorker: () => port,
    restMs: REST_MS,
    beforeDrawing: (job) => job(),
  });
  onTestFinished(() => followed.close());
  const answer = async (): Promise<void> => {
    const milestones = Object.fromEntries(
      MILESTONES.map((name) => [name, { earliestS: 0, likelyS: 0, lateS: 0 }]),
    );
    const { id: of } = asked.at(-1) as unknown as { id: unknown };
    port.onmessage?.({
      data: { id: of, ok: true, estimate: { milestones, learned: [], profiles: [] } },
    } as never);
    await vi.advanceTimersByTimeAsync(0);
  };
  const log = (body: EntryBody): void => {
    entries.push(entry(entries.length + 1, body, DAY_1_MS + entries.length));
    shop.value = fold(entries);
  };
  const state = (piece = PIECE) => outlooks.value.get(piece)?.state;
  return { ...followed, asked, answer, log, state };
}

describe('what is worked out', () => {
  test('waits until the entries rest, each of them beginning the rest anew', () => {
    const { asked, log } = following(layCoat());
    vi.advanceTimersByTime(REST_MS - 1);
    log(layCoat());
    vi.advanceTimersByTime(REST_MS - 1);
    expect(asked).toHaveLength(0);
    vi.advanceTimersByTime(1);
    expect(asked).toHaveLength(1);
  });

  test('is begun at once for the piece that is looked at', () => {
    const { asked, look } = following(layCoat(), startPiece(TRAY), layCoat(TRAY));
    look(PIECE);
    expect(asked.map(({ stack }) => stack)).toEqual([PIECE]);
    look(undefined);
    expect(asked).toHaveLength(1); // one at a time
  });

  test('is nothing any more once it is closed, nor what was waited for', () => {
    const resting = following(layCoat());
    resting.close();
    vi.advanceTimersByTime(10 * REST_MS);
    expect(resting.asked).toHaveLength(0);
    const asking = following(layCoat());
    vi.advanceTimersByTime(REST_MS);
    asking.close();
    asking.log(layCoat());
    asking.look(PIECE);
    vi.advanceTimersByTime(10 * REST_MS);
    expect(asking.state()).toBe('computing');
  });

  test('is left where an entry changes it meanwhile, and begun anew once the entries rest', async () => {
    const { asked, log } = following(layCoat());
    vi.advanceTimersByTime(REST_MS);
    log(layCoat());
    await vi.advanceTimersByTimeAsync(REST_MS - 1);
    expect(asked).toHaveLength(1);
    await vi.advanceTimersByTimeAsync(1);
    expect(asked).toHaveLength(2);
  });

  test('of a coat that is undone meanwhile is left, and nothing comes of it', async () => {
    const { asked, log, state, answer } = following(layCoat());
    vi.advanceTimersByTime(REST_MS);
    expect([asked.length, state()]).toEqual([1, 'computing']);
    log(strike(id(3)));
    expect(state()).toBe('no-coats');
    await answer();
    await vi.advanceTimersByTimeAsync(REST_MS);
    expect(state()).toBe('no-coats');
    expect(asked).toHaveLength(1);
  });
});
