import 'fake-indexeddb/auto';
import { describe, expect, test, vi } from 'vitest';
import { exportBackup, importBackup } from '../../src/actions/keep/backup';
import { photographCard } from '../../src/actions/mix/card-photo';
import type { Entry } from '../../src/logbook/entry';
import type { Photos } from '../../src/logbook/storage/photos';
import type { StorageFailure } from '../../src/logbook/storage/storage-failure';
import type { Store } from '../../src/logbook/storage/store';
import { fail, succeed } from '../../src/result';
import { SHIPPED } from '../logbook/entries';
import { aShop, done, newName, storeOn } from './a-shop';
import { BackupWorker } from './backup-worker';
import { aBench, agedWhite, writes } from './mix/a-bench';

vi.stubGlobal('Worker', BackupWorker);

/** Photos in memory, with room for so many. */
function photosFor(most: number): Photos & { readonly kept: ReadonlyMap<string, Blob> } {
  const kept = new Map<string, Blob>();
  return {
    kept,
    keep: async (id, picture) =>
      kept.size < most ? succeed(void kept.set(id, picture)) : fail({ kind: 'full' }),
    ids: async () => new Set(kept.keys()),
    read: async (id) => kept.get(id),
    drop: async (ids) => {
      for (const id of ids) kept.delete(id);
    },
  };
}

/** Its backup, with three photos of a card. */
async function aBackup(): Promise<File> {
  const open = await aShop();
  const { recipe } = await writes(open, agedWhite(await aBench(open)));
  const photos = photosFor(3);
  for (const text of ['one', 'two', 'three'])
    done(await photographCard(open.needs, photos, recipe, new Blob([text], { type: 'image/jpeg' })));
  return exportBackup(open.needs, photos);
}

const FULL: StorageFailure = { kind: 'full' };
const NO_ANSWER: StorageFailure = { kind: 'no-answer' };
const UNAVAILABLE: StorageFailure = { kind: 'unavailable', cause: 'a private window' };
const fullStore = (): Store => {
  const store = storeOn(newName());
  return { ...store, keep: async () => fail(FULL) };
};

describe('the entries of a backup come in whole, or none of them', () => {
  test('with its photos, byte for byte; and once more it brings nothing', async () => {
    const file = await aBackup();
    const photos = photosFor(99);
    const { needs, shop } = await aShop();
    expect(done(await importBackup(needs, file, photos))).toEqual({
      entries: shop.value.entries.size,
      unread: 0,
      photos: 3,
      photosLeft: 0,
    });
    expect(await Promise.all([...photos.kept.values()].map((one) => one.text()))).toEqual([
      'one',
      'two',
      'three',
    ]);
    expect(done(await importBackup(needs, file, photos))).toEqual({
      entries: 0,
      unread: 0,
      photos: 0,
      photosLeft: 0,
    });
  });

  test('a device that is full keeps neither photo nor entry', async () => {
    const photos = photosFor(99);
    const { needs, shop } = await aShop({ store: fullStore() });
    expect(await importBackup(needs, await aBackup(), photos)).toMatchObject({ ok: false });
    expect(photos.kept.size).toBe(0);
    expect(shop.value.entries.size).toBe(0);
  });

  test.each([
    { why: 'the second of three', fails: [2], failure: FULL, left: 1, asked: 3 },
    { why: 'all three', fails: [1, 2, 3], failure: UNAVAILABLE, left: 3, asked: 3 },
    { why: 'the second, after ten seconds', fails: [2], failure: NO_ANSWER, left: 2, asked: 2 },
  ])('entries come in where a photo cannot: $why', async ({ fails, failure, left, asked }) => {
    const file = await aBackup();
    const photos = photosFor(99);
    let count = 0;
    const picky: Photos = {
      ...photos,
      keep: async (id, picture) => (fails.includes(++count) ? fail(failure) : photos.keep(id, picture)),
    };
    const { needs, shop } = await aShop();
    const { entries, photosLeft } = done(await importBackup(needs, file, picky));
    expect([entries, photosLeft, count]).toEqual([shop.value.entries.size, left, asked]);
    expect(entries).toBeGreaterThan(3);
    // With room made, the same file brings what was left.
    expect(done(await importBackup(needs, file, photos))).toMatchObject({
      entries: 0,
      photos: left,
      photosLeft: 0,
    });
    expect(photos.kept.size).toBe(3);
  });

  test('stopped at the second photo: the entries and the first are there, and the same file brings the others', async () => {
    const file = await aBackup();
    const photos = photosFor(99);
    const { needs, shop } = await aShop();
    const stopping = new AbortController();
    const seen: string[] = [];
    const onProgress = (at: number, of: number): void => {
      seen.push(`${at} of ${of}, ${photos.kept.size} kept`);
      if (photos.kept.size === 1) stopping.abort();
    };
    const stopped = done(await importBackup(needs, file, photos, { onProgress, signal: stopping.signal }));
    expect(stopped).toMatchObject({ entries: shop.value.entries.size, photos: 1, photosLeft: 2 });
    expect(stopped.entries).toBeGreaterThan(3);
    // While it is taken apart, and again while the photos are kept.
    expect(seen).toEqual([
      ...['0 of 3', '1 of 3', '2 of 3', '0 of 3'].map((how) => `${how}, 0 kept`),
      '1 of 3, 1 kept',
    ]);
    expect(done(await importBackup(needs, file, photos))).toMatchObject({ photos: 2, photosLeft: 0 });
  });

  test('a file that is gone by the time it is read is told as that', async () => {
    const gone = new File(['PK'], 'coatwait.zip');
    gone.slice = () => {
      throw new DOMException('', 'NotReadableError');
    };
    const { needs } = await aShop();
    expect(await importBackup(needs, gone, photosFor(9))).toMatchObject({
      failure: { sentence: expect.stringContaining('cannot be read') },
    });
  });
});

