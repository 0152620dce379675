import { beforeAll, describe, expect, test } from 'vitest';
import type { Entry } from '../../src/logbook/entry';
import { createLogbook } from '../../src/logbook/logbook';
import type { StorageFailure } from '../../src/logbook/storage/storage-failure';
import type { Loaded, Mended, Store } from '../../src/logbook/storage/store';
import { fail, succeed } from '../../src/result';
import { DAY_1_MS, entry, fillJar, id, layCoat, MINUTE_MS, PIECE, startPiece } from './entries';

const NOTHING: Loaded = { entries: [], setAside: [] };
const BENCH = [entry(1, startPiece()), entry(2, fillJar())];
const BROKEN: StorageFailure = { kind: 'unavailable', cause: 'gone' };
const NO_ANSWER: StorageFailure = { kind: 'no-answer' } as StorageFailure;
const FULL: StorageFailure = { kind: 'full' };
const settled = () => new Promise((resolve) => setTimeout(resolve, 20));

/** A logbook on a store that answers as it is told, and what was asked of it. */
function onStore(
  answers: {
    loads?: (StorageFailure | Loaded)[];
    refuses?: (StorageFailure | undefined)[];
    mended?: Partial<Mended>;
  } = {},
) {
  const loads = [...(answers.loads ?? [])];
  const refuses = [...(answers.refuses ?? [])];
  const asked: unknown[] = [];
  const kept: string[][] = [];
  const pages: number[] = [];
  let isLost: () => void = () => undefined;
  const store = {
    loadAll: async () => {
      const load = loads.shift() ?? NOTHING;
      return 'kind' in load ? fail(load) : succeed(load);
    },
    load: async () => succeed(NOTHING),
    loadFirst: async () => succeed({ entries: BENCH, setAside: [] }),
    keepFirst: async ({ entries }: { entries: readonly Entry[] }) => void pages.push(entries.length),
    keep: async (rows: readonly (readonly [string, unknown])[]) => {
      const refused = refuses.shift();
      if (refused) return fail(refused);
      kept.push(rows.map(([key]) => key));
      return succeed(undefined);
    },
    mend: async (unread: unknown) => {
      asked.push(unread);
      return { brought: NOTHING, isBack: true, copied: undefined, ...answers.mended };
    },
    missing: async (keys: Iterable<string>) => succeed([...keys]),
    onLost: (listener: () => void) => {
      isLost = listener;
    },
    onKeptElsewhere: () => undefined,
  } as unknown as Store;
  let made = 0x100;
  const nowMs = DAY_1_MS + 60 * MINUTE_MS;
  const logbook = createLogbook({
    store,
    now: () => nowMs,
    zone: () => 'Europe/Berlin',
    newId: () => id(made++),
  });
  return { logbook, asked, kept, pages, lose: () => isLost() };
}

// What is fetched behind the first screen is there: no test waits for it by the clock.
beforeAll(() => Promise.all([import('../../src/logbook/later'), import('../../src/logbook/mend')]));

