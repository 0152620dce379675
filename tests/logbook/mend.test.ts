import { signal } from '@preact/signals';
import { describe, expect, test } from 'vitest';
import { fold } from '../../src/logbook/fold/fold';
import { keepAgain, type Mending, mend } from '../../src/logbook/mend';
import type { Store } from '../../src/logbook/storage/store';
import { entry, fillJar, id, startPiece } from './entries';

const ENTRIES = [entry(1, startPiece()), entry(2, fillJar())];

/** What is kept once more, of two entries in memory, by what the database misses and what was never kept. */
async function keptAgain(
  missing: { ok: true; value: readonly string[] } | { ok: false },
  held: readonly string[] | undefined,
  isKept = true,
) {
  const kept: string[] = [];
  const mended = signal<Mending | undefined>(undefined);
  const store = {
    mend: async () => ({ brought: { entries: [], setAside: [] }, isBack: true, copied: 2 }),
    missing: async () => missing,
    keep: async (rows: readonly (readonly [key: string, raw: unknown])[]) => {
      kept.push(...rows.map(([key]) => key));
      return { ok: isKept };
    },
  };
  await keepAgain({
    store,
    shop: signal(fold(ENTRIES)),
    setAside: signal([]),
    held: signal(held && { entries: ENTRIES.filter((one) => held.includes(one.id)) }),
    mended,
    puttingBack: signal(undefined),
    show: () => undefined,
  } as unknown as Parameters<typeof keepAgain>[0]);
  return { kept, count: mended.value?.count };
}

test('what the database has lost is kept once more, and counted', async () => {
  expect(await keptAgain({ ok: true, value: [id(1), id(2)] }, undefined)).toEqual({
    kept: [id(1), id(2)],
    count: 2,
  });
  expect(await keptAgain({ ok: true, value: [] }, undefined)).toEqual({ kept: [], count: 0 });
});

test('what was never kept is held already: it is no loss', async () => {
  expect(await keptAgain({ ok: true, value: [id(1), id(2)] }, [id(2)])).toEqual({ kept: [id(1)], count: 1 });
  expect(await keptAgain({ ok: true, value: [id(2)] }, [id(2)])).toEqual({ kept: [], count: 0 });
});

test('where the database does not answer nothing is kept, and what it does not take is not counted', async () => {
  expect(await keptAgain({ ok: false }, undefined)).toEqual({ kept: [], count: 0 });
  expect((await keptAgain({ ok: true, value: [id(1)] }, undefined, false)).count).toBe(0);
});

describe('what the second copy brings back', () => {
  const LOST = { entries: ENTRIES, setAside: [] };
  const NOTHING = { entries: [], setAside: [] };

  /** What is asked of the second copy, and what is shown and said of its answer. */
  async function mendedBy(
    answer: Partial<Awaited<ReturnType<Store['mend']>>>,
    { isBroken = false, before = undefined as Mending | undefined, found = 0 } = {},
  ) {
    const asked: unknown[] = [];
    const shown: unknown[] = [];
    const mended = signal(before);
    const puttingBack = signal<number | undefined>(undefined);
    const setAside = signal([
      { key: 'torn', issues: [], raw: undefined },
      { key: 'newer', issues: [], raw: { v: 99 } },
    ]);
    const store = {
      mend: async (unread: unknown, onFound: (rows: number) => Promise<void>) => {
        asked.push(unread);
        if (found > 0) await onFound(found);
        return { brought: NOTHING, isBack: true, copied: undefined, ...answer };
      },
    };
    const show = (loaded: unknown) => void shown.push(loaded);
    const told: unknown[] = [];
    puttingBack.subscribe((rows) => told.push(rows));
    const book = {
      store,
      shop: signal(fold([])),
      setAside,
      held: signal(undefined),
      mended,
      puttingBack,
      show,
    };
    const hasCopy = await mend(book as unknown as Parameters<typeof mend>[0], isBroken);
    return { asked, shown, told, hasCopy, mended: mended.value };
  }

  test('is asked for what cannot be read, and for all where the database gave nothing', async () => {
    expect((await mendedBy({})).asked).toEqual([['torn']]);
    expect((await mendedBy({}, { isBroken: true })).asked).toEqual(['all']);
  });

  test('is shown, and said while it is put back', async () => {
    const { shown, told } = await mendedBy({ brought: LOST, copied: 2 }, { found: 2 });
    expect(shown).toEqual([LOST]);
    expect(told).toEqual([undefined, 2, undefined]);
  });

  const aside = [{ key: 'x', issues: [], raw: 1 }];
  test.each([
    {
      what: 'nothing was lost',
      answer: { copied: 5 },
      isBroken: false,
      says: { count: 0, copied: 5, isAlone: false },
    },
    {
      what: 'something was',
      answer: { brought: LOST, copied: 5 },
      isBroken: false,
      says: { count: 2, copied: 5, isAlone: false },
    },
    {
      what: 'one of it cannot be read',
      answer: { brought: { ...LOST, setAside: aside }, copied: 5 },
      isBroken: false,
      says: { count: 3, copied: 5, isAlone: false },
    },
    {
      what: 'the database gave nothing and takes all back',
      answer: { brought: LOST, copied: 2 },
      isBroken: true,
      says: { count: 2, copied: 2, isAlone: false },
    },
    {
      what: 'it takes nothing back',
      answer: { brought: LOST, copied: 2, isBack: false },
      isBroken: true,
      says: { count: 0, copied: 2, isAlone: true },
    },
    {
      what: 'there is nothing in either',
      answer: { copied: 0 },
      isBroken: true,
      says: { count: 0, copied: 0, isAlone: true },
    },
    {
      what: 'there is no second copy',
      answer: {},
      isBroken: true,
      says: { count: 0, copied: undefined, isAlone: false },
    },
    {
      what: 'the database works and takes nothing',
      answer: { brought: LOST, copied: 2, isBack: false },
      isBroken: false,
      says: { count: 2, copied: 2, isAlone: false },
    },
  ])('where $what', async ({ answer, isBroken, says }) => {
    const { mended, hasCopy } = await mendedBy(answer, { isBroken });
    expect(mended).toEqual(says);
    expect(hasCopy).toBe(says.copied !== undefined);
  });

  test('is counted with what came back before', async () => {
    const before = { count: 3, copied: 9, isAlone: false };
    expect((await mendedBy({ brought: LOST, copied: 5 }, { before })).mended?.count).toBe(5);
  });
});
