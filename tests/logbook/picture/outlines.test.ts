import { describe, expect, test } from 'vitest';
import { checkPicture } from '../../../src/logbook/picture/check-picture';
import { animated, jpeg, png } from '../../hostile/pictures';

const check = (...parts: BlobPart[]) => checkPicture(new Blob(parts));
const ok = (width: number, height: number) => ({ ok: true, value: { width, height, isWhole: true } });
const NO_PHOTO = { ok: false, failure: 'no-photo' };
const CUT_SHORT = { ok: false, failure: 'cut-short' };
type Bytes = Uint8Array<ArrayBuffer>;
const bytes = (...some: readonly (string | readonly number[] | Uint8Array)[]): Bytes =>
  new Uint8Array(
    some.flatMap((one) => (typeof one === 'string' ? [...Buffer.from(one, 'latin1')] : [...one])),
  );
const four = (value: number): number[] => [24, 16, 8, 0].map((shift) => Math.floor(value / 2 ** shift) % 256);
/** A file with some of its bytes put in the place of others. */
const changed = (file: Uint8Array, at: number, some: readonly number[]): Bytes => {
  const copy = new Uint8Array(file);
  copy.set(some, at);
  return copy;
};

describe('at the edge of what is taken', () => {
  test('a photo of 50 MB, and of 100 megapixels', async () => {
    const file = jpeg(3);
    expect(await check(file, new Uint8Array(5e7 - file.length))).toEqual(ok(8, 8));
    const says = { width: 10_000, height: 10_000 };
    expect(await check(png({ width: 1, height: 1, says }))).toEqual(ok(10_000, 10_000));
    expect(await check(png({ width: 1, height: 1, says: { ...says, width: 10_001 } }))).toMatchObject({
      failure: 'too-many-pixels',
    });
  });

  test.each([
    { width: 70_000, height: 1 },
    { width: 1, height: 70_000 },
  ])('a side of 70,000 pixels', async (says) => {
    expect(await check(png({ width: 1, height: 1, says }))).toEqual(ok(says.width, says.height));
  });
});

// W3C PNG (third edition), 5.2 and 5.6: eight bytes of signature, then IHDR.
test.each([
  { what: 'its first four bytes', at: 1, is: 'X' },
  { what: 'its second four', at: 4, is: 'X' },
  { what: 'the name of its first chunk', at: 12, is: 'iHDR' },
])('a PNG with a fault in $what is none', async ({ at, is }) => {
  expect(await check(changed(png({ width: 5, height: 3 }), at, [...Buffer.from(is)]))).toEqual(NO_PHOTO);
});

// ITU-T T.81, table B.1: C0 to CF are frames, but for C4, C8 and CC.
describe('a JPEG says its size in its frame header', () => {
  const file = jpeg(1);
  const frame = Buffer.from(file).indexOf(Buffer.from([0xff, 0xc0]));
  const segment = (code: number) => bytes([0xff, code, 0, 9, 8, 0, 3, 0, 5, 0, 0]); // three by five, were it a frame
  const with_ = (code: number) => bytes(file.subarray(0, frame), segment(code), file.subarray(frame));

  test.each([0xc1, 0xc2, 0xc3, 0xc5, 0xc7, 0xc9, 0xcb, 0xcd, 0xcf])('of code %i', async (code) => {
    expect(await check(changed(file, frame + 1, [code]))).toEqual(ok(8, 8));
  });

  test.each([0x01, 0xbf, 0xc4, 0xc8, 0xcc, 0xdb, 0xe1, 0xfe])('and in none of code %i', async (code) => {
    expect(await check(with_(code))).toEqual(ok(8, 8));
  });

  test('the first of two', async () => {
    expect(await check(with_(0xc2))).toEqual(ok(5, 3));
  });

  test('of which there is one: a file that ends before it is no photo, and before its end is cut short', async () => {
    expect(await check(file.slice(0, frame), new Uint8Array([0xff, 0xd9]))).toEqual(NO_PHOTO);
    expect(await check(file.slice(0, -2))).toEqual(CUT_SHORT);
    expect(await check(file.slice(0, -1))).toEqual(CUT_SHORT);
  });
});

