import { fourBytesAt, lettersAt, type Outline } from './outline';

// PNG: W3C Recommendation, Portable Network Graphics (third edition), 5.2 to 5.4 and 11.2.1: the size stands first, IEND is the end.
const SIGNATURE = [0x89504e47, 0x0d0a1a0a] as const;
const FIRST_CHUNK = 8;
/** Length, name and checksum of a chunk. */
const AROUND_BYTES = 12;

/** The outline of a PNG file; undefined where it is none. */
export function pngOutline(file: DataView): Outline | undefined {
  if (!SIGNATURE.every((word, i) => fourBytesAt(file, 4 * i) === word)) return undefined;
  if (lettersAt(file, FIRST_CHUNK + 4, 4) !== 'IHDR') return undefined;
  return { width: fourBytesAt(file, 16), height: fourBytesAt(file, 20), isWhole: reachesEnd(file) };
}

function reachesEnd(file: DataView): boolean {
  let at = FIRST_CHUNK;
  while (at + AROUND_BYTES <= file.byteLength) {
    if (lettersAt(file, at + 4, 4) === 'IEND') return true;
    at += AROUND_BYTES + fourBytesAt(file, at);
  }
  return false;
}
