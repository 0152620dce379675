import 'fake-indexeddb/auto';
import { createStore, set } from 'idb-keyval';
import { expect, test } from 'vitest';
import { openDatabase } from '../../../src/logbook/storage/database';
import { openPhotos } from '../../../src/logbook/storage/photos';

const picture = new Blob(['a picture'], { type: 'image/jpeg' });
const refuse = (name: string) => () => Promise.reject(new DOMException('', name));

test('a photo is read as it was kept, until it is dropped', async () => {
  const photos = openPhotos(openDatabase('photos-kept', 'photos'));
  expect(await photos.keep('1', picture)).toEqual({ ok: true, value: undefined });
  const kept = await photos.read('1');
  expect({ text: await kept?.text(), type: kept?.type }).toEqual({ text: 'a picture', type: 'image/jpeg' });
  await photos.drop(['1']);
  expect(await photos.read('1')).toBeUndefined();
});

test('a photo is kept as its bytes and its type, not as a reference', async () => {
  const database = openDatabase('photos-as-bytes', 'photos');
  await openPhotos(database).keep('1', picture);
  expect(await database.read(['1'])).toEqual([
    ['1', { type: 'image/jpeg', bytes: await picture.arrayBuffer() }],
  ]);
});

test('photos that the first released version kept are read', async () => {
  // Released versions used idb-keyval: no version number, one table called "photos".
  await set('1', picture, createStore('photos-of-old', 'photos'));
  const photos = openPhotos(openDatabase('photos-of-old', 'photos'));
  expect(await (await photos.read('1'))?.text()).toBe('a picture');
  expect(await photos.keep('2', picture)).toMatchObject({ ok: true });
});

test.each([
  { error: 'QuotaExceededError', kind: 'full' },
  { error: 'SecurityError', kind: 'unavailable' },
  { error: 'UnknownError', kind: 'damaged' },
  { error: 'TimeoutError', kind: 'no-answer' },
])('a device that answers $error: $kind, and no photo is shown', async ({ error, kind }) => {
  const broken = openDatabase('photos-broken', 'photos');
  const photos = openPhotos({ ...broken, write: refuse(error), read: refuse(error), remove: refuse(error) });
  expect(await photos.keep('1', picture)).toMatchObject({ ok: false, failure: { kind } });
  expect(await photos.read('1')).toBeUndefined();
  await photos.drop(['1']);
});

test('what is no picture is not shown as one', async () => {
  const database = openDatabase('photos-torn', 'photos');
  const rows = ['text', null, {}, { type: 1, bytes: new ArrayBuffer(1) }, { type: 'image/jpeg', bytes: 'x' }];
  await database.write(rows.map((row, n) => [String(n), row]));
  for (const n of rows.keys()) expect(await openPhotos(database).read(String(n))).toBeUndefined();
});
