import 'fake-indexeddb/auto';
import { afterEach, expect, test, vi } from 'vitest';
import { connect } from '../../../src/logbook/storage/connection';
import { openDatabase } from '../../../src/logbook/storage/database';
import { openPhotos } from '../../../src/logbook/storage/photos';

afterEach(() => vi.restoreAllMocks());

test('a database is opened when it is first needed, and once', async () => {
  const opening = vi.spyOn(indexedDB, 'open');
  const opened = connect('opened-once', 'rows');
  expect(opening).not.toHaveBeenCalled();
  const [one, other] = await Promise.all([opened(), opened()]);
  expect(one).toBe(other);
  expect([...one.objectStoreNames]).toEqual(['rows']);
  expect(opening).toHaveBeenCalledTimes(1);
});

test('one that could not be opened is opened when it is next needed', async () => {
  const refusal = new DOMException('', 'UnknownError');
  vi.spyOn(indexedDB, 'open').mockImplementationOnce(() => {
    throw refusal;
  });
  const opened = connect('opened-again', 'rows');
  await expect(opened()).rejects.toBe(refusal);
  await expect(opened()).resolves.toBeDefined();
});

test.each(['onclose', 'onversionchange'] as const)(
  'one that was taken away (%s) is told of, and opened anew',
  async (how) => {
    const lost = vi.fn();
    const opened = connect(`lost-${how}`, 'rows', lost);
    const before = await opened();
    (before[how] as (() => void) | null)?.();
    expect(lost).toHaveBeenCalledTimes(1);
    expect(await opened()).not.toBe(before);
  },
);

test('a database tells who listens when it was lost', async () => {
  const opening = vi.spyOn(indexedDB, 'open');
  const database = openDatabase('lost-and-told');
  const lost = vi.fn();
  database.onLost?.(lost);
  await database.write([['a', 1]]);
  const [request] = opening.mock.results.map(({ value }) => value as IDBOpenDBRequest);
  (request?.result.onclose as (() => void) | null)?.();
  expect(lost).toHaveBeenCalledTimes(1);
  expect(await database.readAfter(undefined, 9)).toEqual([['a', 1]]);
  expect([await database.readAfter('a', 9), await database.count(), await database.keys()]).toEqual([
    [],
    1,
    ['a'],
  ]);
});

test('which photos are on this device is said by their ids; none where that cannot be read', async () => {
  const database = openDatabase('photos-named', 'photos');
  const photos = openPhotos(database);
  await photos.keep('1', new Blob(['x']));
  await photos.keep('2', new Blob(['y']));
  expect([...(await photos.ids())]).toEqual(['1', '2']);
  const refused = openPhotos({
    ...database,
    keys: () => Promise.reject(new DOMException('', 'UnknownError')),
  });
  expect([...(await refused.ids())]).toEqual([]);
});
