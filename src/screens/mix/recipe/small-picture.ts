import { checkPicture, type PictureFault } from '../../../logbook/picture/check-picture';
import { fail, type Result, succeed } from '../../../result';

const LONG_SIDES_PX = [1600, 1200, 900, 640];
const MOST_BYTES = 300_000;
const QUALITY = 0.82;

/** A photo made small enough to keep, at most about 300 KB, or why it cannot be. */
export async function smallPicture(file: Blob): Promise<Result<Blob, PictureFault | 'not-opened'>> {
  const checked = await checkPicture(file);
  if (!checked.ok) return checked;
  const picture = await createImageBitmap(file).catch(() => undefined);
  if (!picture) return fail('not-opened');
  const small = await shrunk(picture).catch(() => undefined);
  picture.close();
  return small ? succeed(small) : fail('not-opened');
}

async function shrunk(picture: ImageBitmap): Promise<Blob | undefined> {
  let small: Blob | undefined;
  for (const side of LONG_SIDES_PX) {
    small = await drawn(picture, Math.min(1, side / Math.max(picture.width, picture.height)));
    if (small.size <= MOST_BYTES) break;
  }
  return small;
}

function drawn(picture: ImageBitmap, scale: number): Promise<Blob> {
  const canvas = document.createElement('canvas');
  canvas.width = Math.max(1, Math.round(picture.width * scale));
  canvas.height = Math.max(1, Math.round(picture.height * scale));
  canvas.getContext('2d')?.drawImage(picture, 0, 0, canvas.width, canvas.height);
  return new Promise((resolve, reject) => {
    canvas.toBlob(
      (blob) => (blob ? resolve(blob) : reject(new DOMException('', 'EncodingError'))),
      'image/jpeg',
      QUALITY,
    );
  });
}
