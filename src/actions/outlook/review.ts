import type { Shop } from '../../logbook/fold/fold';
import type { Piece } from '../../logbook/fold/piece/pieces';
import { standById, standsOf } from '../../shop/zone/stands';
import { HOUR_MS } from '../../units';
import { workKey } from '../verdicts/kept-standings';
import { dryingStands } from './awaited';
import type { CardOutlooks } from './card-outlook';
import { inputsOf, isOwnTheSame } from './inputs';
import { productOf, taughtTo } from './learn/taught';
import type { Outlook, PieceId } from './outlook';

/** What an outlook was last worked out from, and when. */
export interface Worked {
  readonly inputs: string;
  readonly atMs: number;
}

export interface Reviewed {
  readonly shop: Shop;
  readonly nowMs: number;
  /** By stand: a piece as a whole, or a place on it. */
  readonly outlooks: ReadonlyMap<PieceId, Outlook>;
  /** What the test cards say, by card. */
  readonly cards: CardOutlooks;
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
const FRESH_MS = HOUR_MS;

/** Sorts out which pieces are to be worked out anew: those that an entry has changed, and hourly all others. */
export function review(now: Reviewed): Review {
  const outlooks = new Map<PieceId, Outlook>();
  const wanted = new Map<PieceId, string>();
  const teachers = teachersOf(now.shop);
  for (const [id, piece] of now.shop.pieces) {
    if (piece.closedMs !== undefined && id !== now.looked) {
      for (const stand of standsOf(piece, now.shop)) {
        const before = now.outlooks.get(stand.id);
        if (before) outlooks.set(stand.id, before);
        if (teachers.has(id) && !isWorked(before))
          wanted.set(stand.id, inputsOf(stand.piece, now.shop, taughtTo(stand, now)));
      }
      continue;
    }
    const stands = dryingStands(piece, now.shop);
    if (stands.length === 0) outlooks.set(id, { state: 'no-coats' });
    for (const stand of stands) {
      const inputs = inputsOf(stand.piece, now.shop, taughtTo(stand, now));
      const last = now.worked.get(stand.id);
      const isChanged = last?.inputs !== inputs;
      if (isChanged || now.nowMs - last.atMs > FRESH_MS) wanted.set(stand.id, inputs);
      outlooks.set(stand.id, meanwhile(now.outlooks.get(stand.id), isChanged, stand.piece));
    }
  }
  return { outlooks, wanted };
}

/** So many finished pieces of a product teach it: the newest say most (judgement, no source). */
const MOST_TEACHERS = 4;

/** Finished pieces whose checks say something of a product that is on the bench: worked out once, after all that is open. */
function teachersOf(shop: Shop): ReadonlySet<PieceId> {
  const found = known.get(shop) ?? findTeachers(shop);
  known.set(shop, found);
  return found;
}
const known = new WeakMap<Shop, ReadonlySet<PieceId>>();

function findTeachers(shop: Shop): ReadonlySet<PieceId> {
  const all = [...shop.pieces.values()];
  const counts = new Map<string | undefined, number>(
    all.filter(({ closedMs }) => closedMs === undefined).map((piece) => [productOf(piece, shop), 0]),
  );
  const finished = all
    .filter(({ closedMs, checks }) => closedMs !== undefined && checks.some(({ test }) => test !== 'blush'))
    .sort((one, other) => (other.closedMs ?? 0) - (one.closedMs ?? 0));
  return new Set(
    finished.flatMap((piece) => {
      const product = productOf(piece, shop);
      const count = product === undefined ? undefined : counts.get(product);
      if (count === undefined || count >= MOST_TEACHERS) return [];
      counts.set(product, count + 1);
      return [piece.id];
    }),
  );
}

/** Whether it has been worked out in this session. */
export const isWorked = (outlook: Outlook | undefined): boolean =>
  outlook?.state === 'ready' || outlook?.state === 'failed';

function meanwhile(before: Outlook | undefined, isChanged: boolean, piece: Piece): Outlook {
  if (before?.state === 'kept') return before.key === workKey(piece) ? before : { state: 'computing' };
  if (before?.state === 'ready') return before.stale === isChanged ? before : { ...before, stale: isChanged };
  return before && !isChanged ? before : { state: 'computing' };
}

/** What goes first is chosen by. */
export interface Turns extends Pick<Reviewed, 'shop' | 'looked' | 'worked'> {
  /** What could not be worked out. */
  readonly failed: ReadonlySet<PieceId>;
}

/**
 * The stand to work out first: of the piece on screen, else the one worked on last, whose times are awaited. One for which others have
 * only taught something more waits until all of them have, or each would be worked out as often as there are others. One that failed
 * before goes last, even on screen.
 */
export function firstOf(
  wanted: ReadonlyMap<PieceId, string>,
  { shop, looked, worked, failed }: Turns,
): PieceId | undefined {
  const order = [...wanted].map(([id, inputs]) => {
    const piece = standById(id, shop)?.piece;
    const before = worked.get(id)?.inputs;
    const rank = [
      failed.has(id),
      before !== undefined && isOwnTheSame(before, inputs),
      piece?.id !== looked,
      piece?.closedMs !== undefined,
    ];
    return { id, rank: [...rank.map(Number), -(piece?.coats.at(-1)?.atMs ?? 0)] };
  });
  return order.sort((one, other) => byRank(one.rank, other.rank))[0]?.id;
}

/** By the first that is otherwise. */
const byRank = (one: readonly number[], other: readonly number[]): number =>
  one.map((value, i) => value - (other[i] ?? 0)).find((apart) => apart !== 0) ?? 0;
