import { MINUTE_MS } from '../../../units';
import type { Row } from '../database';
import type { Answered, Ask, Asked, Compared, Unread } from './ask';

/*
 * The second copy: a journal beside the database, in the origin private file system, written by a worker. A browser that finds its
 * database damaged opens an empty one and says nothing; the journal does not share that fate, nor the database the journal's.
 */

/** Waited for so long; the second copy never stops the first. */
const APPEND_MS = 2_000;
const COMPARE_MS = MINUTE_MS;

/** A second copy of the rows. Nothing here rejects. */
export interface Journal {
  /** Whether the rows are on the disk. */
  append(rows: readonly Row[]): Promise<boolean>;
  /** Compares it with the database and makes up what it lacks itself; undefined where there is no second copy. */
  compare(unread: Unread): Promise<Compared | undefined>;
  close(): void;
}

/** The journal of the logbook of that name. */
export function openJournal(name: string): Journal {
  const waiting = new Map<number, (value: Answered['value']) => void>();
  let asked = 0;
  const worker = start();

  function start(): Worker | undefined {
    if (!navigator.storage?.getDirectory) return undefined;
    const started = new Worker(new URL('./journal.worker.ts', import.meta.url), { type: 'module' });
    started.onmessage = ({ data }: MessageEvent<Answered>) => settle(data);
    started.onerror = () => {
      for (const number of waiting.keys()) settle({ number, value: undefined });
    };
    return started;
  }

  function settle({ number, value }: Answered): void {
    waiting.get(number)?.(value);
    waiting.delete(number);
  }

  function ask(question: Ask, limitMs: number): Promise<Answered['value']> {
    if (!worker) return Promise.resolve(undefined);
    const number = asked++;
    return new Promise((resolve) => {
      waiting.set(number, resolve);
      setTimeout(() => settle({ number, value: undefined }), limitMs);
      try {
        worker.postMessage({ number, name, question } satisfies Asked);
      } catch {
        settle({ number, value: undefined }); // what cannot be copied to the worker
      }
    });
  }

  return {
    append: async (rows) => (await ask({ ask: 'append', rows }, APPEND_MS)) === true,
    async compare(unread) {
      const compared = await ask({ ask: 'compare', unread }, COMPARE_MS);
      return compared === true ? undefined : compared;
    },
    close: () => worker?.terminate(),
  };
}
