import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import type { HubLink } from '../../src/hub/hub-link';
import { natsAt } from '../../src/hub/nats';
import { fetchPhoto } from '../../src/hub/photos';
import { shopKey } from '../../src/hub/seal';
import { newId } from '../../src/logbook/ids/new-id';
import { photograph, startPiece } from '../logbook/entries';
import { type Hub, logSome, openPhone, PASSWORD, type Phone, SECRET, startHub } from './a-hub';

// Photos of one phone, looked at on another, over the real engine.
const PIECE_BYTES = 256 * 1024;
const shop = await shopKey(SECRET);
let hub: Hub;
let phones: Phone[] = [];

beforeEach(async () => {
  hub = await startHub();
});
afterEach(async () => {
  await Promise.all(phones.map(({ carrier }) => carrier.stop()));
  phones = [];
  await hub.remove();
});
async function open(given: Parameters<typeof openPhone>[1] = {}): Promise<Phone> {
  const phone = await openPhone(hub, given);
  phones.push(phone);
  return phone;
}
const until = (what: () => unknown) =>
  vi.waitFor(async () => expect(await what()).toBe(true), { timeout: 60_000, interval: 20 });
const waiting = ({ carrier }: Phone): number => carrier.status.value.photosWaiting;

/** A picture whose bytes never repeat with a piece, so that pieces in a wrong order would show. */
const picture = (bytes: number, type = 'image/jpeg'): Blob =>
  new Blob([Uint8Array.from({ length: bytes }, (_, at) => (at * 31 + (at >> 16) * 7) % 251)], { type });
const bytesOf = async (blob: Blob | undefined) => blob && Buffer.from(await blob.arrayBuffer());

/** Takes a photo of a new piece as the app does: the picture first, then the entry that speaks of it. */
async function take({ book, photos }: Phone, blob: Blob, photo = newId()): Promise<string> {
  const piece = newId();
  await photos.keep(photo, blob);
  await book.append(startPiece(piece));
  const logged = await book.append(photograph(photo, piece));
  if (!logged.ok) throw new Error(JSON.stringify(logged));
  return photo;
}
const seen = ({ carrier }: Phone, id: string) => {
  const link = carrier.link.value;
  return link && fetchPhoto(id, link, shop);
};
/** A line of somebody with the sign-in. */
const line = (): Promise<HubLink> => natsAt(hub.address)({ password: PASSWORD, shop: shop.name }, 'hold');
const head = (id: string, n: number | 'head') => `coatwait.${shop.name}.photo.${id}.${n}`;

test.each([
  { name: 'a thumbnail', bytes: 1 },
  { name: 'one full piece', bytes: PIECE_BYTES },
  { name: 'one byte more than a piece', bytes: PIECE_BYTES + 1 },
  { name: 'three pieces and a bit', bytes: 3 * PIECE_BYTES + 77 },
])('$name comes over byte for byte when it is looked at, and not before', async ({ bytes }) => {
  const one = await open();
  const other = await open();
  const taken = picture(bytes, 'image/webp');
  const id = await take(one, taken);
  await until(async () => (await seen(other, id)) !== undefined);
  const came = await seen(other, id);
  expect(came?.type).toBe('image/webp');
  expect((await bytesOf(came))?.equals((await bytesOf(taken)) ?? Buffer.of())).toBe(true);
  expect((await other.photos.ids()).size).toBe(0);
  await until(() => waiting(one) === 0 && waiting(other) === 0);
});

test('a photo that a kill of the hub cut in two is sent to its end, and only then can be seen', async () => {
  const one = await open();
  await until(() => one.carrier.status.value.line === 'open');
  const id = await take(one, picture(40 * PIECE_BYTES));
  await until(() => waiting(one) === 1);
  await hub.kill();
  await until(() => one.carrier.status.value.line === 'cut');
  await hub.start();
  const other = await open();
  await until(async () => ((await seen(other, id))?.size ?? 0) === 40 * PIECE_BYTES);
  await until(() => waiting(one) === 0);
});

test('only what this phone has is told as waiting, and it is told until it is there', async () => {
  const one = await open();
  const other = await open();
  for (let n = 0; n < 3; n++) await take(one, picture(9));
  await until(() => other.book.shop.value.entries.size === 6);
  const told = new Set<number>();
  const stop = other.carrier.status.subscribe(({ photosWaiting }) => told.add(photosWaiting));
  await take(other, picture(4 * PIECE_BYTES));
  await until(() => told.has(1));
  await until(() => waiting(other) === 0);
  stop();
  expect([...told].sort()).toEqual([0, 1]);
});

test('an entry does not wait for the photos of a month', async () => {
  const one = await open();
  const other = await open();
  await until(() => one.carrier.status.value.line === 'open');
  for (let n = 0; n < 10; n++) await take(one, picture(8 * PIECE_BYTES));
  await logSome(one, 1);
  const of = one.book.shop.value.entries.size;
  await until(() => other.book.shop.value.entries.size === of);
  expect(waiting(one)).toBeGreaterThan(2);
});

test.each(['head', 0, 1] as const)(
  'something strange in the place of piece %s is never shown, and the photo keeps waiting',
  async (piece) => {
    const id = newId();
    const strange = await line();
    await strange.put(head(id, piece), new Uint8Array(64));
    await strange.close();
    const one = await open();
    await take(one, picture(2 * PIECE_BYTES), id);
    const good = await take(one, picture(100));
    const other = await open();
    await until(async () => (await seen(other, good)) !== undefined);
    expect(await seen(other, id)).toBeUndefined();
    await until(() => waiting(one) === 1);
  },
);

test('a piece of one photo is not taken for the piece of another', async () => {
  const one = await open();
  const first = await take(one, picture(PIECE_BYTES));
  const second = newId();
  await until(async () => (await seen(one, first)) !== undefined);
  const stranger = await line();
  for (const piece of ['head', 0] as const) {
    const body = await stranger.get(head(first, piece));
    await stranger.put(head(second, piece), body ?? new Uint8Array());
  }
  await stranger.close();
  expect(await seen(one, second)).toBeUndefined();
});
