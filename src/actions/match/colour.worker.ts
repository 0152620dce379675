import type { Corners, Photo } from '../../science/colour/photo/photo-patch';
import { advise } from '../../shop/colour/advice';
import type { Question, Reply } from './colour-desk';
import { type PhotoAsk, type PhotoRead, readPhoto, scaleToRead } from './photo-read';

interface Box {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

/** The part of a photograph that was marked: the rest of its twelve million pixels need not be copied. */
function markedBox(corners: readonly Corners[], { width, height }: ImageBitmap): Box {
  const points = corners.flat();
  const clamp = (value: number, most: number): number => Math.min(Math.max(value, 0), most);
  const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
  const left = clamp(Math.floor(Math.min(...xs)), width - 1);
  const top = clamp(Math.floor(Math.min(...ys)), height - 1);
  const right = clamp(Math.ceil(Math.max(...xs)) + 1, width);
  const bottom = clamp(Math.ceil(Math.max(...ys)) + 1, height);
  return { left, top, width: Math.max(right - left, 1), height: Math.max(bottom - top, 1) };
}

/** More is drawn smaller: copies of the largest photos would not fit beside each other in a phone's memory, and no patch needs it. */
const MOST_PIXELS = 16_000_000;

/** Decodes the photograph here, so that it never touches the page's own thread. */
async function readPicture({ picture, against, sample }: PhotoAsk): Promise<PhotoRead> {
  const startMs = performance.now();
  const bitmap = await createImageBitmap(picture).catch(() => undefined);
  if (!bitmap) return { kind: 'fault', fault: 'not-a-picture' };
  const box = markedBox([against.corners, sample], bitmap);
  const scale = Math.min(scaleToRead(against, sample), Math.sqrt(MOST_PIXELS / (box.width * box.height)));
  const photo = drawn(bitmap, box, scale);
  bitmap.close();
  if (!photo) return { kind: 'fault', fault: 'not-a-picture' };
  const placed = (corners: Corners): Corners =>
    corners.map(({ x, y }) => ({
      x: (x - box.left) * scale,
      y: (y - box.top) * scale,
    })) as unknown as Corners;
  const read = readPhoto(photo, { ...against, corners: placed(against.corners) }, placed(sample));
  return read.kind === 'read' ? { ...read, tookMs: performance.now() - startMs } : read;
}

/** A part of the photograph as pixels. */
function drawn(bitmap: ImageBitmap, { left, top, ...box }: Box, scale: number): Photo | undefined {
  const [width, height] = [Math.ceil(box.width * scale), Math.ceil(box.height * scale)];
  const drawing = new OffscreenCanvas(width, height).getContext('2d', { willReadFrequently: true });
  if (!drawing) return undefined;
  drawing.imageSmoothingEnabled = false; // a mean of pixels would hide texture and burnt-out light
  drawing.drawImage(bitmap, -left * scale, -top * scale, bitmap.width * scale, bitmap.height * scale);
  return { width, height, rgba: drawing.getImageData(0, 0, width, height).data };
}

const answer = (question: Question) =>
  question.ask === 'advice' ? advise(question.match, question.all, question.lots) : readPicture(question);

addEventListener('message', async ({ data }: MessageEvent<{ number: number; question: Question }>) => {
  const { number, question } = data;
  try {
    postMessage({ number, ok: true, value: await answer(question) } satisfies Reply);
  } catch (error) {
    const message = error instanceof Error ? error.message : String(error);
    postMessage({ number, ok: false, message } satisfies Reply);
  }
});
