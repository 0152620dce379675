import type { Outlook } from '../../actions/outlook/outlook';
import type { Milestone } from '../../estimator/estimate';
import type { Piece } from '../../logbook/fold/pieces';
import { type Moment, momentsOf } from './moments';

/** `now`: something may be done to it. `next`: within a day. `later`: not yet. `open`: not known. */
export type Group = 'now' | 'next' | 'later' | 'closed';

/** Where a piece stands: what may be done, and what is awaited. */
export interface Standing {
  readonly piece: Piece;
  readonly group: Group;
  /** What may be done now; `first-coat` before there is any. */
  readonly may: Milestone | 'first-coat' | undefined;
  /** The moment that the row speaks of. */
  readonly moment: Moment | undefined;
  /** The moment awaited after it. */
  readonly after: Moment | undefined;
  readonly sortMs: number;
}

const DAY_MS = 86_400_000;
/** So long after the last coat a piece counts as still being coated: a weekend does not end it. */
const COATING_MS = 3 * DAY_MS;
const WORK: ReadonlySet<Milestone> = new Set(['recoat', 'level', 'rubOut']);

/** Where a piece stands at an instant. */
export function standingOf(piece: Piece, outlook: Outlook | undefined, nowMs: number): Standing {
  const at = (group: Group, sortMs: number, more: Partial<Standing> = {}): Standing => ({
    piece,
    group,
    may: undefined,
    moment: undefined,
    after: undefined,
    sortMs,
    ...more,
  });
  if (piece.closedMs !== undefined) return at('closed', -piece.closedMs);
  const lastCoat = piece.coats.at(-1);
  if (!lastCoat) return at('now', piece.startedMs, { may: 'first-coat' });
  const moments = momentsOf(piece, outlook, nowMs).filter(({ name }) => WORK.has(name));
  const ready = moments.findLast((moment) => mayBeDone(moment, nowMs, lastCoat.atMs));
  const awaited = moments.find(({ state, likelyMs }) => state !== 'done' && likelyMs > nowMs);
  if (ready) return at('now', ready.likelyMs, { may: ready.name, moment: ready, after: awaited });
  if (!awaited) return at('later', Number.POSITIVE_INFINITY);
  const group = awaited.likelyMs - nowMs < DAY_MS ? 'next' : 'later';
  return at(group, awaited.likelyMs, { moment: awaited });
}

function mayBeDone({ name, state, likelyMs }: Moment, nowMs: number, lastCoatMs: number): boolean {
  if (state === 'done' || likelyMs > nowMs) return false;
  return name !== 'recoat' || nowMs - lastCoatMs < COATING_MS;
}

/** The pieces on the bench, what may be touched first on top. */
export const byWhatComesFirst = (standings: readonly Standing[]): readonly Standing[] =>
  [...standings].sort((one, other) => one.sortMs - other.sortMs);
