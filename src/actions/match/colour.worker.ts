import { advise } from '../../logbook/colour/advice';
import type { Corners } from '../../science/colour/photo-patch';
import type { Question, Reply } from './colour-desk';
import { type Against, type PhotoAsk, type PhotoRead, readPhoto } from './photo-read';

/** The part of a photograph that was marked: the rest of its twelve million pixels need not be copied. */
function markedBox(corners: readonly Corners[], { width, height }: ImageBitmap) {
  const points = corners.flat();
  const clamp = (value: number, most: number): number => Math.min(Math.max(value, 0), most);
  const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
  const left = clamp(Math.floor(Math.min(...xs)), width - 1);
  const top = clamp(Math.floor(Math.min(...ys)), height - 1);
  const right = clamp(Math.ceil(Math.max(...xs)) + 1, width);
  const bottom = clamp(Math.ceil(Math.max(...ys)) + 1, height);
  return { left, top, width: Math.max(right - left, 1), height: Math.max(bottom - top, 1) };
}

const shifted = (corners: Corners, left: number, top: number): Corners =>
  corners.map(({ x, y }) => ({ x: x - left, y: y - top })) as unknown as Corners;
const shiftedAgainst = (against: Against, left: number, top: number): Against => ({
  ...against,
  corners: shifted(against.corners, left, top),
});

/** Decodes the photograph here, so that it never touches the page's own thread. */
async function readPicture({ picture, against, sample }: PhotoAsk): Promise<PhotoRead> {
  const startMs = performance.now();
  const bitmap = await createImageBitmap(picture).catch(() => undefined);
  if (!bitmap) return { kind: 'fault', fault: 'not-a-picture' };
  const { left, top, width, height } = markedBox([against.corners, sample], bitmap);
  const drawing = new OffscreenCanvas(width, height).getContext('2d', { willReadFrequently: true });
  if (!drawing) return { kind: 'fault', fault: 'not-a-picture' };
  drawing.drawImage(bitmap, -left, -top);
  bitmap.close();
  const { data: rgba } = drawing.getImageData(0, 0, width, height);
  const read = readPhoto(
    { width, height, rgba },
    shiftedAgainst(against, left, top),
    shifted(sample, left, top),
  );
  return read.kind === 'read' ? { ...read, tookMs: performance.now() - startMs } : read;
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
