import { describe, expect, test } from 'vitest';
import { checkPicture } from '../../../src/logbook/picture/check-picture';
import { animated, heic, jpeg, NO_PHOTOS, png, turned } from '../../hostile/pictures';

const check = (...parts: BlobPart[]) => checkPicture(new Blob(parts));
const vp8 = (width: number, height: number) => {
  const file = new Uint8Array(30); // the head of RFC 6386, 9.1, in RFC 9649, 2.5, and nothing behind it
  file.set(Buffer.from('RIFF____WEBPVP8 ', 'latin1'));
  const view = new DataView(file.buffer);
  view.setUint32(4, 22, true);
  view.setUint32(16, 10, true);
  file.set([0x9d, 0x01, 0x2a], 23);
  view.setUint16(26, width, true);
  view.setUint16(28, height, true);
  return file;
};

test.each([
  { what: 'a JPEG', file: jpeg(3), width: 8, height: 8 },
  { what: 'a CMYK JPEG', file: jpeg(4), width: 8, height: 8 },
  { what: 'a JPEG taken on its side', file: turned(jpeg(1), 6), width: 8, height: 8 },
  { what: 'a PNG', file: png({ width: 5, height: 3 }), width: 5, height: 3 },
  { what: 'a PNG of 16 bits', file: png({ width: 5, height: 3, depth: 16 }), width: 5, height: 3 },
  { what: 'a PNG of two frames', file: png({ width: 5, height: 3, frames: 2 }), width: 5, height: 3 },
  { what: 'a PNG with ballast', file: png({ width: 1, height: 1, ballast: 5e6 }), width: 1, height: 1 },
  { what: 'a WebP', file: vp8(320, 240), width: 320, height: 240 },
  {
    what: 'an animated WebP',
    file: animated(vp8(7, 4), { width: 7, height: 4 }),
    width: 7,
    height: 4,
  },
  { what: 'a HEIC in tiles', file: heic(4032, 3024), width: 4032, height: 3024 },
])('$what is taken, with its size', async ({ file, width, height }) => {
  expect(await check(file)).toMatchObject({ ok: true, value: { width, height } });
});

// ITU-T T.81, B.1.1: a nought after FF is a byte of the scan, D0 to D7 are restarts in it, and FF before a marker is filling.
test.each([
  { what: 'a byte that looks like a marker', scan: [0xff, 0] },
  { what: 'the first restart', scan: [0xff, 0xd0] },
  { what: 'the last restart', scan: [0xff, 0xd7] },
  { what: 'filling before its end', scan: [0xff] },
])('a scan with $what in it is read to its end', async ({ scan }) => {
  const file = jpeg(3);
  const whole = new Uint8Array([...file.slice(0, -2), ...scan, 0xff, 0xd9]);
  expect(await check(whole)).toMatchObject({ ok: true, value: { width: 8, height: 8 } });
  expect(await check(whole.slice(0, -2))).toMatchObject({ ok: false });
});

test('what a camera hangs on behind a JPEG does not matter', async () => {
  expect(await check(jpeg(3), 'a film of two seconds')).toMatchObject({ ok: true });
});

describe('refused before anything is decoded:', () => {
  test.each(Object.entries(NO_PHOTOS))('%s', async (_, file) => {
    expect(await check(file)).toEqual({ ok: false, failure: 'no-photo' });
  });

  test('a JPEG whose beginning is gone', async () => {
    expect(await check(new Uint8Array(2), jpeg(3).slice(2))).toEqual({ ok: false, failure: 'no-photo' });
  });

  const huge = { width: 60_000, height: 60_000 };
  test.each([
    { what: 'a PNG', file: png({ width: 1, height: 1, says: huge }) },
    { what: 'a JPEG', file: jpeg(3, huge) },
    { what: 'a WebP', file: vp8(16_383, 16_383) },
    { what: 'an animated WebP', file: animated(vp8(1, 1), huge) },
    { what: 'a HEIC', file: heic(60_000, 60_000) },
  ])('$what that claims more than 100 megapixels', async ({ file }) => {
    expect(await check(file)).toEqual({ ok: false, failure: 'too-many-pixels' });
  });

  test.each([
    { what: 'nothing', file: new Blob([]), failure: 'empty' },
    {
      what: 'more than 50 megabytes',
      file: new Blob([jpeg(3), new Uint8Array(5e7)]),
      failure: 'too-many-bytes',
    },
  ])('$what', async ({ file, failure }) => {
    expect(await checkPicture(file)).toEqual({ ok: false, failure });
  });

  test('a file that is gone by the time it is read', async () => {
    const gone = new Blob(['x']);
    gone.arrayBuffer = () => Promise.reject(new DOMException('', 'NotReadableError'));
    expect(await checkPicture(gone)).toEqual({ ok: false, failure: 'unreadable' });
  });
});

test.each([
  { what: 'a JPEG', file: jpeg(3) },
  { what: 'a PNG', file: png({ width: 9, height: 9 }) },
  { what: 'a WebP', file: vp8(9, 9) },
  { what: 'a HEIC', file: heic(9, 9) },
])('$what cut short anywhere is refused', async ({ file }) => {
  for (let bytes = 0; bytes < file.length; bytes++)
    expect(await check(file.slice(0, bytes)), `at ${bytes} of ${file.length}`).toMatchObject({ ok: false });
});
