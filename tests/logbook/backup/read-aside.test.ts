import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { writeBackupFile } from '../../../src/logbook/backup/backup-file';
import { readAside } from '../../../src/logbook/backup/read-aside';
import { unpack } from '../../../src/logbook/backup/unpack';
import { A_YEAR_ON_MS, entry, id, startPiece } from '../entries';

/** A worker as the browser starts one, in which this stands in for the file that it would load. */
class InPlace {
  static work: (worker: InPlace, file: Blob) => void = () => undefined;
  static running = 0;
  onmessage?: (event: { data: unknown }) => void;
  onerror?: () => void;
  constructor() {
    InPlace.running++;
  }
  postMessage(file: Blob): void {
    InPlace.work(this, file);
  }
  terminate(): void {
    InPlace.running--;
  }
}

beforeEach(() => {
  InPlace.running = 0;
  vi.stubGlobal('Worker', InPlace);
});
afterEach(() => vi.unstubAllGlobals());

const entries = [entry(1, startPiece())];
const photos = [{ id: id(7), picture: new Blob(['x'], { type: 'image/jpeg' }) }];
const file = await writeBackupFile({ entries, setAside: [] }, photos, A_YEAR_ON_MS);
const honestly = async (worker: InPlace, whole: Blob) => {
  const unpacked = await unpack(whole, (done, of) => worker.onmessage?.({ data: { done, of } }));
  worker.onmessage?.({ data: { unpacked } });
};
const watch = () => {
  const told: (readonly [done: number, of: number])[] = [];
  const stopping = new AbortController();
  const onProgress = (done: number, of: number) => void told.push([done, of]);
  return { told, stopping, watch: { onProgress, signal: stopping.signal } };
};

test('a backup is taken apart aside, and how far it is is told', async () => {
  InPlace.work = honestly;
  const { told, watch: watched } = watch();
  expect(await readAside(file, watched)).toMatchObject({
    ok: true,
    value: { entries, photos: [{ id: id(7) }] },
  });
  expect(told).toEqual([[0, 1]]);
  expect(InPlace.running).toBe(0);
});

test('it is read all the same where nobody watches', async () => {
  InPlace.work = honestly;
  expect(await readAside(file)).toMatchObject({ ok: true, value: { entries } });
});

test('where it is stopped nothing is taken, and the worker ends', async () => {
  InPlace.work = () => undefined; // a file that takes for ever
  const { stopping, watch: watched } = watch();
  const read = readAside(file, watched);
  stopping.abort();
  expect(await read).toEqual({ ok: false, failure: { kind: 'stopped' } });
  expect(InPlace.running).toBe(0);
});

test('where the worker fails the file cannot be read', async () => {
  InPlace.work = (worker) => worker.onerror?.();
  expect(await readAside(file)).toEqual({ ok: false, failure: { kind: 'unreadable' } });
  expect(InPlace.running).toBe(0);
});
