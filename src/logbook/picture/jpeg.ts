import { byteAt, type Outline, twoBytesAt } from './outline';

/*
 * JPEG: ITU-T T.81 (09/92), B.1.1 and B.2. Segments with their lengths, up to the frame header, which says the size; then scans, whose
 * bytes hold no marker but their own, up to the end of the image. What cameras hang on after that is none of ours.
 */
const BEGINS = 0xffd8;
const END = 0xd9;
const SCAN = 0xda;
const MARK = 0xff;
/** Tables and reserved codes that stand among those of the frame headers. */
const NO_FRAME = new Set([0xc4, 0xc8, 0xcc]);

const isFrame = (code: number): boolean => code >= 0xc0 && code <= 0xcf && !NO_FRAME.has(code);
/** A byte of a scan that only looks like a marker, a restart inside it, or filling. */
const isNoMarker = (code: number): boolean => code === 0 || code === MARK || (code >= 0xd0 && code <= 0xd7);

/** The outline of a JPEG file; undefined where it is none. */
export function jpegOutline(file: DataView): Outline | undefined {
  if (twoBytesAt(file, 0) !== BEGINS) return undefined;
  const bytes = new Uint8Array(file.buffer, file.byteOffset, file.byteLength);
  let size: Pick<Outline, 'width' | 'height'> | undefined;
  let at = nextMarker(bytes, 2);
  while (at < bytes.length) {
    const code = byteAt(file, at + 1);
    if (code === END) return size && { ...size, isWhole: true };
    if (code === SCAN && !size) return undefined;
    if (isFrame(code)) size ??= { height: twoBytesAt(file, at + 5), width: twoBytesAt(file, at + 7) };
    at = nextMarker(bytes, at + 2 + twoBytesAt(file, at + 2));
  }
  return size && { ...size, isWhole: false };
}

/** The next marker from a place, over the bytes of a scan and over filling ones; the end of the file where there is none. */
function nextMarker(bytes: Uint8Array, from: number): number {
  let at = bytes.indexOf(MARK, from);
  while (at >= 0 && isNoMarker(bytes[at + 1] ?? 0)) at = bytes.indexOf(MARK, at + 1);
  return at < 0 ? bytes.length : at;
}
