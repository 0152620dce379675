import type { Photos } from '../../logbook/storage/photos';
import { type ActionNeeds, type Logged, log } from '../log';
import { refuse } from '../refused';

/** Keeps a photo of the dried card on this device, and then notes it with its recipe. */
export async function photographCard(
  needs: ActionNeeds,
  photos: Photos,
  recipe: string,
  picture: Blob,
): Logged<'card-photographed'> {
  const photo = needs.newId();
  const kept = await photos.keep(photo, picture);
  if (!kept.ok) return refuse(kept.failure, needs.zone());
  const logged = await log(needs, 'card-photographed', { recipe, photo });
  if (!logged.ok) await photos.drop([photo]);
  return logged;
}
