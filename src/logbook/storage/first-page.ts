import { type Entry, parseEntry } from '../entry';
import { openDatabase } from './database';

/*
 * The first page: what the bench, a piece on it and the next coat need of a long logbook. It is read before the rest, so that ten years
 * of work do not stand between the person and the next coat. It is a copy that may be lost: the rows themselves stay as they are.
 */

/** What a cold start reads first, and the key after which there may be more. */
export interface FirstPage {
  readonly entries: readonly Entry[];
  readonly after: string;
}

/** Keeps the first page on this device. */
export interface FirstPages {
  /** Undefined where there is none. */
  read(): Promise<FirstPage | undefined>;
  keep(page: FirstPage): Promise<void>;
}

/** The rows are read sooner than a device that does not answer. */
const PATIENCE_MS = 2_000;

/** The first page of the logbook of that name. */
export function openFirstPages(name: string): FirstPages {
  const database = openDatabase(`${name}-first`, 'page', PATIENCE_MS);
  return {
    async read() {
      // Lost or torn, it is no loss: the rows are read instead.
      const [row] = await database.read(['page']).catch(() => []);
      const page = row?.[1] as { readonly entries?: unknown; readonly after?: unknown } | undefined;
      if (!Array.isArray(page?.entries) || typeof page.after !== 'string') return undefined;
      const entries = page.entries.flatMap((raw) => {
        const parsed = parseEntry(raw, Number.POSITIVE_INFINITY);
        return parsed.ok ? parsed.value : [];
      });
      return { entries, after: page.after };
    },
    keep: (page) => database.write([['page', page]]).catch(() => undefined),
  };
}
