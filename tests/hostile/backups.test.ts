import 'fake-indexeddb/auto';
import fc from 'fast-check';
import { afterAll, expect, test } from 'vitest';
import { writeBackup } from '../../src/logbook/backup/backup';
import { readBackupFile, writeBackupFile } from '../../src/logbook/backup/backup-file';
import { unpack } from '../../src/logbook/backup/unpack';
import { type Entry, parseEntry } from '../../src/logbook/entry';
import { fold } from '../../src/logbook/fold/fold';
import { newId } from '../../src/logbook/ids/new-id';
import { createLogbook } from '../../src/logbook/logbook';
import { sentenceForBackup } from '../../src/logbook/sentence';
import { openDatabase } from '../../src/logbook/storage/database';
import { openStore } from '../../src/logbook/storage/store';
import { readBackup } from '../logbook/backup/read-backup';
import { A_YEAR_ON_MS, SHIPPED } from '../logbook/entries';
import { harmed, isPolluted, nasty } from './nasty';

let tried = 0;
const entries = SHIPPED as unknown as Entry[];
const store = openStore('coatwait-demo', openDatabase('hostile'));
afterAll(() => {
  store.close();
  process.stdout.write(`hostile backups tried: ${tried}\n`);
});

const harm = fc.record({
  at: fc.nat(),
  path: fc.array(fc.nat({ max: 12 }), { minLength: 0, maxLength: 5 }),
  by: nasty,
  how: fc.integer({ min: 0, max: 5 }),
});

/** What is taken is whole and known; what is refused is said. Nothing throws, runs, or gets into a prototype. */
function expectTakenOrTold(read: Awaited<ReturnType<typeof readBackup | typeof readBackupFile>>): void {
  tried++;
  if (read.ok) {
    for (const entry of read.value.entries) expect(parseEntry(entry, Number.POSITIVE_INFINITY).ok).toBe(true);
    fold(read.value.entries);
  } else expect(sentenceForBackup(read.failure)).toMatch(/^[^<]*\S/);
  expect(isPolluted()).toBe(false);
}

test('an entry with anything anywhere in it, under a right checksum', async () => {
  await fc.assert(
    fc.asyncProperty(harm, async ({ at, path, by, how }) => {
      const bad = harmed(entries[at % entries.length], path, by, how) as Entry;
      const text = await writeBackup({ entries: [...entries.slice(0, 3), bad], setAside: [] }, A_YEAR_ON_MS);
      const read = await readBackup(text);
      expectTakenOrTold(read);
      // One odd entry never costs the others.
      if (read.ok) expect(read.value.entries.slice(0, 3)).toEqual(entries.slice(0, 3));
      if (read.ok) expect(read.value.entries.length + read.value.setAside.length).toBe(4);
    }),
    { numRuns: 2_500 },
  );
});

test('a backup with anything anywhere in it', async () => {
  const good: unknown = JSON.parse(
    await writeBackup({ entries: entries.slice(0, 4), setAside: [] }, A_YEAR_ON_MS),
  );
  await fc.assert(
    fc.asyncProperty(harm, async ({ path, by, how }) => {
      expectTakenOrTold(await readBackup(JSON.stringify(harmed(good, path, by, how)) ?? ''));
    }),
    { numRuns: 1_500 },
  );
});

test('a backup cut anywhere, or with any letter changed', async () => {
  const good = await writeBackup({ entries: entries.slice(0, 4), setAside: [] }, A_YEAR_ON_MS);
  await fc.assert(
    fc.asyncProperty(fc.nat({ max: good.length }), fc.string({ maxLength: 2 }), async (at, text) => {
      expectTakenOrTold(await readBackup(good.slice(0, at)));
      expectTakenOrTold(await readBackup(good.slice(0, at) + text + good.slice(at + 1)));
    }),
    { numRuns: 500 },
  );
});

test('a file of any bytes, and one that says it is a ZIP', async () => {
  const zip = new Uint8Array(
    await (
      await writeBackupFile({ entries: entries.slice(0, 4), setAside: [] }, [], A_YEAR_ON_MS)
    ).arrayBuffer(),
  );
  const spots = fc.array(fc.record({ at: fc.nat({ max: zip.length - 1 }), byte: fc.nat({ max: 255 }) }), {
    minLength: 1,
    maxLength: 6,
  });
  await fc.assert(
    fc.asyncProperty(fc.uint8Array({ maxLength: 200 }), spots, async (bytes, changes) => {
      const begun = new Uint8Array([0x50, 0x4b, 3, 4, ...bytes]);
      const changed = zip.slice();
      // The directory at the end is where a ZIP can lie.
      for (const { at, byte } of changes) changed[at % 3 ? changed.length - 1 - (at % 200) : at] = byte;
      for (const file of [bytes, begun, changed]) {
        const read = await readBackupFile(new Blob([file as Uint8Array<ArrayBuffer>]), unpack);
        expectTakenOrTold(read);
      }
    }),
    { numRuns: 500 },
  );
});

test('nothing of a refused backup is kept or shown', async () => {
  const logbook = createLogbook({ store, now: () => A_YEAR_ON_MS, zone: () => 'Europe/Berlin', newId });
  await fc.assert(
    fc.asyncProperty(harm, async ({ at, path, by, how }) => {
      const bad = harmed(entries[at % entries.length], path, by, how) as Entry;
      const read = await readBackup(
        await writeBackup({ entries: [...entries, bad], setAside: [] }, A_YEAR_ON_MS),
      );
      tried++;
      if (!read.ok) return;
      await logbook.take(read.value);
      const kept = await store.loadAll();
      expect(kept.ok && new Set(kept.value.entries.map(({ id }) => id))).toEqual(
        new Set(logbook.shop.value.entries.keys()),
      );
      expect(isPolluted()).toBe(false);
    }),
    { numRuns: 150 },
  );
});
