import { jetstream, jetstreamManager, RetentionPolicy } from '@nats-io/jetstream';
import { type NatsConnection, wsconnect } from '@nats-io/nats-core';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { contentOf } from '../../src/hub/message';
import { natsAt } from '../../src/hub/nats';
import { seal, shopKey } from '../../src/hub/seal';
import { newId } from '../../src/logbook/ids/new-id';
import { aDisk, type Hub, logSome, openPhone, PASSWORD, type Phone, SECRET, said, startHub } from './a-hub';

// The real engine, and phones that are everything of the app but its screens.
let hub: Hub;
let phones: Phone[] = [];
let lines: NatsConnection[] = [];
const shop = await shopKey(SECRET);

beforeEach(async () => {
  hub = await startHub();
});
afterEach(async () => {
  await Promise.all([...phones.map(({ carrier }) => carrier.stop()), ...lines.map((line) => line.close())]);
  phones = [];
  lines = [];
  await hub.remove();
});

async function open(
  given: Parameters<typeof openPhone>[1] = {},
  at: Pick<Hub, 'address'> = hub,
): Promise<Phone> {
  const phone = await openPhone(at, given);
  phones.push(phone);
  return phone;
}
const until = (what: () => unknown) =>
  vi.waitFor(async () => expect(await what()).toBe(true), { timeout: 60_000, interval: 20 });
const status = ({ carrier }: Phone) => carrier.status.value;
const size = ({ book }: Phone) => book.shop.value.entries.size;
const isAllThere = (phone: Phone, count: number) =>
  status(phone).there === count && status(phone).entries === count;
const isAlike = async (one: Phone, other: Phone) => (await one.kept()) === (await other.kept());

/** Somebody with the sign-in and without the key. */
async function stranger() {
  const line = await wsconnect({ servers: [hub.address], user: 'shop', pass: PASSWORD, reconnect: false });
  lines.push(line);
  return { line, js: jetstream(line), manager: await jetstreamManager(line) };
}
const subjectOf = (id: string): string => `coatwait.${shop.name}.entry.${id}`;

test('what one phone logs the other has, byte for byte', async () => {
  const one = await open();
  const other = await open();
  await logSome(one, 3);
  await logSome(other, 2);
  await until(() => isAllThere(one, 5) && isAllThere(other, 5));
  expect(await one.kept()).toBe(await other.kept());
  expect(status(other)).toMatchObject({
    line: 'open',
    trouble: undefined,
    foreign: 0,
    waitingSinceMs: undefined,
  });
});

test('two logbooks that both have entries are united', async () => {
  const one = await open();
  await logSome(one, 20);
  await until(() => isAllThere(one, 20));
  const disk = aDisk();
  const alone = await open({ entries: disk }, { address: 'ws://127.0.0.1:9/hub' });
  await logSome(alone, 10);
  await until(() => status(alone).line === 'cut');
  expect(status(alone)).toMatchObject({ trouble: 'unreachable', entries: 10, there: 0 });
  await alone.carrier.stop();
  const joined = await open({ entries: disk });
  await until(() => isAllThere(one, 30) && isAllThere(joined, 30));
  expect(await isAlike(one, joined)).toBe(true);
});

test('a line that is stopped while it is being opened is not opened', async () => {
  const one = await open();
  expect(status(one).line).toBe('opening');
  await one.carrier.stop();
  expect(status(one).line).toBe('cut');
});

test('an undo goes across, and so does the undo of it', async () => {
  const one = await open();
  const other = await open();
  const logged = await one.book.append(said('us'));
  if (!logged.ok) throw new Error('not logged');
  await until(() => other.book.shop.value.settings.units === 'us');
  const strike = await other.book.strike(logged.value.id);
  if (!strike.ok) throw new Error('not struck');
  await until(() => one.book.shop.value.settings.units === undefined);
  await one.book.strike(strike.value.id);
  await until(() => other.book.shop.value.settings.units === 'us');
});