// RFC 9649: 2.4 (RIFF), 2.5 (VP8), 2.6 and 3.4 (VP8L), 2.7 (VP8X); RFC 6386, 9.1: the upper two bits of a side say how it is scaled.
describe('a WebP', () => {
  const little = (value: number, count: number) =>
    Array.from({ length: count }, (_, i) => Math.floor(value / 256 ** i) % 256);
  const riff = (name: string, content: readonly number[], says?: number) => {
    const whole = bytes(
      'RIFF',
      little(says ?? 12 + content.length, 4),
      'WEBP',
      name,
      little(content.length, 4),
      content,
    );
    return bytes(whole, new Uint8Array(Math.max(0, 30 - whole.length)));
  };
  const lossy = (width: number, height: number, says?: number) =>
    riff('VP8 ', [0, 0, 0, 0x9d, 0x01, 0x2a, ...little(width, 2), ...little(height, 2)], says);
  const lossless = (width: number, height: number) =>
    riff('VP8L', [0x2f, ...little(width - 1 + (height - 1) * 2 ** 14, 4), 0, 0, 0, 0, 0]);

  test('says its size in each of its three ways', async () => {
    expect(await check(lossy(0x4000 + 320, 0xc000 + 240))).toEqual(ok(320, 240));
    expect(await check(lossless(5000, 3000))).toEqual(ok(5000, 3000));
    expect(await check(lossless(16_384, 2))).toEqual(ok(16_384, 2));
    expect(await check(animated(lossy(7, 4), { width: 70_000, height: 300 }))).toEqual(ok(70_000, 300));
    expect(await check(animated(lossy(7, 4), { width: 300, height: 70_000 }))).toEqual(ok(300, 70_000));
  });

  test('is cut short where it says that it is longer than it is', async () => {
    expect(await check(lossy(9, 9, 22))).toEqual(ok(9, 9));
    expect(await check(lossy(9, 9, 23))).toEqual(CUT_SHORT);
  });

  test('is none under another name, or of a way not known', async () => {
    expect(await check(changed(lossy(9, 9), 0, [...Buffer.from('RIFX')]))).toEqual(NO_PHOTO);
    expect(await check(changed(lossy(9, 9), 8, [...Buffer.from('WAVE')]))).toEqual(NO_PHOTO);
    expect(await check(riff('VP9 ', new Array(10).fill(1)))).toEqual(NO_PHOTO);
  });
});

// ISO/IEC 14496-12, 4.2: a box says its length and its name; 0 goes to the end of the file, 1 has its length behind its name.
describe('a HEIC or AVIF', () => {
  const box = (name: string, ...content: readonly (string | readonly number[] | Uint8Array)[]) => {
    const inner = bytes(...content);
    return bytes(four(inner.length + 8), name, inner);
  };
  const size = (width: number, height: number) => box('ispe', four(0), four(width), four(height));
  const head = (brand = 'heic') => box('ftyp', brand, four(0));
  const meta = (...sizes: readonly Uint8Array[]) => box('meta', four(0), ...sizes);
  const pixels = box('mdat', new Uint8Array(9));
  const file = bytes(head(), meta(size(40, 30)), pixels);

  test.each(['heic', 'heix', 'mif1', 'avif', 'avis', 'msf1'])('of the brand %s is one', async (brand) => {
    expect(await check(head(brand), meta(size(40, 30)), pixels)).toEqual(ok(40, 30));
  });

  test('is none of another brand, or without its first box', async () => {
    expect(await check(head('mp42'), meta(size(40, 30)), pixels)).toEqual(NO_PHOTO);
    expect(await check(changed(file, 4, [...Buffer.from('free')]))).toEqual(NO_PHOTO);
  });

  test('is as large as the largest of the sizes that it says, in whatever order', async () => {
    const sizes = [size(512, 512), size(4000, 3000), size(320, 240)];
    expect(await check(head(), meta(...sizes), pixels)).toEqual(ok(4000, 3000));
    expect(await check(head(), meta(...sizes.toReversed()), pixels)).toEqual(ok(4000, 3000));
  });

  test('says its size before its pixels, or is none', async () => {
    expect(await check(head(), box('mdat', new Uint8Array(200_000)), meta(size(40, 30)))).toEqual(NO_PHOTO);
  });

  test.each([
    { what: 'a box of nothing at its end', file: bytes(file, box('free')) },
    {
      what: 'pixels to the end',
      file: bytes(head(), meta(size(40, 30)), four(0), 'mdat', new Uint8Array(9)),
    },
    {
      what: 'a long box before its pixels',
      file: bytes(head(), meta(size(40, 30)), four(1), 'free', four(0), four(25), new Uint8Array(9), pixels),
    },
    {
      what: 'a long box of pixels',
      file: bytes(head(), meta(size(40, 30)), four(1), 'mdat', four(0), four(25), new Uint8Array(9)),
    },
  ])('with $what is whole', async ({ file: whole }) => {
    expect(await check(whole)).toEqual(ok(40, 30));
  });

  test.each([
    { what: 'no pixels', file: bytes(head(), meta(size(40, 30))) },
    {
      what: 'another box to its end, and no pixels',
      file: bytes(head(), meta(size(40, 30)), four(0), 'free'),
    },
    {
      what: 'pixels longer than the file',
      file: bytes(head(), meta(size(40, 30)), four(99), 'mdat', new Uint8Array(9)),
    },
    {
      what: 'a long box of 4 GB and more',
      file: bytes(head(), meta(size(40, 30)), four(1), 'mdat', four(1), four(25), new Uint8Array(9)),
    },
    { what: 'half a box at its end', file: bytes(file, four(8)) },
    {
      what: 'a box shorter than its own head',
      file: bytes(head(), meta(size(40, 30)), four(4), 'mdat', new Uint8Array(1)),
    },
  ])('with $what is cut short', async ({ file: short }) => {
    expect(await check(short)).toEqual(CUT_SHORT);
  });

  test('with a long box that says no length is judged all the same', async () => {
    const file = bytes(head(), meta(size(40, 30)), four(1), 'free', four(0), four(0));
    expect(await check(file)).toEqual(CUT_SHORT);
  });
});
