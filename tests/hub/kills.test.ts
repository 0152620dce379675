import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test, vi } from 'vitest';
import { type Hub, logSome, openPhone, PASSWORD, type Phone, startHub } from './a-hub';
import { freePort, hashed, startNats } from './nats-server.mjs';

// Hub and phones are killed at random moments while all log. `npm run kills:hub` for the long run.
const ENTRIES = Number(process.env['HUB_ENTRIES'] ?? 40);
const KILLS = Number(process.env['HUB_KILLS'] ?? 3);
const PHONES = 3;
const STEP = 10;
const restMs = (longest: number) => new Promise((resolve) => setTimeout(resolve, Math.random() * longest));

/** Until every phone holds so many, all of them on the hub, and all hold the same bytes. */
const untilAlike = (phones: readonly Phone[], count: number) =>
  vi.waitFor(
    async () => {
      for (const phone of phones)
        expect(phone.carrier.status.value).toMatchObject({ entries: count, there: count, line: 'open' });
      const kept = await Promise.all(phones.map((phone) => phone.kept()));
      expect(new Set(kept).size).toBe(1);
    },
    { timeout: 150_000, interval: 100 }, // a phone that found no hub looks again after half a minute, and a cluster elects first
  );

test(`${PHONES} phones log ${ENTRIES} each while hub and phones are killed ${KILLS} times: all end equal, nothing lost or doubled`, async () => {
  const hub: Hub = await startHub();
  let phones = await Promise.all(Array.from({ length: PHONES }, () => openPhone(hub)));
  const logged = new Set<string>();
  const note = (phone: Phone) => {
    for (const id of phone.book.shop.value.entries.keys()) logged.add(id);
  };
  try {
    const rounds = Math.ceil(ENTRIES / STEP);
    const killsIn = (round: number) =>
      Math.floor(((round + 1) * KILLS) / rounds) - Math.floor((round * KILLS) / rounds);
    for (let round = 0; round < rounds; round++) {
      const count = Math.min(STEP, ENTRIES - round * STEP);
      const logging = Promise.all(phones.map((phone) => logSome(phone, count)));
      for (let n = 0; n < killsIn(round); n++) {
        await restMs(30);
        await hub.kill();
        await restMs(60);
        await hub.start();
      }
      await logging;
      phones.forEach(note);
      for (let n = 0; n < killsIn(round); n++) {
        await restMs(30);
        const which = Math.floor(Math.random() * PHONES);
        phones[which]?.die();
        const again = await phones[which]?.reopen();
        phones = phones.map((phone, index) => (index === which && again ? again : phone));
      }
    }
    await untilAlike(phones, ENTRIES * PHONES);
    expect(new Set(phones[0]?.book.shop.value.entries.keys())).toEqual(logged);
    console.log(`hub: ${ENTRIES * PHONES} entries, ${KILLS} kills of the hub and ${KILLS} of phones: equal`);
  } finally {
    await Promise.all(phones.map(({ carrier }) => carrier.stop()));
    await hub.remove();
  }
}, 600_000);

test('a cluster of three goes on with two', async () => {
  const dir = mkdtempSync(join(tmpdir(), 'coatwait-cluster-'));
  const passwordHash = hashed(PASSWORD);
  const routes = await Promise.all([freePort(), freePort(), freePort()]);
  const servers = await Promise.all(
    routes.map(async (port, n) =>
      startNats({
        dir: join(dir, String(n)),
        port: await freePort(),
        passwordHash,
        name: `hub-${n}`,
        cluster: { port, routes },
      }),
    ),
  );
  const phones: Phone[] = [];
  try {
    for (const { port } of servers) phones.push(await openPhone({ address: `ws://127.0.0.1:${port}/hub` }));
    await Promise.all(phones.map((phone) => logSome(phone, 10)));
    await untilAlike(phones, 30);
    const startedMs = Date.now();
    await servers[0]?.kill();
    const left = phones.slice(1);
    await Promise.all(left.map((phone) => logSome(phone, 10)));
    await untilAlike(left, 50);
    console.log(`cluster: all there ${Date.now() - startedMs} ms after one of three was killed`);
  } finally {
    await Promise.all(phones.map(({ carrier }) => carrier.stop()));
    await Promise.all(servers.map((server) => server.kill()));
    rmSync(dir, { recursive: true, force: true, maxRetries: 20 });
  }
}, 600_000);
