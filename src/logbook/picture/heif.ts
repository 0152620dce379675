import { fourBytesAt, lettersAt, type Outline } from './outline';

/*
 * HEIC and AVIF: boxes of ISO/IEC 14496-12, 4.2, of a brand of ISO/IEC 23008-12 (annex B) or of AVIF. A picture in tiles says the size of a
 * tile and of the whole, each in an `ispe` box (ISO/IEC 23008-12, 6.5.3): the largest is the whole.
 */
const BRANDS = new Set(['heic', 'heix', 'heim', 'heis', 'mif1', 'avif', 'msf1', 'hevc', 'avis']);
const HEAD_BYTES = 8;
/** `ispe` as a number: there are many places to look at. */
const SIZE_BOX = 0x69737065;
/** The `meta` box comes before the pixels. */
const META_WITHIN_BYTES = 200_000;
/** A box that says nought goes on to the end of the file, and one that says 1 has its size behind its name. */
const TO_THE_END = 0;
const LONG_SIZE = 1;

/** The outline of a HEIC or AVIF file; undefined where it is none. */
export function heifOutline(file: DataView): Outline | undefined {
  if (lettersAt(file, 4, 4) !== 'ftyp' || !BRANDS.has(lettersAt(file, 8, 4))) return undefined;
  let [width, height] = [0, 0];
  const end = Math.min(file.byteLength, META_WITHIN_BYTES);
  for (let at = 0; at < end; at++) {
    if (fourBytesAt(file, at) !== SIZE_BOX) continue;
    const [w, h] = [fourBytesAt(file, at + HEAD_BYTES), fourBytesAt(file, at + HEAD_BYTES + 4)];
    if (w * h > width * height) [width, height] = [w, h];
  }
  return { width, height, isWhole: reachesEnd(file) };
}

function reachesEnd(file: DataView): boolean {
  let at = 0;
  let hasPixels = false;
  while (at + HEAD_BYTES <= file.byteLength) {
    const bytes = fourBytesAt(file, at);
    hasPixels ||= lettersAt(file, at + 4, 4) === 'mdat';
    if (bytes === TO_THE_END) return hasPixels;
    at += bytes === LONG_SIZE ? longSize(file, at) : Math.max(bytes, HEAD_BYTES);
  }
  return hasPixels && at === file.byteLength;
}

const longSize = (file: DataView, at: number): number =>
  Math.max(fourBytesAt(file, at + 8) * 2 ** 32 + fourBytesAt(file, at + 12), HEAD_BYTES);
