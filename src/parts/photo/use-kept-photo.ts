import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { checkPicture } from '../../logbook/picture/check-picture';
import { openPhotos } from '../../logbook/storage/photos';
import { hubHere, showOnly } from '../kept/hub-here';

export const photos = openPhotos();

/** The photo, where it is on this device or on the hub, and is one: a backup may have brought anything. */
export async function readWhole(id: string): Promise<Blob | undefined> {
  const here = await photos.read(id);
  const picture = here ?? (await hubHere.peek()?.at?.photo(id));
  if (!picture || !(await checkPicture(picture)).ok) return undefined;
  if (!here && showOnly.now.peek() === 'no') await photos.keep(id, picture); // a backup of this phone has it too
  return picture;
}

/** An address under which a kept photo is shown; `away` where it is not on this device. */
export function useKeptPhoto(id: string): string | 'away' | undefined {
  const address = useSignal<string | 'away' | undefined>(undefined);
  useEffect(() => {
    let made: string | undefined;
    let isShown = true;
    void readWhole(id).then((picture) => {
      if (!isShown) return;
      made = picture && URL.createObjectURL(picture);
      address.value = made ?? 'away';
    });
    return () => {
      isShown = false;
      if (made) URL.revokeObjectURL(made);
    };
  }, [id, address]);
  return address.value;
}
