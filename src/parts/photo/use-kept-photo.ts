import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { checkPicture } from '../../logbook/picture/check-picture';
import { openPhotos } from '../../logbook/storage/photos';

export const photos = openPhotos();

/** The photo, where it is on this device and is one: a backup may have brought anything. */
export async function readWhole(id: string): Promise<Blob | undefined> {
  const picture = await photos.read(id);
  return picture && (await checkPicture(picture)).ok ? picture : undefined;
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
