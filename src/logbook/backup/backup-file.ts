import type { Result } from '../../result';
import type { Loaded } from '../storage/store';
import { type OnProgress, readEntries, writeBackup } from './backup';
import { type BackupFailure, type PhotoMark, sha256 } from './content';
import { LOGBOOK, type Photo, placeOf, type Unpacked } from './unpack';
import { writeZip, type ZipFile } from './zip';

const JSON_TYPE = 'application/json';

/** What a backup file brings. */
export interface Brought extends Loaded {
  readonly photos: readonly Photo[];
}

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
export async function readBackupFile(
  file: Blob,
  takeApart: (file: Blob) => Promise<Result<Unpacked, BackupFailure>>,
  onProgress?: OnProgress,
): Promise<Result<Brought, BackupFailure>> {
  const unpacked = await takeApart(file);
  if (!unpacked.ok) return unpacked;
  const read = await readEntries(unpacked.value.content, onProgress);
  if (!read.ok) return read;
  const known = new Set(read.value.photos.map(({ id }) => id));
  return {
    ok: true,
    value: { ...read.value, photos: unpacked.value.photos.filter(({ id }) => known.has(id)) },
  };
}
