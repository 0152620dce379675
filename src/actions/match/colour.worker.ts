import { advise } from '../../logbook/colour/advice';
import type { Question, Reply } from './colour-desk';
import { type PhotoAsk, type PhotoRead, readPhoto } from './photo-read';

/** Decodes the photograph here, so that twelve million pixels never touch the page's own thread. */
async function readPicture({ picture, against, sample }: PhotoAsk): Promise<PhotoRead> {
  const startMs = performance.now();
  const bitmap = await createImageBitmap(picture).catch(() => undefined);
  if (!bitmap) return { kind: 'fault', fault: 'not-a-picture' };
  const { width, height } = bitmap;
  const drawing = new OffscreenCanvas(width, height).getContext('2d', { willReadFrequently: true });
  if (!drawing) return { kind: 'fault', fault: 'not-a-picture' };
  drawing.drawImage(bitmap, 0, 0);
  bitmap.close();
  const { data: rgba } = drawing.getImageData(0, 0, width, height);
  const read = readPhoto({ width, height, rgba }, against, sample);
  return read.kind === 'read' ? { ...read, tookMs: performance.now() - startMs } : read;
}

const answer = (question: Question) =>
  question.ask === 'advice' ? advise(question.match, question.all) : readPicture(question);

addEventListener('message', async ({ data }: MessageEvent<{ number: number; question: Question }>) => {
  const { number, question } = data;
  try {
    postMessage({ number, ok: true, value: await answer(question) } satisfies Reply);
  } catch (error) {
    const message = error instanceof Error ? error.message : String(error);
    postMessage({ number, ok: false, message } satisfies Reply);
  }
});
