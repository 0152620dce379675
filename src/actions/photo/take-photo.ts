import { sha256 } from '../../logbook/backup/backup';
import type { Photos } from '../../logbook/storage/photos';
import { type ActionNeeds, type Logged, log, type Said } from '../log';
import { refuse } from '../refused';

/** A photo made small for keeping, and the file that it was made from. */
export interface Taken {
  readonly picture: Blob;
  readonly width: number;
  readonly height: number;
  readonly original: Blob;
}

type PhotoSaid = Omit<Said<'photographed'>, 'photo' | 'width' | 'height' | 'original'>;

/** Keeps a photo of a piece on this device, and then notes it; of the file it was made from, only the checksum. */
export async function takePhoto(
  needs: ActionNeeds,
  photos: Photos,
  said: PhotoSaid,
  { picture, width, height, original }: Taken,
): Logged<'photographed'> {
  const photo = needs.newId();
  const kept = await photos.keep(photo, picture);
  if (!kept.ok) return refuse(kept.failure, needs.zone());
  const from = await sha256(await original.arrayBuffer());
  const logged = await log(needs, 'photographed', { ...said, photo, width, height, original: from });
  if (!logged.ok) await photos.drop([photo]);
  return logged;
}

/** Lays two photos over each other by two marks each. */
export const alignPhotos = (needs: ActionNeeds, said: Said<'photos-aligned'>): Logged<'photos-aligned'> =>
  log(needs, 'photos-aligned', said);

/** Draws the outline of a place on a photo. */
export const drawZone = (needs: ActionNeeds, said: Said<'zone-drawn'>): Logged<'zone-drawn'> =>
  log(needs, 'zone-drawn', said);
