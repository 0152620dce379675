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
  const before = logbook.shop.value.entries.size;
  const taken = await logbook.take(read.value); // first: photos must not take the room that entries need
  if (!taken.ok) return refuse(taken.failure, zone());
  const entries = logbook.shop.value.entries.size - before;
  const unread = read.value.setAside.length;
  return succeed({ entries, unread, ...(await keepPhotos(photos, read.value.photos, watch)) });
}

/** Keeps those that are not here, until it is stopped; the same file brings what is left another time. */
async function keepPhotos(
  photos: Photos,
  brought: readonly Photo[],
  watch?: Watch,
): Promise<Pick<Restored, 'photos' | 'photosLeft'>> {
  let count = 0;
  let left = 0;
  for (const [i, { id, picture }] of brought.entries()) {
    watch?.onProgress(i, brought.length);
    const rest = { photos: count, photosLeft: left + brought.length - i };
    if (watch?.signal.aborted) return rest;
    if (await photos.read(id)) continue;
    const kept = await photos.keep(id, picture);
    if (!kept.ok && kept.failure.kind === 'no-answer') return rest; // not ten seconds for each
    if (kept.ok) count++;
    else left++;
  }
  return { photos: count, photosLeft: left };
}
