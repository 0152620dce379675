import type { Page } from 'playwright-core';
import { page } from '../app';

/** A photo drawn in the browser, with the place, the device and an owner written into it as a camera does (EXIF 2.32, 4.6). */
export async function photoWithPlace(width = 2800, height = 2100, by: Page = page): Promise<Buffer> {
  const drawn = await by.evaluate(
    ([w, h]) => {
      const canvas = document.createElement('canvas');
      Object.assign(canvas, { width: w, height: h });
      const pen = canvas.getContext('2d');
      if (!pen) throw new Error('no canvas');
      for (let i = 0; i < 600; i++) {
        pen.fillStyle = `hsl(${(i * 37) % 60}deg 60% ${20 + ((i * 13) % 60)}%)`;
        pen.fillRect((i * 977) % w, (i * 593) % h, 90, 60);
      }
      return canvas.toDataURL('image/jpeg', 0.9).replace(/.*,/, '');
    },
    [width, height] as const,
  );
  return withPlace(Buffer.from(drawn, 'base64'));
}

function withPlace(photo: Buffer): Buffer {
  const tiff = Buffer.alloc(160);
  tiff.write('II*\0', 0, 'latin1');
  tiff.writeUInt32LE(8, 4);
  const entry = (at: number, tag: number, type: number, count: number, value: number): void => {
    tiff.writeUInt16LE(tag, at);
    tiff.writeUInt16LE(type, at + 2);
    tiff.writeUInt32LE(count, at + 4);
    tiff.writeUInt32LE(value, at + 8);
  };
  tiff.writeUInt16LE(3, 8);
  entry(10, 0x010f, 2, 8, 110); // the device
  entry(22, 0x013b, 2, 8, 118); // the owner
  entry(34, 0x8825, 4, 1, 50); // where the place stands
  tiff.writeUInt16LE(2, 50);
  entry(52, 0x0001, 2, 2, 0x4e); // N
  entry(64, 0x0002, 5, 3, 126); // degrees, minutes, seconds
  tiff.write('Camera\0\0', 110, 'latin1');
  tiff.write('Somebody', 118, 'latin1');
  for (const [i, part] of [52, 1, 30, 1, 0, 1].entries()) tiff.writeUInt32LE(part, 126 + 4 * i);
  const head = Buffer.from([0xff, 0xe1, 0, 0]);
  const body = Buffer.concat([Buffer.from('Exif\0\0', 'latin1'), tiff]);
  head.writeUInt16BE(body.length + 2, 2);
  return Buffer.concat([photo.subarray(0, 2), head, body, photo.subarray(2)]);
}
