import 'fake-indexeddb/auto';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { openShop } from '../../src/actions/shop';
import type { Store } from '../../src/logbook/storage/store';
import { MODEL_STOPPED } from '../../src/words/common';
import { aShop, done, NOW_MS, newName, storeOn } from './a-shop';

/** The code that works estimates out, which may not have come: the phone is offline and was never whole. */
const chunk = vi.hoisted(() => ({ isMissing: false }));
vi.mock('../../src/actions/outlook/outlooks', async (original) => {
  const real = await original<typeof import('../../src/actions/outlook/outlooks')>();
  const followOutlooks: typeof real.followOutlooks = (needs) => {
    if (chunk.isMissing) throw new Error('The chunk could not be fetched.');
    return real.followOutlooks(needs);
  };
  return { ...real, followOutlooks };
});
await import('../../src/actions/outlook/outlooks'); // two shops that fetch it at once for the first time would not both get this one

beforeEach(() => {
  chunk.isMissing = false;
});
afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

/** A store that reads all only when it is let. */
function slowStore(store: Store) {
  let letRead = (): void => undefined;
  const isLet = new Promise<void>((resolve) => {
    letRead = resolve;
  });
  return { store: { ...store, loadAll: () => isLet.then(() => store.loadAll()) }, letRead };
}

describe('a shop that is opened', () => {
  test('shows its first page before the rest is read; an empty one waits for it', async () => {
    const name = newName();
    const first = await aShop({ store: storeOn(name) });
    done(await first.actions.startPiece({ name: 'Box', base: 'sealed' }, NOW_MS));
    first.close();
    const empty = slowStore(storeOn(newName()));
    let isOpen = false;
    const opening = aShop({ store: empty.store }).then((open) => {
      isOpen = true;
      return open;
    });
    await new Promise((resolve) => setTimeout(resolve, 50));
    expect(isOpen).toBe(false);
    empty.letRead();
    expect((await opening).isWhole.value).toBe(true);
  });

  test('keeps what the device would not keep, as soon as it will', async () => {
    const store = storeOn(newName());
    let isFull = true;
    const flaky: Store = {
      ...store,
      keep: async (...rows) => (isFull ? { ok: false, failure: { kind: 'full' } } : store.keep(...rows)),
    };
    const open = await aShop({ store: flaky });
    await open.actions.startPiece({ name: 'Box', base: 'sealed' });
    expect(open.held.value).toBeDefined();
    isFull = false;
    await open.reopen();
    expect(open.held.value).toBeUndefined();
  });

  test('is no demo: an empty own shop stays empty, and is left as it is', async () => {
    const name = newName();
    const open = await aShop({ store: storeOn(name) });
    expect(open.shop.value.entries.size).toBe(0);
    done(await open.actions.startPiece({ name: 'Box', base: 'sealed' }));
    expect(await open.leave()).toEqual({ ok: true, value: undefined });
    expect((await aShop({ store: storeOn(name) })).shop.value.entries.size).toBe(1);
  });

  test('a demo that could not be read is not filled over what may lie there', async () => {
    const kept: unknown[] = [];
    const store: Store = {
      ...storeOn(newName()),
      loadAll: async () => ({ ok: false, failure: { kind: 'no-answer' } }),
      keep: async (...rows) => {
        kept.push(rows);
        return { ok: false, failure: { kind: 'no-answer' } };
      },
    };
    const open = await aShop({ store }, 'demo');
    expect(open.failure.value).toEqual({ kind: 'no-answer' });
    expect(kept).toEqual([]);
  });
});

test('a shop that is closed follows nothing any more', async () => {
  const stopped: string[] = [];
  const jobs: (() => void)[] = [];
  const store = storeOn(newName());
  let nowMs = NOW_MS;
  const open = await aShop({
    now: () => nowMs,
    store: { ...store, close: () => void stopped.push('store') },
    every: () => () => void stopped.push('clock'),
    onWake: () => () => void stopped.push('waking'),
    afterPaint: (job) => void jobs.push(job),
  });
  await open.estimator;
  const paint = (): void => {
    for (const job of jobs.splice(0)) job();
  };
  paint();
  const before = open.settled.value;
  open.close();
  nowMs += 1000;
  expect(stopped.toSorted()).toEqual(['clock', 'store', 'waking']);
  await open.actions.startPiece({ name: 'Box', base: 'sealed' });
  expect(open.shop.value.entries.size).toBe(1);
  paint();
  expect(open.settled.value).toBe(before);
  expect(open.nowMs.value).toBe(NOW_MS);
});

