import { lettersAt, type Outline } from './outline';

// WebP: RFC 9649, 2.4 to 2.7; the frame of a lossy one as RFC 6386, 9.1. All numbers are little-endian.
const BEFORE_BYTES = 8;
const SHORTEST_BYTES = 30;
const CHUNK = 12;
const CONTENT = 20;
const FOURTEEN_BITS = 0x3fff;

/** The outline of a WebP file; undefined where it is none. */
export function webpOutline(file: DataView): Outline | undefined {
  if (
    file.byteLength < SHORTEST_BYTES ||
    lettersAt(file, 0, 4) !== 'RIFF' ||
    lettersAt(file, 8, 4) !== 'WEBP'
  )
    return undefined;
  const size = SIZES[lettersAt(file, CHUNK, 4)]?.(file);
  return size && { ...size, isWhole: BEFORE_BYTES + file.getUint32(4, true) <= file.byteLength };
}

const SIZES: Readonly<Record<string, (file: DataView) => Pick<Outline, 'width' | 'height'>>> = {
  'VP8 ': (file) => ({
    width: file.getUint16(CONTENT + 6, true) & FOURTEEN_BITS,
    height: file.getUint16(CONTENT + 8, true) & FOURTEEN_BITS,
  }),
  VP8L(file) {
    const bits = file.getUint32(CONTENT + 1, true);
    return { width: (bits & FOURTEEN_BITS) + 1, height: ((bits >>> 14) & FOURTEEN_BITS) + 1 };
  },
  VP8X: (file) => ({ width: threeBytes(file, CONTENT + 4) + 1, height: threeBytes(file, CONTENT + 7) + 1 }),
};

const threeBytes = (file: DataView, at: number): number =>
  file.getUint16(at, true) + file.getUint8(at + 2) * 0x1_0000;
