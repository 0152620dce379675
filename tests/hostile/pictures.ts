import { deflateSync } from 'node:zlib';
import { crc32 } from '../../src/logbook/crc32';

// Picture files built byte by byte, as the standards describe them: what no camera and no canvas would write.

type Bytes = Uint8Array<ArrayBuffer>;
const bytes = (...parts: readonly (string | readonly number[] | Uint8Array)[]): Bytes =>
  new Uint8Array(
    parts.flatMap((part) => (typeof part === 'string' ? [...Buffer.from(part, 'latin1')] : [...part])),
  );
const four = (value: number): number[] => [24, 16, 8, 0].map((shift) => (value >>> shift) & 0xff);
const two = (value: number): number[] => [(value >>> 8) & 0xff, value & 0xff];
const little = (value: number, count: number): number[] =>
  Array.from({ length: count }, (_, i) => Math.floor(value / 256 ** i) % 256);

/** A chunk of a PNG: length, name, content, checksum. */
const chunk = (name: string, content: Uint8Array | readonly number[]): Bytes => {
  const named = bytes(name, content);
  const whole = new Uint8Array(named.length + 8); // by hand: some contents are too long to spread
  whole.set(four(named.length - 4));
  whole.set(named, 4);
  whole.set(four(crc32(named)), named.length + 4);
  return whole;
};
const joined = (...parts: readonly Uint8Array[]): Bytes => new Uint8Array(Buffer.concat(parts));

interface Png {
  readonly width: number;
  readonly height: number;
  readonly depth?: 8 | 16;
  /** What the header says, where it lies. */
  readonly says?: { readonly width: number; readonly height: number };
  /** Bytes of a chunk that says nothing. */
  readonly ballast?: number;
  readonly frames?: number;
  /** The pixels are none, though the file is whole. */
  readonly isTorn?: boolean;
}

/** A grey PNG; one of several frames is animated. */
export function png({ width, height, depth = 8, says, ballast = 0, frames = 1, isTorn = false }: Png): Bytes {
  const size = says ?? { width, height };
  const row = bytes([0], new Uint8Array(width * (depth / 8)).fill(0x80));
  const rows = new Uint8Array(deflateSync(joined(...Array.from({ length: height }, () => row))));
  const pixels = isTorn ? new Uint8Array(rows.length) : rows;
  const control = (n: number) =>
    chunk('fcTL', [...four(n), ...four(width), ...four(height), ...four(0), ...four(0), 0, 1, 0, 1, 0, 0]);
  const more = Array.from({ length: frames - 1 }, (_, i) => [
    control(2 * i + 1),
    chunk('fdAT', bytes(four(2 * i + 2), pixels)),
  ]).flat();
  return joined(
    bytes([0x89], 'PNG\r\n\x1a\n'),
    chunk('IHDR', [...four(size.width), ...four(size.height), depth, 0, 0, 0, 0]),
    ...(ballast > 0 ? [chunk('prVt', new Uint8Array(ballast))] : []),
    ...(frames > 1 ? [chunk('acTL', [...four(frames), ...four(0)]), control(0)] : []),
    chunk('IDAT', pixels),
    ...more,
    chunk('IEND', []),
  );
}

const segment = (code: number, content: readonly number[] | Uint8Array): Bytes =>
  bytes([0xff, code], two(content.length + 2), content);

/** A JPEG of eight by eight in so many components, four for CMYK, all of middle value; or one whose header says another size. */
export function jpeg(components: 1 | 3 | 4, says = { width: 8, height: 8 }): Bytes {
  const ids = Array.from({ length: components }, (_, i) => i + 1);
  // Both Huffman tables have one code, a single nought: no difference, and no further coefficient.
  const table = (which: number) => [which, 1, ...new Array(15).fill(0), 0];
  return joined(
    bytes([0xff, 0xd8]),
    ...(components === 4 ? [segment(0xee, bytes('Adobe', [0, 100, 0, 0, 0, 0, 0]))] : []),
    segment(0xdb, [0, ...new Array(64).fill(1)]),
    segment(0xc0, [
      8,
      ...two(says.height),
      ...two(says.width),
      components,
      ...ids.flatMap((id) => [id, 0x11, 0]),
    ]),
    segment(0xc4, table(0)),
    segment(0xc4, table(0x10)),
    segment(0xda, [components, ...ids.flatMap((id) => [id, 0]), 0, 63, 0]),
    bytes([0x3f >> (2 * components - 2 > 6 ? 6 : 0)], [0xff, 0xd9]),
  );
}

