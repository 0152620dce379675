import { checkPicture, type PictureFault } from '../../logbook/picture/check-picture';
import { fail, type Result, succeed } from '../../result';

/** How small a photo is made: the longest sides to try in turn until it has few enough bytes. */
export interface Smallness {
  readonly longSidesPx: readonly number[];
  readonly mostBytes: number;
}

/** A card in the list of a recipe. */
export const CARD: Smallness = { longSidesPx: [1600, 1200, 900, 640], mostBytes: 300_000 };
/** A photo of a piece, for its record. */
export const OF_PIECE: Smallness = { longSidesPx: [2560, 2048, 1600, 1280, 960], mostBytes: 600_000 };

const QUALITY = 0.82;

/** A photo as it is kept. */
export interface SmallPicture {
  readonly picture: Blob;
  readonly width: number;
  readonly height: number;
}

/**
 * A photo made small enough to keep, or why it cannot be. It is drawn anew, upright, so that nothing of what the camera wrote into it
 * (place, owner, device) is left.
 */
export async function smallPicture(
  file: Blob,
  smallness: Smallness,
): Promise<Result<SmallPicture, PictureFault | 'not-opened'>> {
  const checked = await checkPicture(file);
  if (!checked.ok) return checked;
  const picture = await createImageBitmap(file).catch(() => undefined);
  if (!picture) return fail('not-opened');
  const small = await shrunk(picture, smallness).catch(() => undefined);
  picture.close();
  return small ? succeed(small) : fail('not-opened');
}

async function shrunk(
  picture: ImageBitmap,
  { longSidesPx, mostBytes }: Smallness,
): Promise<SmallPicture | undefined> {
  let small: SmallPicture | undefined;
  for (const side of longSidesPx) {
    small = await drawn(picture, Math.min(1, side / Math.max(picture.width, picture.height)));
    if (small.picture.size <= mostBytes) break;
  }
  return small;
}

async function drawn(picture: ImageBitmap, scale: number): Promise<SmallPicture> {
  const canvas = document.createElement('canvas');
  const width = Math.max(1, Math.round(picture.width * scale));
  const height = Math.max(1, Math.round(picture.height * scale));
  Object.assign(canvas, { width, height });
  canvas.getContext('2d')?.drawImage(picture, 0, 0, width, height);
  const blob = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve, 'image/jpeg', QUALITY));
  if (!blob) throw new DOMException('', 'EncodingError');
  return { picture: blob, width, height };
}