test('a backup holds the photos of cards and of places, each once', async () => {
  const { needs } = await aShop();
  done(await needs.logbook.take({ entries: SHIPPED as unknown as Entry[], setAside: [] }));
  const kinds: readonly unknown[] = ['card-photographed', 'photographed'];
  const taken = SHIPPED.filter(({ kind }) => kinds.includes(kind)).map(({ photo }) => photo);
  expect(taken.length).toBeGreaterThan(1);
  const asked: string[] = [];
  const read: Photos['read'] = async (id) => {
    asked.push(id);
    return undefined;
  };
  await exportBackup(needs, { ...photosFor(0), read });
  expect(asked.toSorted()).toEqual(taken.toSorted());
});

test('a photo whose entry is refused is not left behind', async () => {
  const photos = photosFor(9);
  const { needs } = await aShop();
  const refused = await photographCard(needs, photos, needs.newId(), new Blob(['x'], { type: 'image/jpeg' }));
  expect(refused).toMatchObject({ ok: false });
  expect(photos.kept.size).toBe(0);
});

test('a photo that the browser can no longer read does not cost the backup', async () => {
  const open = await aShop();
  const { recipe } = await writes(open, agedWhite(await aBench(open)));
  const photos = photosFor(2);
  const torn = new Blob(['torn'], { type: 'image/jpeg' });
  torn.arrayBuffer = () => Promise.reject(new DOMException('', 'NotReadableError'));
  for (const picture of [torn, new Blob(['good'], { type: 'image/jpeg' })])
    done(await photographCard(open.needs, photos, recipe, picture));
  const fresh = await aShop();
  const brought = photosFor(9);
  const count = done(await importBackup(fresh.needs, await exportBackup(open.needs, photos), brought));
  expect(count.entries).toBe(open.shop.value.entries.size);
  expect(await Promise.all([...brought.kept.values()].map((one) => one.text()))).toEqual(['good']);
});

test('a backup asked for before everything is read waits for the rest', async () => {
  const name = newName();
  const first = await aShop({ store: storeOn(name) });
  await aBench(first);
  const { size } = first.shop.value.entries;
  const { logbook, now } = (await aShop({ store: storeOn(name) })).needs;
  const early = { ...logbook, isWhole: { value: false } as typeof logbook.isWhole };
  let isOpened = false;
  early.open = () => {
    isOpened = true;
    return logbook.open();
  };
  const file = await exportBackup({ ...first.needs, logbook: early, now }, photosFor(0));
  expect(isOpened).toBe(true);
  const fresh = await aShop();
  expect(done(await importBackup(fresh.needs, file, photosFor(0))).entries).toBe(size);
});