/** A JPEG with a note that it was taken with the camera on its side: EXIF orientation 1 to 8. */
export function turned(jpegFile: Uint8Array, orientation: number): Bytes {
  const tiff = bytes(
    'MM',
    two(42),
    four(8),
    two(1),
    two(0x0112),
    two(3),
    four(1),
    two(orientation),
    two(0),
    four(0),
  );
  return joined(jpegFile.subarray(0, 2), segment(0xe1, bytes('Exif', [0, 0], tiff)), jpegFile.subarray(2));
}

const riffChunk = (name: string, content: Uint8Array): Bytes =>
  bytes(name, little(content.length, 4), content, content.length % 2 ? [0] : []);
const riff = (...chunks: readonly Uint8Array[]): Bytes => riffChunk('RIFF', joined(bytes('WEBP'), ...chunks));

/** A still WebP shown twice over, as an animation; or one whose canvas says another size. */
export function animated(webp: Uint8Array, { width, height }: { width: number; height: number }): Bytes {
  const frame = joined(
    bytes(little(0, 6), little(width - 1, 3), little(height - 1, 3), little(100, 3), [0]),
    webp.subarray(Math.max(12, Buffer.from(webp).indexOf('VP8 '))), // the chunk of the still
  );
  const canvas = bytes([2, 0, 0, 0], little(width - 1, 3), little(height - 1, 3));
  const frames = [riffChunk('ANMF', frame), riffChunk('ANMF', frame)];
  return riff(riffChunk('VP8X', canvas), riffChunk('ANIM', bytes(little(0, 6))), ...frames);
}

/** The head of a HEIC file in tiles, with no picture in it. */
export function heic(width: number, height: number): Bytes {
  const box = (name: string, content: Uint8Array) => bytes(four(content.length + 8), name, content);
  const size = (w: number, h: number) => box('ispe', bytes(four(0), four(w), four(h)));
  return joined(
    box('ftyp', bytes('heic', four(0), 'mif1heic')),
    box('meta', joined(bytes(four(0)), size(512, 512), size(width, height))),
    box('mdat', new Uint8Array(64)),
  );
}

const SCRIPT = 'globalThis.hacked = 1';
const text = (content: string): Bytes => new Uint8Array(new TextEncoder().encode(content));

/** What is no photo, whatever it calls itself. */
export const NO_PHOTOS: Readonly<Record<string, Bytes>> = {
  text: text('no picture'),
  'an SVG with a script': text(
    `<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9" onload="${SCRIPT}"><script>${SCRIPT}</script></svg>`,
  ),
  'an SVG behind an XML declaration': text(`<?xml version="1.0"?><svg xmlns="http://www.w3.org/2000/svg"/>`),
  'an HTML page': text(`<!doctype html><img src=x onerror="${SCRIPT}"><script>${SCRIPT}</script>`),
  'a ZIP': bytes('PK', [3, 4], new Uint8Array(40)),
  'a GIF': bytes(
    'GIF89a',
    little(1, 2),
    little(1, 2),
    [0x80, 0, 0, 0, 0, 0, 255, 255, 255, 0x2c],
    new Uint8Array(9),
  ),
  'a BMP': bytes('BM', new Uint8Array(60)),
  'a JPEG of nothing but its beginning': bytes([0xff, 0xd8]),
  'a JPEG with a scan before any size': bytes([0xff, 0xd8, 0xff, 0xda, 0, 2, 0xff, 0xd9]),
  'a PNG of nothing but its signature': bytes([0x89], 'PNG\r\n\x1a\n'),
  'a PNG of no height': png({ width: 1, height: 1, says: { width: 1, height: 0 } }),
  'a RIFF that is a sound': bytes('RIFF', little(100, 4), 'WAVE', new Uint8Array(92)),
};
