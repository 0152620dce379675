import { describe, expect, test } from 'vitest';
import { readEntries, writeBackup } from '../../../src/logbook/backup/backup';
import { readBackupFile, writeBackupFile } from '../../../src/logbook/backup/backup-file';
import { type Content, checksum, type PhotoMark, readContent } from '../../../src/logbook/backup/content';
import { unpack } from '../../../src/logbook/backup/unpack';
import { crc32 } from '../../../src/logbook/crc32';
import { A_YEAR_ON_MS, entry, id, startPiece } from '../entries';
import { readBackup } from './read-backup';

const started = entry(1, startPiece());
const contentOf = (more: Partial<Content>): Content => ({
  entries: [],
  setAside: [],
  photos: [],
  sha256: '',
  ...more,
});
const torn = (count: number) => Array.from({ length: count }, (_, n) => `x${n}`);

describe('the entries of a backup', () => {
  test('are read with as much unread as an app could have left', async () => {
    expect(await readEntries(contentOf({ entries: [started, ...torn(10_000)] }))).toMatchObject({
      ok: true,
      value: { entries: [started] },
    });
    expect(await readEntries(contentOf({ entries: [started, ...torn(10_001)] }))).toEqual({
      ok: false,
      failure: { kind: 'too-many-unread' },
    });
  });

  test('are read a few at a time, and how far it is is told', async () => {
    const told: unknown[] = [];
    const entries = Array.from({ length: 1200 }, (_, n) => entry(n + 1, startPiece()));
    let between = 0;
    const timer = setInterval(() => between++, 0);
    await readEntries(contentOf({ entries }), (done, of) => told.push([done, of, between > 0 || done < 900]));
    clearInterval(timer);
    expect(told).toEqual([
      [499, 1200, true],
      [999, 1200, true],
    ]);
  });

  test('name the faults of what cannot be read by their places, where nothing can', async () => {
    const faulty = { ...started, name: '', base: 'mud' };
    const read = await readEntries(contentOf({ entries: [faulty], setAside: [{ key: 'old', raw: 'x' }] }));
    expect(read).toEqual({
      ok: false,
      failure: {
        kind: 'faulty-entries',
        issues: [
          { path: 'entries.0.name', problem: expect.any(String) },
          { path: 'entries.0.base', problem: expect.any(String) },
          { path: 'setAside.0.', problem: expect.any(String) },
        ],
      },
    });
  });

  test('are none in a backup of a phone that had nothing else than what it could not read', async () => {
    expect(await readEntries(contentOf({ setAside: [{ key: 'old', raw: 'x' }] }))).toMatchObject({
      ok: true,
      value: { entries: [], setAside: [{ key: 'old', raw: 'x' }] },
    });
    expect(await readEntries(contentOf({}))).toEqual({
      ok: true,
      value: { entries: [], setAside: [], photos: [] },
    });
  });

  test('that were set aside come under the key that they had, up to 200 signs', async () => {
    const keys = async (...setAside: unknown[]) => {
      const read = await readEntries(contentOf({ setAside }));
      return read.ok && read.value.setAside.map(({ key }) => key);
    };
    expect(await keys({ key: 'k'.repeat(200), raw: 1 })).toEqual(['k'.repeat(200)]);
    expect(await keys({ key: 'k'.repeat(201), raw: 1 }, { key: 7, raw: 1 }, 'k', null)).toEqual([]);
  });

  test('of no id are named after what is in them', async () => {
    const read = await readEntries(contentOf({ entries: [started, 'torn', { id: 'x' }, { id: id(5) }] }));
    const sum = (raw: unknown) => crc32(new TextEncoder().encode(JSON.stringify(raw))).toString(16);
    expect(read.ok && read.value.setAside.map(({ key }) => key)).toEqual([
      `unread-${sum('torn')}`,
      `unread-${sum({ id: 'x' })}`,
      id(5),
    ]);
  });
});

