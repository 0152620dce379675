import { effect, type ReadonlySignal, type Signal } from '@preact/signals';
import type { Shop } from '../../logbook/fold/fold';
import { closedStanding, type Standing, standingOf } from '../../verdicts/standing';
import type { Outlook, PieceId } from '../outlook/outlook';
import type { WhichShop } from '../which-shop';
import { factsOf } from './facts-of';
import { isAllWorkedOut, keepStandings } from './keep-standings';
import { standingAt } from './kept-standings';

export interface StandingsNeeds {
  /** The shop by whose name they are kept on this phone. */
  readonly which: WhichShop;
  readonly shop: ReadonlySignal<Shop>;
  readonly outlooks: ReadonlySignal<ReadonlyMap<PieceId, Outlook>>;
  readonly nowMs: ReadonlySignal<number>;
  /** Where the standings are shown. */
  readonly standings: Signal<ReadonlyMap<PieceId, Standing>>;
}

/** Where every piece stands, judged again with every entry, every estimate and every tick, and kept for the next first frame. Gives what ends it. */
export function followStandings({ which, shop, outlooks, nowMs, standings }: StandingsNeeds): () => void {
  let kept: unknown;
  return effect(() => {
    const found = standingsOf(shop.value, outlooks.value, nowMs.value, standings.peek());
    standings.value = found;
    if (kept === outlooks.value || !isAllWorkedOut(outlooks.value)) return;
    kept = outlooks.value;
    keepStandings(which, shop.value, outlooks.value, found, nowMs.value);
  });
}

/** Where every piece of a shop stands; what was kept of a piece stands until it is worked out again. */
export const standingsOf = (
  shop: Shop,
  outlooks: ReadonlyMap<PieceId, Outlook>,
  nowMs: number,
  before: ReadonlyMap<PieceId, Standing> = new Map(),
): ReadonlyMap<PieceId, Standing> =>
  new Map(
    [...shop.pieces.values()].map((piece) => {
      const { id, closedMs } = piece;
      const outlook = outlooks.get(id);
      const kept = outlook?.state === 'kept' ? before.get(id) : undefined;
      if (kept) return [id, standingAt(kept, nowMs)];
      return [
        id,
        closedMs === undefined
          ? standingOf(factsOf({ shop, piece, outlook, nowMs }))
          : closedStanding(closedMs),
      ];
    }),
  );
