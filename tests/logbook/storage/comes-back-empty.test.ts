import 'fake-indexeddb/auto';
import { describe, expect, test } from 'vitest';
import type { Store } from '../../../src/logbook/storage/store';
import { entry, fillJar, layCoat, startPiece } from '../entries';

import { coatsIn, logbookOn, newName, setUp, storeOn } from './a-logbook';

describe('a database that comes back empty', () => {
  /** A store whose second copy answers when it is told to. */
  function lost(answer: Promise<unknown>): Store {
    const store = storeOn(newName());
    const entries = [entry(1, startPiece()), entry(2, fillJar())];
    const mend: Store['mend'] = async (_, onFound) => {
      await answer;
      await onFound(entries.length);
      return { brought: { entries, setAside: [] }, isBack: true, copied: entries.length };
    };
    return { ...store, mend };
  }

  test('is not logged over before the second copy was asked', async () => {
    let tell = (): void => undefined;
    const asked = new Promise<void>((resolve) => {
      tell = resolve;
    });
    await setUp(); // so that nothing is still to be loaded
    const logbook = logbookOn(lost(asked));
    await logbook.open();
    expect(logbook.shop.value.entries.size).toBe(0);
    const twice = logbook.append(startPiece());
    const coat = logbook.append(layCoat());
    await Promise.race([twice, new Promise((resolve) => setTimeout(resolve, 300))]);
    tell();
    expect(await twice).toMatchObject({ ok: false, failure: { kind: 'piece-there-already' } });
    expect(await coat).toMatchObject({ ok: true });
    expect(logbook.mended.value?.count).toBe(2);
    expect(coatsIn(logbook)).toHaveLength(1);
  });

  test('says what it waits for, how much comes back, and nothing any more when it is there', async () => {
    const logbook = logbookOn(lost(new Promise((resolve) => setTimeout(resolve, 100))));
    const said: unknown[] = [];
    logbook.puttingBack.subscribe((rows) => said.push([rows, logbook.shop.value.entries.size]));
    await logbook.open();
    await expect.poll(() => logbook.mended.value?.count).toBe(2);
    // How many are in the shop meanwhile: never is nothing said of an empty one.
    expect(said).toEqual([
      [undefined, 0],
      [0, 0],
      [2, 0],
      [undefined, 2],
    ]);
  });

  test('is logged over where the second copy does not answer: what happened can always be logged', async () => {
    const logbook = logbookOn(lost(new Promise(() => undefined)));
    await logbook.open();
    expect(await logbook.append(startPiece())).toMatchObject({ ok: true });
    expect(logbook.puttingBack.value).toBeUndefined();
  });
});
