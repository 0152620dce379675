import { fail, type Result, succeed } from '../../result';
import { heifOutline } from './heif';
import { jpegOutline } from './jpeg';
import type { Outline } from './outline';
import { MOST_PHOTO_BYTES } from './outline';
import { pngOutline } from './png';
import { webpOutline } from './webp';

/** Why a file is not taken as a photo. */
export type PictureFault =
  | 'empty'
  | 'unreadable'
  | 'no-photo'
  | 'cut-short'
  | 'too-many-bytes'
  | 'too-many-pixels';

/** Decoded, a pixel takes four bytes: a small file that claims more could take the whole memory of a phone. */
const MOST_PIXELS = 100_000_000;
// By content: the name and type that come with a file are only what somebody called it. Drawings that can hold a script are not among them.
const KINDS = [jpegOutline, pngOutline, webpOutline, heifOutline];

/** Whether a file is a whole photo that this phone can hold, before anything of it is decoded. */
export async function checkPicture(file: Blob): Promise<Result<Outline, PictureFault>> {
  if (file.size === 0) return fail('empty');
  if (file.size > MOST_PHOTO_BYTES) return fail('too-many-bytes');
  const bytes = await file.arrayBuffer().catch(() => undefined); // taken away meanwhile, or still in a cloud
  return bytes ? checkOutline(new DataView(bytes)) : fail('unreadable');
}

function checkOutline(file: DataView): Result<Outline, PictureFault> {
  const outline = KINDS.map((outlineOf) => outlineOf(file)).find((found) => found !== undefined);
  if (!outline || outline.width * outline.height === 0) return fail('no-photo');
  if (outline.width * outline.height > MOST_PIXELS) return fail('too-many-pixels');
  return outline.isWhole ? succeed(outline) : fail('cut-short');
}
