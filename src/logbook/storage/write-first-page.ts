import { DAY_MS } from '../../units';
import type { Kind } from '../entry';
import type { Shop } from '../fold/fold';
import type { FirstPage } from './first-page';

/** Whatever is this young is on the first page: reminders and cautions look no further back (judgement, no source). */
const RECENT_DAYS = 60;
/** A shorter logbook is read whole in no time. */
const LONG = 5_000;

/** Kinds that come in thousands and that only their own place looks at, once they are old. */
const BULK: ReadonlySet<Kind> = new Set([
  'air-read',
  'weigh-up-begun',
  'poured',
  'colour-read',
  'hiding-read',
  'trial-mixed',
  'photographed',
  'photos-aligned',
  'zone-drawn',
]);

/** The first page of a shop; undefined where the logbook is short. */
export function firstPageOf({ entries, struck, pieces }: Shop, nowMs: number): FirstPage | undefined {
  if (entries.size < LONG) return undefined;
  const since = new Date(nowMs - RECENT_DAYS * DAY_MS).toISOString();
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