describe('the content of a backup', () => {
  const backupOf = async (more: object) => {
    const content = { entries: [], setAside: [], photos: [], ...more };
    return JSON.stringify({
      format: 'coatwait-logbook',
      version: 2,
      ...content,
      sha256: await checksum([content.entries, content.setAside, content.photos]),
    });
  };

  test('of more than 200 million signs is too large', async () => {
    const ofLength = (length: number) => ({ length, toString: () => '' }) as unknown as string;
    expect(await readContent(ofLength(2e8 + 1))).toEqual({ ok: false, failure: { kind: 'too-large' } });
    expect(await readContent(ofLength(2e8))).toEqual({ ok: false, failure: { kind: 'not-json' } });
  });

  test.each<{ what: string; more: object; kind: string }>([
    { what: 'with no list of photos', more: { photos: 'none' }, kind: 'not-a-backup' },
    { what: 'with nothing set aside', more: { setAside: null }, kind: 'not-a-backup' },
    { what: 'of no version', more: { version: 'two' }, kind: 'ok' },
    { what: 'of this version', more: {}, kind: 'ok' },
  ])('$what: $kind', async ({ more, kind }) => {
    const read = await readContent(await backupOf(more));
    expect(read.ok ? 'ok' : read.failure.kind).toBe(kind);
  });

  test('of a newer version says which', async () => {
    expect(await readContent(await backupOf({ version: 3 }))).toEqual({
      ok: false,
      failure: { kind: 'newer-backup', version: 3 },
    });
  });

  test('names only photos that say what they are', async () => {
    const mark = { id: id(7), type: 'image/jpeg', sha256: 'x' };
    const photos = [
      mark,
      { ...mark, id: 7 },
      { ...mark, type: 'image/svg+xml' },
      { ...mark, type: undefined },
      { ...mark, sha256: 1 },
      { ...mark, id: 'no id' },
      [mark],
      null,
      { ...mark, id: id(8), type: 'image/webp' },
      { ...mark, id: id(9), type: 'image/png' },
    ] as unknown as PhotoMark[];
    const read = await readBackup(
      await writeBackup({ entries: [started], setAside: [] }, A_YEAR_ON_MS, photos),
    );
    expect(read.ok && read.value.photos.map((one) => one.id)).toEqual([id(7), id(8), id(9)]);
  });
});

describe('a backup file', () => {
  const sized = (size: number, content = '') =>
    ({
      size,
      slice: () => new Blob(['{']),
      text: async () => content,
      arrayBuffer: async () => new ArrayBuffer(0),
    }) as unknown as Blob;
  const read = (file: Blob) => readBackupFile(file, unpack);

  test('whose logbook is larger than 400 MB is not opened', async () => {
    expect(await read(sized(4e8 + 1))).toEqual({ ok: false, failure: { kind: 'too-large' } });
    expect(await read(sized(4e8))).toEqual({ ok: false, failure: { kind: 'not-json' } });
  });

  test('that is taken away while it is read cannot be read', async () => {
    const gone = {
      ...sized(10),
      slice: () => ({ arrayBuffer: () => Promise.reject(new DOMException('', 'NotFoundError')) }),
    } as unknown as Blob;
    expect(await read(gone)).toEqual({ ok: false, failure: { kind: 'unreadable' } });
  });

  test('is written without a photo that can no longer be read, and read without one that nothing names', async () => {
    const picture = new Blob(['x'], { type: 'image/jpeg' });
    const gone = Object.assign(new Blob(['y'], { type: 'image/jpeg' }), {
      arrayBuffer: () => Promise.reject(new Error('gone')),
    });
    const file = await writeBackupFile(
      { entries: [started], setAside: [] },
      [
        { id: id(7), picture: gone },
        { id: id(8), picture },
        { id: 'no id', picture },
      ],
      A_YEAR_ON_MS,
    );
    const back = await read(file);
    expect(back.ok && back.value.photos.map((photo) => photo.id)).toEqual([id(8)]);
  });

  test('tells how many of its photos are looked at', async () => {
    const photos = [7, 8, 9].map((n) => ({ id: id(n), picture: new Blob([`${n}`], { type: 'image/png' }) }));
    const told: unknown[] = [];
    await unpack(
      await writeBackupFile({ entries: [started], setAside: [] }, photos, A_YEAR_ON_MS),
      (done, of) => told.push([done, of]),
    );
    expect(told).toEqual([
      [0, 3],
      [1, 3],
      [2, 3],
    ]);
  });
});
