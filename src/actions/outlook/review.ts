import type { Shop } from '../../logbook/fold/fold';
import { HOUR_S } from '../../units';
import { inputsOf } from './inputs';
import type { Outlook, PieceId } from './outlook';
import { taughtTo } from './taught';

/** What an outlook was last worked out from, and when. */
export interface Worked {
  readonly inputs: string;
  readonly atMs: number;
}

export interface Reviewed {
  readonly shop: Shop;
  readonly nowMs: number;
  readonly outlooks: ReadonlyMap<PieceId, Outlook>;
  readonly worked: ReadonlyMap<PieceId, Worked>;
  /** The piece on screen; a closed one is worked out only there. */
  readonly looked: PieceId | undefined;
}

/** The outlooks as they may be shown meanwhile, and the inputs of those that are to be worked out. */
export interface Review {
  readonly outlooks: ReadonlyMap<PieceId, Outlook>;
  readonly wanted: ReadonlyMap<PieceId, string>;
}

/** The film dries on while nothing is logged, so what is so now is looked at again. */
const FRESH_MS = HOUR_S * 1000;

/** Sorts out which pieces are to be worked out anew: those that an entry has changed, and hourly all others. */
export function review(now: Reviewed): Review {
  const outlooks = new Map<PieceId, Outlook>();
  const wanted = new Map<PieceId, string>();
  for (const [id, piece] of now.shop.pieces) {
    const before = now.outlooks.get(id);
    if (piece.closedMs !== undefined && id !== now.looked) {
      if (before) outlooks.set(id, before);
    } else if (!piece.coats.some(({ how }) => how !== 'flash')) outlooks.set(id, { state: 'no-coats' });
    else {
      const inputs = inputsOf(piece, now.shop, taughtTo(piece, now));
      const last = now.worked.get(id);
      const isChanged = last?.inputs !== inputs;
      if (isChanged || now.nowMs - last.atMs > FRESH_MS) wanted.set(id, inputs);
      outlooks.set(id, meanwhile(before, isChanged));
    }
  }
  return { outlooks, wanted };
}

function meanwhile(before: Outlook | undefined, isChanged: boolean): Outlook {
  if (before?.state === 'ready') return before.stale === isChanged ? before : { ...before, stale: isChanged };
  return before && !isChanged ? before : { state: 'computing' };
}

/** The piece to work out first: the one on screen, else the one worked on last, whose times are awaited. */
export function firstOf(wanted: ReadonlyMap<PieceId, string>, shop: Shop, looked: PieceId | undefined) {
  if (looked !== undefined && wanted.has(looked)) return looked;
  const lastMs = (id: PieceId) => shop.pieces.get(id)?.coats.at(-1)?.atMs ?? 0;
  return [...wanted.keys()].sort((one, other) => lastMs(other) - lastMs(one))[0];
}
