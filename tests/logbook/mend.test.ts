import { signal } from '@preact/signals';
import { expect, test } from 'vitest';
import { fold } from '../../src/logbook/fold/fold';
import { keepAgain, type Mending } from '../../src/logbook/mend';
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
