import { lightFormat } from 'date-fns/lightFormat';
import { writeBackupFile } from '../../logbook/backup/backup-file';
import { readAside, type Watch } from '../../logbook/backup/read-aside';
import type { Photo } from '../../logbook/backup/unpack';
import { sentenceForBackup } from '../../logbook/sentence';
import { openPhotos, type Photos } from '../../logbook/storage/photos';
import { fail, type Result, succeed } from '../../result';
import type { ActionNeeds } from '../log';
import { type Refused, refuse } from '../refused';

/** The backup file of everything in this logbook, photos included where they are on this device. */
export async function exportBackup(
  { logbook, now }: ActionNeeds,
  photos: Photos = openPhotos(),
): Promise<File> {
  const { shop, setAside, isWhole, open } = logbook;
  if (!isWhole.value) await open(); // a long logbook shows its first page before the rest is read
  const kept = { entries: [...shop.value.entries.values()], setAside: setAside.value };
  const found: Photo[] = [];
  for (const entry of kept.entries) {
    if (entry.kind !== 'card-photographed' && entry.kind !== 'photographed') continue;
    const picture = await photos.read(entry.photo);
    if (picture) found.push({ id: entry.photo, picture });
  }
  const day = lightFormat(now(), 'yyyy-MM-dd');
  const file = await writeBackupFile(kept, found, now());
  return new File([file], `coatwait-${day}.zip`, { type: file.type });
}

/** What a backup has brought: how many entries were new, how many are set aside unread, and what came of its photos. */
export interface Restored {
  readonly entries: number;
  readonly unread: number;
  readonly photos: number;
  readonly photosLeft: number;
}

/** Adds what a backup file holds to this logbook: all of its entries or none, and the photos that this device will keep. */
export async function importBackup(
  { logbook, zone }: ActionNeeds,
  file: Blob,
  photos: Photos = openPhotos(),
  watch?: Watch,
): Promise<Result<Restored, Refused>> {
  const read = await readAside(file, watch);
  if (!read.ok) return fail({ sentence: sentenceForBackup(read.failure), fields: {} });
  const missing = await notHere(photos, read.value.photos);
  const before = logbook.shop.value.entries.size;
  const taken = await logbook.take(read.value); // first: photos must not take the room that entries need
  const unread = read.value.setAside.length;
  if (taken.ok) {
    const entries = logbook.shop.value.entries.size - before;
    const photosLeft = await keepPhotos(photos, missing);
    return succeed({ entries, unread, photos: missing.length - photosLeft, photosLeft });
  }
  return refuse(taken.failure, zone());
}

async function notHere(photos: Photos, brought: readonly Photo[]): Promise<readonly Photo[]> {
  const missing: Photo[] = [];
  for (const photo of brought) if (!(await photos.read(photo.id))) missing.push(photo);
  return missing;
}

/** How many of them this device would not keep; the same file brings them another time. */
async function keepPhotos(photos: Photos, some: readonly Photo[]): Promise<number> {
  let left = 0;
  for (const [i, { id, picture }] of some.entries()) {
    const kept = await photos.keep(id, picture);
    if (!kept.ok && kept.failure.kind === 'no-answer') return left + some.length - i; // not ten seconds for each
    if (!kept.ok) left++;
  }
  return left;
}