test('a wrong sign-in is told, and nothing goes out or in', async () => {
  const one = await open({ password: `${PASSWORD.slice(0, -1)}z` });
  await logSome(one, 1);
  await until(() => status(one).trouble === 'wrong-sign-in');
  expect(size(one)).toBe(1);
  const { manager } = await stranger();
  expect((await manager.getAccountInfo()).streams).toBe(0);
});

test('a shop that is not on this hub cannot be joined, and is not made by asking', async () => {
  const asked = natsAt(hub.address)({ password: PASSWORD, shop: shop.name }, 'join');
  await expect(asked).rejects.toMatchObject({ trouble: 'no-such-shop' });
  const { manager } = await stranger();
  expect((await manager.getAccountInfo()).streams).toBe(0);
});

test('messages of another key, changed on the way, or put in the place of another are not taken', async () => {
  const one = await open();
  await logSome(one, 1);
  await until(() => isAllThere(one, 1));
  const { js, manager } = await stranger();
  const [id = ''] = one.book.shop.value.entries.keys();
  const there = await manager.streams.getMessage(`coatwait-${shop.name}`, { last_by_subj: subjectOf(id) });
  const whole = new Uint8Array(there?.data ?? []);
  const { key } = await shopKey('another-secret');
  const entry = { ...one.book.shop.value.entries.get(id), id: newId() };
  const bad = [
    { why: 'another key', id: entry.id, body: await seal(key, subjectOf(entry.id), contentOf(entry)) },
    { why: 'one bit changed', id: newId(), body: whole.map((byte, at) => (at === 20 ? byte ^ 1 : byte)) },
    { why: 'replayed under another id', id: newId(), body: whole },
    { why: 'empty', id: newId(), body: new Uint8Array() },
    { why: 'no version of ours', id: newId(), body: Uint8Array.of(9, ...whole.slice(1)) },
    { why: 'cut short', id: newId(), body: whole.slice(0, 30) },
  ];
  for (const { id: under, body } of bad) await js.publish(subjectOf(under), body);
  await until(() => status(one).foreign === bad.length);
  await logSome(one, 1);
  await until(() => isAllThere(one, 2));
  expect(size(one)).toBe(2);
  expect(one.book.setAside.value).toEqual([]);
  const other = await open();
  await until(() => isAllThere(other, 2) && status(other).foreign === bad.length);
});

test('what is there cannot be replaced, deleted or swept away with the sign-in', async () => {
  const one = await open();
  await logSome(one, 1);
  await until(() => isAllThere(one, 1));
  const { line, js, manager } = await stranger();
  const name = `coatwait-${shop.name}`;
  const [id = ''] = one.book.shop.value.entries.keys();
  await expect(js.publish(subjectOf(id), 'mine')).rejects.toMatchObject({ code: 10077 });
  void line.closed();
  for (const api of [
    `STREAM.DELETE.${name}`,
    `STREAM.PURGE.${name}`,
    `STREAM.MSG.DELETE.${name}`,
    `STREAM.UPDATE.${name}`,
  ])
    await expect(line.request(`$JS.API.${api}`, '{}', { timeout: 500 })).rejects.toThrow();
  expect((await manager.streams.info(name)).state.messages).toBe(1);
});

test('an entry whose place a stranger has taken stays on the phone, and the others go out', async () => {
  const disk = aDisk();
  const alone = await open({ entries: disk }, { address: 'ws://127.0.0.1:9/hub' });
  await logSome(alone, 3);
  await alone.carrier.stop();
  const first = await open();
  await until(() => status(first).line === 'open');
  const { js } = await stranger();
  const [taken = ''] = alone.book.shop.value.entries.keys();
  await js.publish(subjectOf(taken), new Uint8Array(64));
  const one = await open({ entries: disk });
  await until(() => status(one).there === 2 && status(one).foreign === 1);
  expect(status(one).entries).toBe(3);
  expect(status(one).waitingSinceMs).toBeDefined();
});

