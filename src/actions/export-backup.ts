import { type Photo, writeBackupFile } from '../logbook/backup-file';
import { openPhotos, type Photos } from '../logbook/photos';
import type { ActionNeeds } from './log';

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
    if (entry.kind !== 'card-photographed') continue;
    const picture = await photos.read(entry.photo);
    if (picture) found.push({ id: entry.photo, picture });
  }
  const day = new Date(now()).toISOString().slice(0, 10);
  const file = await writeBackupFile(kept, found, now());
  return new File([file], `coatwait-${day}.zip`, { type: file.type });
}