describe('opening', () => {
  test('is not whole before everything is read, though the first page is shown', async () => {
    const { logbook } = onStore({ loads: [{ entries: BENCH, setAside: [] }] });
    await logbook.openFirst();
    expect([logbook.shop.value.entries.size, logbook.isWhole.value]).toEqual([2, false]);
    await logbook.open();
    expect([logbook.shop.value.entries.size, logbook.isWhole.value]).toEqual([2, true]);
  });

  test('again draws nothing anew where nothing came, and asks the second copy no more', async () => {
    const { logbook, asked } = onStore({ loads: [{ entries: BENCH, setAside: [] }] });
    await logbook.open();
    await expect.poll(() => logbook.mended.value).toBeDefined();
    const shop = logbook.shop.value;
    const setAside = logbook.setAside.value;
    await logbook.open();
    expect(logbook.shop.value).toBe(shop);
    expect(logbook.setAside.value).toBe(setAside);
    expect(asked).toEqual([[]]);
  });

  test('asks for all where the database cannot be used, also when it broke later', async () => {
    const { logbook, asked } = onStore({ loads: [{ entries: BENCH, setAside: [] }, BROKEN] });
    await logbook.open();
    expect(await logbook.open()).toEqual(fail(BROKEN));
    expect(asked).toEqual([[], 'all']);
    expect(logbook.isWhole.value).toBe(true);
  });

  test('goes on with the second copy alone', async () => {
    const mended = { brought: { entries: BENCH, setAside: [] }, isBack: false, copied: 2 };
    const { logbook } = onStore({ loads: [BROKEN], mended });
    expect(await logbook.open()).toEqual(succeed(undefined));
    expect(logbook.mended.value).toEqual({ count: 0, copied: 2, isAlone: true });
    expect(logbook.shop.value.pieces.has(PIECE)).toBe(true);
    expect(logbook.puttingBack.value).toBeUndefined();
  });

  test('where another tab holds the database up is no loss', async () => {
    const { logbook, asked } = onStore({ loads: [NO_ANSWER], mended: { copied: 2 } });
    expect(await logbook.open()).toEqual(fail(NO_ANSWER));
    expect(asked).toEqual([[]]);
  });

  const long = Array.from({ length: 5000 }, (_, n) => entry(n + 1, startPiece(id(n + 0x9000)), DAY_1_MS));
  test('keeps the first page of a long logbook once, and none of one that could not be read', async () => {
    const { logbook, pages } = onStore({ loads: [BROKEN, { entries: long, setAside: [] }] });
    await logbook.open();
    await settled();
    expect(pages).toEqual([]);
    const { logbook: whole, pages: kept } = onStore({ loads: [{ entries: long, setAside: [] }] });
    await whole.open();
    await whole.open();
    await expect.poll(() => kept).toEqual([5000]);
    await settled();
    expect(kept).toHaveLength(1);
  });

  test('keeps the first page anew of a long logbook to which a backup brings more, if it could be kept', async () => {
    const { logbook, pages } = onStore({ loads: [{ entries: long, setAside: [] }], refuses: [FULL] });
    await logbook.open();
    await expect.poll(() => pages).toEqual([5000]);
    const more = { entries: [entry(0x6000, startPiece(), DAY_1_MS)], setAside: [] };
    expect((await logbook.take(more)).ok).toBe(false);
    await settled();
    expect(pages).toEqual([5000]);
    await logbook.take(more);
    await expect.poll(() => pages).toEqual([5000, 5001]);
  });
});

describe('what is held', () => {
  test('is nothing at first: there is nothing to keep', async () => {
    const { logbook, kept } = onStore({ refuses: [FULL] });
    expect(await logbook.keepHeld()).toEqual(succeed(undefined));
    expect([kept, logbook.held.value]).toEqual([[], undefined]);
  });

  test('says why it is not kept as the device last said', async () => {
    const { logbook } = onStore({ refuses: [FULL, BROKEN] });
    await logbook.append(startPiece());
    expect(logbook.held.value?.failure).toEqual(FULL);
    expect(await logbook.keepHeld()).toEqual(fail(BROKEN));
    expect(logbook.held.value).toMatchObject({ failure: BROKEN, entries: [{ kind: 'piece-started' }] });
  });

  test('is kept together, and what comes meanwhile after it', async () => {
    const { logbook, kept } = onStore({ refuses: [FULL, FULL] });
    await logbook.append(startPiece());
    await logbook.append(fillJar());
    await settled();
    expect(logbook.held.value?.entries.map(({ kind }) => kind)).toEqual(['piece-started', 'jar-filled']);
    const keeping = logbook.keepHeld();
    const coat = logbook.append(layCoat());
    await Promise.all([keeping, coat]);
    await expect.poll(() => logbook.held.value).toBeUndefined();
    expect([...new Set(kept.flat())]).toEqual([id(0x100), id(0x101), id(0x102)]);
  });

  test('is no loss where the database goes under the app; what was kept is kept once more', async () => {
    const { logbook, kept, lose } = onStore({ loads: [{ entries: BENCH, setAside: [] }], refuses: [FULL] });
    await logbook.open();
    await logbook.append(layCoat());
    lose();
    await expect.poll(() => kept).toEqual([[id(1), id(2)]]);
    await expect.poll(() => logbook.mended.value?.count).toBe(2);
  });
});

test('what cannot be read is named once, and no longer when it came in a form that can', async () => {
  const torn = { key: id(2), issues: [], raw: 'x' };
  const { logbook } = onStore({ loads: [{ entries: [], setAside: [torn, { ...torn, key: 'y' }, torn] }] });
  await logbook.open();
  expect(logbook.setAside.value.map(({ key }) => key)).toEqual([id(2), 'y']);
  await logbook.take({ entries: BENCH, setAside: [] });
  expect(logbook.setAside.value.map(({ key }) => key)).toEqual(['y']);
});
