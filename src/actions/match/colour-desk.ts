import type { Match } from '../../logbook/fold/piece/matches';
import type { Advice } from '../../shop/colour/advice';
import type { LotChanges } from '../../shop/colour/lessons';
import type { PhotoAsk, PhotoRead } from './photo-read';

/** What the desk is asked. */
export type Question =
  | {
      readonly ask: 'advice';
      readonly match: Match;
      readonly all: readonly Match[];
      readonly lots: LotChanges;
    }
  | ({ readonly ask: 'photo' } & PhotoAsk);
/** What it answers: by the number of the question. */
export type Reply =
  | { readonly number: number; readonly ok: true; readonly value: Advice | PhotoRead }
  | { readonly number: number; readonly ok: false; readonly message: string };

/** The desk was lost, or is closed. */
export class DeskError extends Error {
  override name = 'DeskError';
}

export interface ColourDesk {
  advise(match: Match, all: readonly Match[], lots: LotChanges): Promise<Advice>;
  readPhoto(ask: PhotoAsk): Promise<PhotoRead>;
  /** Ends the worker; whatever was still asked is refused. */
  close(): void;
}

interface Waiting {
  readonly resolve: (value: Advice | PhotoRead) => void;
  readonly reject: (reason: Error) => void;
}

const startWorker = (): Worker =>
  new Worker(new URL('./colour.worker.ts', import.meta.url), { type: 'module' });

/** Does the slow sums of colour off the main thread. Every promise settles, also when the worker is lost. */
export function openColourDesk(start: () => Worker = startWorker): ColourDesk {
  const waiting = new Map<number, Waiting>();
  let worker: Worker | undefined;
  let number = 0;

  function lose(message: string): void {
    worker?.terminate();
    worker = undefined;
    const lost = [...waiting.values()];
    waiting.clear();
    for (const { reject } of lost) reject(new DeskError(message));
  }

  function listen(started: Worker): Worker {
    started.onmessage = ({ data }: MessageEvent<Reply>) => {
      const asked = waiting.get(data.number);
      waiting.delete(data.number);
      if (data.ok) asked?.resolve(data.value);
      else asked?.reject(new DeskError(data.message));
    };
    started.onerror = ({ message }) => lose(message || 'The worker did not load.');
    started.onmessageerror = () => lose('The answer could not be read.');
    return started;
  }

  function ask(question: Question): Promise<Advice | PhotoRead> {
    return new Promise((resolve, reject) => {
      number++;
      waiting.set(number, { resolve, reject });
      try {
        worker ??= listen(start());
        worker.postMessage({ number, question });
      } catch (error) {
        lose(error instanceof Error ? error.message : String(error));
      }
    });
  }

  return {
    advise: (match, all, lots) => ask({ ask: 'advice', match, all, lots }) as Promise<Advice>,
    readPhoto: (photo) => ask({ ask: 'photo', ...photo }) as Promise<PhotoRead>,
    close: () => lose('Closed.'),
  };
}
