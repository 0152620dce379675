import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { WebSocket } from 'ws';
import { type Carrier, carry } from '../../src/hub/carry';
import { openKnownThere } from '../../src/hub/known-there';
import { natsAt } from '../../src/hub/nats';
import { photosOf, sendPhotos } from '../../src/hub/photos';
import { type ShopKey, shopKey } from '../../src/hub/seal';
import type { EntryBody } from '../../src/logbook/entry';
import { newId } from '../../src/logbook/ids/new-id';
import { createLogbook, type Logbook } from '../../src/logbook/logbook';
import type { Database, Row } from '../../src/logbook/storage/database';
import { openPhotos, type Photos } from '../../src/logbook/storage/photos';
import { openStore } from '../../src/logbook/storage/store';
import { freePort, hashed, type Nats, type NatsGiven, startNats } from './nats-server.mjs';

// A hub of our own, with the real engine, and phones that join it: everything of the app but its screens.
globalThis.WebSocket ??= WebSocket as unknown as typeof globalThis.WebSocket;

export const PASSWORD = '0123456789abcdefghjk';
export const SECRET = 'mnpqrstvwxyz0123456789abcdefghjk';
const passwordHash = hashed(PASSWORD);

export interface Hub {
  readonly address: string;
  readonly port: number;
  /** As a machine dies: without a word, and what it kept stays. */
  kill(): Promise<void>;
  start(): Promise<void>;
  /** Ends it and takes away what it kept. */
  remove(): Promise<void>;
}

export async function startHub(given: Partial<NatsGiven> = {}): Promise<Hub> {
  const dir = mkdtempSync(join(tmpdir(), 'coatwait-hub-'));
  const port = given.port ?? (await freePort());
  const all = { dir, passwordHash, ...given, port };
  let nats: Nats = await startNats(all);
  return {
    address: `ws://127.0.0.1:${port}/hub`,
    port,
    kill: () => nats.kill(),
    async start() {
      nats = await startNats(all);
    },
    async remove() {
      await nats.kill();
      rmSync(dir, { recursive: true, force: true, maxRetries: 20 });
    },
  };
}

/** A database in memory that outlives the app on it, as the disk of a phone does. */
export function aDisk(): Database {
  const rows = new Map<string, unknown>();
  const sorted = (): string[] => [...rows.keys()].sort();
  return {
    async readAfter(key, most) {
      const keys = sorted().filter((one) => key === undefined || one > key);
      return keys.slice(0, most).map((one) => [one, structuredClone(rows.get(one))] as const);
    },
    read: async (keys) => keys.map((key) => [key, structuredClone(rows.get(key))] as const),
    keys: async () => sorted(),
    count: async () => rows.size,
    async write(fresh: readonly Row[]) {
      for (const [key, value] of structuredClone(fresh)) rows.set(key, value);
    },
    async remove(keys) {
      for (const key of keys) rows.delete(key);
    },
    empty: async () => rows.clear(),
  };
}

export interface Phone {
  readonly book: Logbook;
  readonly photos: Photos;
  readonly carrier: Carrier;
  /** Everything kept, as the disk holds it. */
  kept(): Promise<string>;
  /** As a phone dies: nothing is waited for, and what it kept stays. */
  die(): void;
  /** The app is opened again on what the phone has kept. */
  reopen(): Promise<Phone>;
}

export interface PhoneGiven {
  readonly password?: string;
  readonly shop?: ShopKey;
  readonly entries?: Database;
  readonly known?: Database;
  readonly photos?: Database;
}

/** A phone with the app open and joined to a hub. */
export async function openPhone({ address }: Pick<Hub, 'address'>, given: PhoneGiven = {}): Promise<Phone> {
  const { entries = aDisk(), known = aDisk(), photos = aDisk(), password = PASSWORD } = given;
  const shop = given.shop ?? (await shopKey(SECRET));
  let isDead = false;
  // What a dead phone would still write is never written.
  const alive = (disk: Database): Database => ({
    ...disk,
    write: (rows) => (isDead ? new Promise(() => undefined) : disk.write(rows)),
  });
  const none = { read: async () => undefined, keep: async () => undefined };
  const store = openStore('coatwait', alive(entries), none, () => undefined);
  const now = (): number => Date.now();
  const book = createLogbook({ store, now, zone: () => 'Europe/London', newId });
  await book.open();
  const there = await openKnownThere(alive(known));
  const pictures = openPhotos(photos);
  const carrier = carry({
    book,
    password,
    shop,
    connect: natsAt(address),
    known: there,
    now,
    alongside: (link, tell) =>
      sendPhotos(photosOf(book.shop.peek()), { link, shop, known: there, photos: pictures }, tell),
  });
  return {
    book,
    photos: pictures,
    carrier,
    kept: async () => JSON.stringify(await entries.readAfter(undefined, 1_000_000)),
    die() {
      isDead = true;
      store.close();
      void carrier.stop();
    },
    reopen: () => openPhone({ address }, { ...given, entries, known, photos }),
  };
}

/** Something to log; each is another entry. */
export const said = (units: 'metric' | 'us' = 'metric'): EntryBody => ({
  kind: 'settings-changed',
  patch: { units },
});

/** Logs so many. */
export async function logSome({ book }: Phone, count: number): Promise<void> {
  for (let n = 0; n < count; n++) await book.append(said(n % 2 ? 'us' : 'metric'));
}
