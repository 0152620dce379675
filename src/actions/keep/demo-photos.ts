import type { Entry, EntryOf } from '../../logbook/entry';
import { openPhotos } from '../../logbook/storage/photos';
import { CHIP_OUTLINE, DEMO_PHOTO } from '../../shop/demo/chip';

type Light = EntryOf<'photographed'>['light'];

/** Finish, chip and the light along its edge, as each lamp shows them. */
const COLOURS: Record<Light, readonly [finish: string, grain: string, chip: string, edge: string]> = {
  plain: ['#8a5a33', '#754a29', '#a57a4f', '#5d3a20'],
  raking: ['#4d321d', '#3d2716', '#1d120a', '#e6c08d'],
  uv: ['#7f9a4a', '#738c42', '#2b2352', '#4c4280'],
  through: ['#c98f52', '#b57c43', '#f0d2a0', '#8a5a33'],
};

const photographed = (entries: Iterable<Entry>) =>
  [...entries].filter((entry): entry is EntryOf<'photographed'> => entry.kind === 'photographed');

/** Draws the pictures of the demo shop and keeps them, as photos are kept. */
export async function drawDemoPhotos(entries: readonly Entry[]): Promise<void> {
  const photos = openPhotos();
  for (const { photo, light } of photographed(entries)) await photos.keep(photo, await drawn(light));
}

/** Takes the pictures of the demo shop away with it. */
export const dropDemoPhotos = (entries: Iterable<Entry>): Promise<void> =>
  openPhotos().drop(photographed(entries).map(({ photo }) => photo));

function drawn(light: Light): Promise<Blob> {
  const { width, height } = DEMO_PHOTO;
  const canvas = document.createElement('canvas');
  Object.assign(canvas, { width, height });
  const pen = canvas.getContext('2d');
  if (!pen) throw new DOMException('', 'EncodingError');
  const [finish, grain, chip, edge] = COLOURS[light];
  pen.fillStyle = finish;
  pen.fillRect(0, 0, width, height);
  pen.strokeStyle = grain;
  pen.lineWidth = 3;
  const LINES = 26;
  for (let line = 0; line < LINES; line++) {
    const y = (height * (line + 0.5)) / LINES;
    pen.beginPath();
    pen.moveTo(0, y);
    pen.bezierCurveTo(width / 3, y + 14 * Math.sin(line), width / 2, y - 16 * Math.cos(line * 2), width, y);
    pen.stroke();
  }
  pen.beginPath();
  for (const [x, y] of CHIP_OUTLINE) pen.lineTo(x * width, y * height);
  pen.closePath();
  pen.fillStyle = chip;
  pen.fill();
  pen.strokeStyle = edge;
  pen.lineWidth = 7;
  pen.lineJoin = 'round';
  pen.stroke();
  return new Promise((resolve, reject) =>
    canvas.toBlob(
      (blob) => (blob ? resolve(blob) : reject(new DOMException('', 'EncodingError'))),
      'image/jpeg',
    ),
  );
}
