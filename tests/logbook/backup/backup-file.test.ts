import 'fake-indexeddb/auto';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readBackupFile, writeBackupFile } from '../../../src/logbook/backup/backup-file';
import { type Photo, unpack } from '../../../src/logbook/backup/unpack';
import { readZip, writeZip } from '../../../src/logbook/backup/zip';
import { crc32 } from '../../../src/logbook/crc32';
import type { Entry } from '../../../src/logbook/entry';
import { A_YEAR_ON_MS, id, SHIPPED } from '../entries';

const entries = SHIPPED as unknown as Entry[];
const picture = (...bytes: number[]) => new Blob([new Uint8Array(bytes)], { type: 'image/jpeg' });
const photos: Photo[] = [
  { id: id(1), picture: picture(1, 2, 3) },
  { id: id(2), picture: picture() },
];
const whole = await writeBackupFile({ entries, setAside: [] }, photos, A_YEAR_ON_MS);
const bytesOf = async (blob: Blob) => new Uint8Array(await blob.arrayBuffer());
const read = (file: Blob) => readBackupFile(file, unpack);

test('CRC-32 of "123456789" is CBF43926', () => {
  // The check value of CRC-32/ISO-HDLC in the Catalogue of parametrised CRC algorithms (G. Cook).
  expect(crc32(new TextEncoder().encode('123456789')).toString(16)).toBe('cbf43926');
});

test('a ZIP gives back its files, whatever is in them', async () => {
  const some = fc.uniqueArray(
    fc.record({ name: fc.string({ minLength: 1, maxLength: 20 }), bytes: fc.uint8Array({ maxLength: 50 }) }),
    { selector: ({ name }) => new TextDecoder().decode(new TextEncoder().encode(name)), maxLength: 6 },
  );
  await fc.assert(
    fc.asyncProperty(some, async (files) => {
      const zip = await writeZip(
        files.map(({ name, bytes }) => ({ name, content: new Blob([bytes as Uint8Array<ArrayBuffer>]) })),
      );
      const back = await readZip(zip);
      if (!back.ok) throw new Error(back.failure);
      const found = await Promise.all(
        [...back.value].map(async ([name, look]) => ({ name, bytes: await bytesOf((await look()) as Blob) })),
      );
      expect(found).toEqual(files.map(({ name, bytes }) => ({ name, bytes: new Uint8Array(bytes) })));
    }),
    { numRuns: 60 },
  );
});

test('a backup file brings back every entry and every photo, with its type', async () => {
  const back = await read(whole);
  if (!back.ok) throw new Error(JSON.stringify(back.failure));
  expect(back.value.entries).toEqual(entries);
  const found = await Promise.all(
    back.value.photos.map(async ({ id, picture }) => ({
      id,
      type: picture.type,
      bytes: [...(await bytesOf(picture))],
    })),
  );
  expect(found).toEqual([
    { id: id(1), type: 'image/jpeg', bytes: [1, 2, 3] },
    { id: id(2), type: 'image/jpeg', bytes: [] },
  ]);
});

test('a logbook alone, as version 1 wrote it, is a backup without photos', async () => {
  const text = JSON.stringify({ entries, setAside: [] });
  const bytes = new TextEncoder().encode(JSON.stringify([entries, []]));
  const digest = new Uint8Array(await crypto.subtle.digest('SHA-256', bytes));
  const sha256 = [...digest].map((byte) => byte.toString(16).padStart(2, '0')).join('');
  const file = { format: 'coatwait-logbook', version: 1, ...JSON.parse(text), sha256 };
  expect(await read(new Blob([JSON.stringify(file)]))).toEqual({
    ok: true,
    value: { entries, setAside: [], photos: [] },
  });
});

describe('a backup file is refused whole', () => {
  const remake = async (change: (files: Map<string, Blob>) => void): Promise<Blob> => {
    const files = await readZip(whole);
    const map = new Map<string, Blob>();
    for (const [name, look] of files.ok ? files.value : []) map.set(name, (await look()) as Blob);
    change(map);
    return writeZip([...map].map(([name, content]) => ({ name, content })));
  };
  test.each([
    {
      why: 'without its logbook',
      change: (f: Map<string, Blob>) => f.delete('logbook.json'),
      kind: 'not-a-backup',
    },
    {
      why: 'without a photo',
      change: (f: Map<string, Blob>) => f.delete(`photos/${id(1)}`),
      kind: 'damaged',
    },
    {
      why: 'with a photo changed',
      change: (f: Map<string, Blob>) => f.set(`photos/${id(1)}`, picture(1, 2, 4)),
      kind: 'damaged',
    },
    {
      why: 'with another logbook',
      change: (f: Map<string, Blob>) => f.set('logbook.json', new Blob(['{}'])),
      kind: 'not-a-backup',
    },
  ])('$why: $kind', async ({ change, kind }) => {
    expect(await read(await remake((files) => void change(files)))).toMatchObject({
      ok: false,
      failure: { kind },
    });
  });

  test.each(['', 'PK', 'PK\x03'])('of %j alone is none', async (text) => {
    expect(await read(new Blob([text]))).toMatchObject({ ok: false, failure: { kind: 'not-json' } });
  });

  test('with names too long to be read at once', async () => {
    const content = new Blob([]);
    const files = Array.from({ length: 330 }, (_, n) => ({ name: `${n}`.padStart(64_000, 'x'), content }));
    expect(await read(await writeZip(files))).toMatchObject({ ok: false, failure: { kind: 'damaged' } });
  });

  test('with photos that share their bytes, so that a small file would become a large one', async () => {
    const bytes = await bytesOf(
      await writeZip(['a', 'b'].map((name) => ({ name, content: picture(1, 2, 3) }))),
    );
    const view = new DataView(bytes.buffer);
    const directory = view.getUint32(bytes.length - 6, true);
    view.setUint32(directory + 46 + 1 + 42, 0, true); // APPNOTE 4.4.16: where the second begins
    expect(await readZip(new Blob([bytes]))).toEqual({ ok: false, failure: 'not-a-zip' });
  });

  test('packed by another program', async () => {
    const bytes = await bytesOf(whole);
    const directory = new DataView(bytes.buffer).getUint32(bytes.length - 6, true);
    bytes[directory + 10] = 8; // APPNOTE 4.4.5: deflated
    expect(await read(new Blob([bytes]))).toMatchObject({ ok: false, failure: { kind: 'packed' } });
  });

  test('with any byte changed, or cut anywhere: never a crash, never another content', async () => {
    const bytes = await bytesOf(whole);
    const harm = fc.record({
      at: fc.integer({ min: 0, max: bytes.length - 1 }),
      by: fc.integer({ min: 1, max: 255 }),
      cut: fc.boolean(),
    });
    await fc.assert(
      fc.asyncProperty(harm, async ({ at, by, cut }) => {
        const harmed = cut ? bytes.slice(0, at) : bytes.slice();
        if (!cut) harmed[at] = (harmed[at] as number) ^ by;
        const back = await read(new Blob([harmed]));
        // Bytes that say nothing, such as a date, may change; what comes back is then the same.
        if (back.ok) expect(back.value.entries).toEqual(entries);
      }),
      { numRuns: 300 },
    );
  });
});
