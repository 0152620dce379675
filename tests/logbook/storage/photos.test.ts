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
  expect(await (await photos.read('1'))?.text()).toBe('a picture');
  await photos.drop(['1']);
  expect(await photos.read('1')).toBeUndefined();
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
  await database.write([['1', 'text']]);
  expect(await openPhotos(database).read('1')).toBeUndefined();
});