test('where the code of the estimates does not come, each piece says so, and all else goes on', async () => {
  const name = newName();
  const first = await aShop({ store: storeOn(name) });
  const { piece } = done(await first.actions.startPiece({ name: 'Box', base: 'sealed' }));
  first.close();
  chunk.isMissing = true;
  const open = await aShop({ store: storeOn(name) });
  await vi.waitFor(() =>
    expect(open.outlooks.value.get(piece)).toEqual({ state: 'failed', message: MODEL_STOPPED }),
  );
  open.look(piece);
  await vi.waitFor(() => expect(open.standings.value.get(piece)).toBeDefined());
  done(await open.actions.changePiece({ piece, name: 'Tray' }));
  open.close();
});

describe('the world of a phone', () => {
  async function onPhone() {
    const page = Object.assign(new EventTarget(), { visibilityState: 'visible' });
    vi.stubGlobal('document', page);
    const reads = { count: 0 };
    const store = storeOn(newName());
    const open = await openShop('own', {
      store: {
        ...store,
        loadAll: () => {
          reads.count++;
          return store.loadAll();
        },
      },
      beforeDrawing: (job) => job(),
      afterPaint: (job) => job(),
    });
    return { open, page, reads };
  }

  test('the clock goes on every twenty seconds until the shop is closed', async () => {
    vi.useFakeTimers({ toFake: ['setInterval', 'clearInterval', 'Date'], now: NOW_MS });
    const { open } = await onPhone();
    expect(open.nowMs.value).toBe(NOW_MS);
    vi.advanceTimersByTime(19_999);
    expect(open.nowMs.value).toBe(NOW_MS);
    vi.advanceTimersByTime(1);
    expect(open.nowMs.value).toBe(NOW_MS + 20_000);
    open.close();
    vi.advanceTimersByTime(60_000);
    expect(open.nowMs.value).toBe(NOW_MS + 20_000);
  });

  test('a page that is seen again looks at the clock; one that was hidden does not', async () => {
    vi.useFakeTimers({ toFake: ['setInterval', 'clearInterval', 'Date'], now: NOW_MS });
    const { open, page } = await onPhone();
    vi.setSystemTime(NOW_MS + 5000);
    page.visibilityState = 'hidden';
    page.dispatchEvent(new Event('visibilitychange'));
    expect(open.nowMs.value).toBe(NOW_MS);
    page.visibilityState = 'visible';
    page.dispatchEvent(new Event('visibilitychange'));
    expect(open.nowMs.value).toBe(NOW_MS + 5000);
    open.close();
    vi.setSystemTime(NOW_MS + 9000);
    page.dispatchEvent(new Event('visibilitychange'));
    expect(open.nowMs.value).toBe(NOW_MS + 5000);
  });

  test('its time zone is asked for once a while: who travels sees it, and a list of pieces does not wait', async () => {
    vi.useFakeTimers({ toFake: ['setInterval', 'clearInterval', 'Date'], now: NOW_MS + 3_600_000 });
    const { open } = await onPhone();
    let zone = 'Europe/Berlin';
    let asked = 0;
    const format = vi.spyOn(Intl, 'DateTimeFormat').mockImplementation(function zoned() {
      asked++;
      return { resolvedOptions: () => ({ timeZone: zone }) } as unknown as Intl.DateTimeFormat;
    } as never);
    vi.setSystemTime(NOW_MS + 7_200_000);
    expect([open.needs.zone(), open.needs.zone()]).toEqual([zone, zone]);
    zone = 'America/New_York';
    vi.setSystemTime(NOW_MS + 7_200_000 + 20_000);
    expect(open.needs.zone()).toBe('Europe/Berlin');
    expect(asked).toBe(1);
    vi.setSystemTime(NOW_MS + 7_200_000 + 20_001);
    expect(open.needs.zone()).toBe('America/New_York');
    zone = 'Asia/Tokyo';
    vi.setSystemTime(NOW_MS); // a clock that was set back
    expect(open.needs.zone()).toBe('Asia/Tokyo');
    format.mockRestore();
    open.close();
  });
});
