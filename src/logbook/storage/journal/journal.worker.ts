import { type Database, openDatabase } from '../database';
import type { Answered, Asked, Compared, Unread } from './ask';
import { readLines, toLines } from './lines';

// The worker that keeps the journal. A file can be written by one worker alone, so each has its own; the file of a closed tab is taken
// up by the next, and all of them are read.

const CHUNK = 500;
/** Written anew when so much of it says nothing, or says it again. */
const MOST_SPARE_BYTES = 256_000;

interface Own {
  readonly folder: FileSystemDirectoryHandle;
  readonly file: FileSystemFileHandle;
  readonly handle: FileSystemSyncAccessHandle;
}

let opened: Promise<Own> | undefined;
let database: Database | undefined;

function own(name: string): Promise<Own> {
  opened ??= open(name);
  opened.catch(() => {
    opened = undefined;
  });
  return opened;
}

async function open(name: string): Promise<Own> {
  const root = await navigator.storage.getDirectory();
  const folder = await root.getDirectoryHandle(`${name}-journal`, { create: true });
  for (const file of await filesIn(folder)) {
    const handle = await file.createSyncAccessHandle().catch(() => undefined); // another tab's
    if (handle) return { folder, file, handle };
  }
  const file = await folder.getFileHandle(`${crypto.randomUUID()}.log`, { create: true });
  return { folder, file, handle: await file.createSyncAccessHandle() };
}

async function filesIn(folder: FileSystemDirectoryHandle): Promise<FileSystemFileHandle[]> {
  const files: FileSystemFileHandle[] = [];
  for await (const one of folder.values()) if (one.kind === 'file') files.push(one as FileSystemFileHandle);
  return files;
}

/** Adds lines at the end, all or none, and sees them to the disk. */
function write(handle: FileSystemSyncAccessHandle, lines: Uint8Array<ArrayBuffer>): void {
  const end = handle.getSize();
  try {
    if (handle.write(lines, { at: end }) < lines.length) throw new DOMException('', 'QuotaExceededError');
    handle.flush();
  } catch (error) {
    handle.truncate(end);
    throw error;
  }
}

function readOwn({ handle }: Own): Uint8Array {
  const bytes = new Uint8Array(handle.getSize());
  handle.read(bytes, { at: 0 });
  return bytes;
}

/** Everything in all files. A torn tail of the own one is closed, and it is written anew where much of it says nothing. */
async function readAll(mine: Own): Promise<Map<string, unknown>> {
  const bytes = readOwn(mine);
  if (bytes.length > 0 && bytes.at(-1) !== 0x0a) write(mine.handle, new Uint8Array([0x0a]));
  const read = readLines(bytes);
  const rows = new Map(read.rows);
  if (read.spare > MOST_SPARE_BYTES && read.spare > bytes.length / 2) await writeAnew(mine, rows);
  for (const file of await filesIn(mine.folder)) {
    if (await file.isSameEntry(mine.file)) continue;
    const others = await file.getFile().then(
      (one) => one.arrayBuffer(),
      () => undefined,
    );
    if (others) for (const [key, value] of readLines(new Uint8Array(others)).rows) rows.set(key, value);
  }
  return rows;
}

/** A new file, whole on the disk before the old one goes. */
async function writeAnew({ folder, file, handle }: Own, rows: ReadonlyMap<string, unknown>): Promise<void> {
  const next = await folder.getFileHandle(`${crypto.randomUUID()}.log`, { create: true });
  const fresh = await next.createSyncAccessHandle();
  write(fresh, toLines([...rows]));
  opened = Promise.resolve({ folder, file: next, handle: fresh });
  handle.close();
  await folder.removeEntry(file.name);
}

/** What only the journal has; what only the database has is added to the journal. */
async function compare(name: string, unread: Unread): Promise<Compared> {
  await letGoOfWhatIsGone(name);
  const mine = await own(name);
  const rows = await readAll(mine);
  database ??= openDatabase(name as 'coatwait');
  const there = await database.keys().catch(() => undefined); // damaged: then the journal has all there is
  const keys = new Set(there);
  const isUnread = (key: string): boolean => unread === 'all' || unread.includes(key);
  const lost = [...rows].filter(([key]) => !keys.has(key) || isUnread(key));
  const more = [...keys].filter((key) => !rows.has(key));
  const { handle } = await own(name);
  for (let from = 0; from < more.length; from += CHUNK) {
    const some = await database.read(more.slice(from, from + CHUNK)).catch(() => []);
    write(handle, toLines(some.filter(([, value]) => value !== undefined)));
  }
  return { lost, size: rows.size + more.length };
}

/** A file that was taken away under an open handle is written into nothing. */
async function letGoOfWhatIsGone(name: string): Promise<void> {
  const { folder, file, handle } = await own(name);
  const isThere = await folder.getFileHandle(file.name).then(
    () => true,
    () => false,
  );
  if (isThere) return;
  handle.close();
  opened = undefined;
}

const answer = async ({ name, question }: Asked): Promise<Answered['value']> => {
  if (question.ask === 'compare') return compare(name, question.unread);
  write((await own(name)).handle, toLines(question.rows));
  return true;
};

// One after another: what is appended while all is compared must not be taken for lost, nor a file be written anew under a write.
let last: Promise<unknown> = Promise.resolve();
addEventListener('message', ({ data }: MessageEvent<Asked>) => {
  last = last.then(async () => {
    const value = await answer(data).catch(() => undefined);
    postMessage({ number: data.number, value } satisfies Answered);
  });
});
