import { DAY_S } from '../../units';
import { type Entry, type Kind, parseEntry } from '../entry';
import type { Shop } from '../fold/fold';
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

/** Whatever is this young is on the first page: reminders and cautions look no further back. */
const RECENT_DAYS = 60;
/** A shorter logbook is read whole in no time. */
const LONG = 5_000;

/** The rows are read sooner than a device that does not answer. */
const PATIENCE_MS = 2_000;

/** Kinds that come in thousands and that only their own place looks at, once they are old. */
const BULK: ReadonlySet<Kind> = new Set([
  'air-read',
  'weigh-up-begun',
  'poured',
  'colour-read',
  'hiding-read',
  'trial-mixed',
]);

/** The first page of a shop; undefined where the logbook is short. */
export function firstPageOf({ entries, struck, pieces }: Shop, nowMs: number): FirstPage | undefined {
  if (entries.size < LONG) return undefined;
  const since = new Date(nowMs - RECENT_DAYS * DAY_S * 1000).toISOString();
  const isOpen = (piece: string): boolean => pieces.get(piece)?.closedMs === undefined;
  const all = [...entries.values()];
  const kept = all.filter((entry) => {
    if (entry.at >= since) return true;
    if (struck.has(entry.id) || BULK.has(entry.kind)) return false;
    return !('piece' in entry && entry.piece !== undefined) || isOpen(entry.piece);
  });
  const known = new Set(kept.map(({ id }) => id));
  const airs = new Set(kept.flatMap((entry) => (entry.kind === 'coat-laid' ? (entry.air ?? []) : [])));
  const read = all.filter(({ id }) => airs.has(id) && !known.has(id));
  return {
    entries: [...read, ...kept],
    after:
      all
        .map(({ id }) => id)
        .sort()
        .at(-1) ?? '',
  };
}

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
