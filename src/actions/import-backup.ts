import { type Photo, readBackupFile } from '../logbook/backup-file';
import { openPhotos, type Photos } from '../logbook/photos';
import { sentenceForBackup } from '../logbook/sentence';
import type { StorageFailure } from '../logbook/storage-failure';
import { fail, type Result, succeed } from '../result';
import type { ActionNeeds } from './log';
import { type Refused, refuse } from './refused';

/** Adds what a backup file holds to this logbook, all or nothing; gives how many entries were new. */
export async function importBackup(
  { logbook, now, zone }: ActionNeeds,
  file: Blob,
  photos: Photos = openPhotos(),
): Promise<Result<number, Refused>> {
  const read = await readBackupFile(file, now());
  if (!read.ok) return fail({ sentence: sentenceForBackup(read.failure), fields: {} });
  // Photos first: an entry never points at a photo that is still to come.
  const kept = await keepPhotos(photos, read.value.photos);
  if (!kept.ok) return refuse(kept.failure, zone());
  const before = logbook.shop.value.entries.size;
  const taken = await logbook.take(read.value);
  return taken.ok ? succeed(logbook.shop.value.entries.size - before) : refuse(taken.failure, zone());
}

async function keepPhotos(photos: Photos, brought: readonly Photo[]): Promise<Result<void, StorageFailure>> {
  for (const { id, picture } of brought) {
    if (await photos.read(id)) continue;
    const kept = await photos.keep(id, picture);
    if (!kept.ok) return kept;
  }
  return succeed(undefined);
}
