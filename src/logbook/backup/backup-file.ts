import { fail, type Result, succeed } from '../../result';
import type { Loaded } from '../storage/store';
import {
  type BackupFailure,
  type OnProgress,
  type PhotoMark,
  readBackup,
  sha256,
  writeBackup,
} from './backup';
import { readZip, writeZip, type ZipFile, type ZipFiles } from './zip';

/*
 * A backup file is a ZIP with
 *   logbook.json   the logbook, as backup.ts describes it
 *   photos/<id>    each photo as it was kept, by its id; its type and SHA-256 stand in the logbook
 * A logbook.json alone, without photos, is a backup too.
 */
const LOGBOOK = 'logbook.json';
const JSON_TYPE = 'application/json';
const MOST_LOGBOOK_BYTES = 400_000_000;
const MOST_PHOTO_BYTES = 50_000_000;
const ZIP_BEGINS = 0x504b0304;

/** A photo with its id. */
export interface Photo {
  readonly id: string;
  readonly picture: Blob;
}

/** What a backup file brings. */
export interface Brought extends Loaded {
  readonly photos: readonly Photo[];
}

const placeOf = (id: string): string => `photos/${id}`;

/** The backup file of everything kept. A photo that the browser can no longer read must not cost the whole backup. */
export async function writeBackupFile(
  loaded: Loaded,
  photos: readonly Photo[],
  nowMs: number,
): Promise<Blob> {
  const marks: PhotoMark[] = [];
  const pictures: ZipFile[] = [];
  for (const { id, picture } of photos) {
    const bytes = await picture.arrayBuffer().catch(() => undefined);
    if (!bytes) continue;
    marks.push({ id, type: picture.type, sha256: await sha256(new Uint8Array(bytes)) });
    pictures.push({ name: placeOf(id), content: picture });
  }
  const logbook = new Blob([await writeBackup(loaded, nowMs, marks)], { type: JSON_TYPE });
  return writeZip([{ name: LOGBOOK, content: logbook }, ...pictures]);
}

/** What a backup file holds, checked whole, or why nothing of it can be taken. */
export const readBackupFile = (
  file: Blob,
  onProgress?: OnProgress,
): Promise<Result<Brought, BackupFailure>> =>
  // The file may be taken away while it is read, or be larger than the memory.
  readWhole(file, onProgress).catch(() => fail({ kind: 'unreadable' }));

async function readWhole(file: Blob, onProgress?: OnProgress): Promise<Result<Brought, BackupFailure>> {
  const files = await filesOf(file);
  if (!files.ok) return files;
  const logbook = await files.value.get(LOGBOOK)?.();
  if (!logbook) return fail({ kind: 'not-a-backup' });
  if (logbook.size > MOST_LOGBOOK_BYTES) return fail({ kind: 'too-large' });
  const read = await readBackup(await logbook.text(), onProgress);
  if (!read.ok) return read;
  const photos: Photo[] = [];
  for (const [index, mark] of read.value.photos.entries()) {
    onProgress?.(index, read.value.photos.length);
    const picture = await files.value.get(placeOf(mark.id))?.();
    if (!picture || picture.size > MOST_PHOTO_BYTES) return fail({ kind: 'damaged' });
    if ((await sha256(new Uint8Array(await picture.arrayBuffer()))) !== mark.sha256)
      return fail({ kind: 'damaged' });
    photos.push({ id: mark.id, picture: picture.slice(0, picture.size, mark.type) });
  }
  return succeed({ ...read.value, photos });
}

async function filesOf(file: Blob): Promise<Result<ZipFiles, BackupFailure>> {
  const head = new DataView(await file.slice(0, 4).arrayBuffer());
  if (head.byteLength < 4 || head.getUint32(0) !== ZIP_BEGINS)
    return succeed(new Map([[LOGBOOK, async () => file]]));
  const zip = await readZip(file);
  if (zip.ok) return zip;
  return fail({ kind: zip.failure === 'packed' ? 'packed' : 'damaged' });
}