test.each([
  { why: 'other rules', config: { max_msgs_per_subject: -1 } },
  { why: 'an end of time', config: { max_age: 3_600_000_000_000 } },
  {
    why: 'another way of keeping',
    config: { retention: RetentionPolicy.Workqueue, max_msgs_per_subject: -1 },
  },
])('a stream that somebody else has made with $why gets nothing', async ({ config }) => {
  const { manager } = await stranger();
  const name = `coatwait-${shop.name}`;
  await manager.streams.add({ name, subjects: [`coatwait.${shop.name}.entry.*`], ...config });
  const one = await open();
  await logSome(one, 1);
  await until(() => status(one).trouble === 'foreign-stream');
  expect((await manager.streams.info(name)).state.messages).toBe(0);
});

test('a stream of another name on the same subjects gets nothing', async () => {
  const { manager } = await stranger();
  await manager.streams.add({ name: 'theirs', subjects: [`coatwait.${shop.name}.>`] });
  const one = await open();
  await logSome(one, 1);
  await until(() => status(one).trouble === 'foreign-stream');
  expect((await manager.streams.info('theirs')).state.messages).toBe(0);
});

test('an entry of a newer app is set aside, named, and goes on as it came', async () => {
  const one = await open();
  await until(() => status(one).line === 'open');
  const { js } = await stranger();
  const newer = {
    id: newId(),
    v: 7,
    kind: 'coat-dreamt',
    at: '2026-03-01T08:00:00.000Z',
    zone: 'UTC',
    of: 'it',
  };
  await js.publish(subjectOf(newer.id), await seal(shop.key, subjectOf(newer.id), contentOf(newer)));
  await until(() => one.book.setAside.value.length === 1);
  expect(one.book.setAside.value[0]).toMatchObject({ key: newer.id, raw: newer });
  expect(status(one)).toMatchObject({ entries: 1, there: 1, foreign: 0 });
});

test('a hub that is full is told; nothing is lost, and what others have sent still comes', async () => {
  await hub.remove();
  hub = await startHub({ mostBytes: 8_000 });
  const one = await open();
  await logSome(one, 60);
  await until(() => status(one).trouble === 'full');
  expect(size(one)).toBe(60);
  expect(status(one).there).toBeLessThan(60);
  const other = await open();
  await until(() => size(other) > 0);
  expect(size(other)).toBeLessThan(60);
});

test('a phone that is full takes nothing in half, and all of it later', async () => {
  const one = await open();
  await logSome(one, 5);
  await until(() => isAllThere(one, 5));
  const disk = aDisk();
  let isFull = true;
  const write: typeof disk.write = async (rows) => {
    if (isFull) throw new DOMException('', 'QuotaExceededError');
    return disk.write(rows);
  };
  const other = await open({ entries: { ...disk, write } });
  await until(() => status(other).trouble === 'this-phone-full');
  expect(size(other)).toBe(0);
  isFull = false;
  other.carrier.wake();
  await until(() => size(other) === 5);
});

test('a hub that was killed comes back with everything, and so do the phones', async () => {
  const one = await open();
  const other = await open();
  await logSome(one, 5);
  await until(() => isAllThere(other, 5));
  await hub.kill();
  await logSome(one, 5);
  await logSome(other, 5);
  await until(() => status(one).line === 'cut' && status(one).waitingSinceMs !== undefined);
  await hub.start();
  await until(() => isAllThere(one, 15) && isAllThere(other, 15));
  expect(await isAlike(one, other)).toBe(true);
});

test('a hub that has lost everything is filled again by the phones', async () => {
  const one = await open();
  await logSome(one, 5);
  await until(() => isAllThere(one, 5));
  const { port } = hub;
  await hub.remove();
  await until(() => status(one).line !== 'open');
  hub = await startHub({ port });
  await until(() => status(one).line === 'open' && isAllThere(one, 5));
  const { manager } = await stranger();
  expect((await manager.streams.info(`coatwait-${shop.name}`)).state.messages).toBe(5);
});

test('a phone that has lost its logbook, and not what it knew of the hub, gets it back', async () => {
  const known = aDisk();
  const one = await open({ known });
  await logSome(one, 5);
  await until(() => isAllThere(one, 5));
  const kept = await one.kept();
  await one.carrier.stop();
  const again = await open({ known });
  await until(async () => (await again.kept()) === kept);
});
