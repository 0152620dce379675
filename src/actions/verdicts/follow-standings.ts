import type { ReadonlySignal, Signal } from '@preact/signals';
import type { Shop } from '../../logbook/fold/fold';
import { closedStanding, type Standing, standingOf } from '../../verdicts/standing';
import { anew } from '../outlook/anew';
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
  /** Calls back before the screen is drawn next. */
  readonly beforeDrawing: (job: () => void) => void;
}

/** Where every piece stands, judged again with every entry, every estimate and every tick, and kept for the next first frame. Gives what ends it. */
export function followStandings({
  which,
  shop,
  outlooks,
  nowMs,
  standings,
  beforeDrawing,
}: StandingsNeeds): () => void {
  let kept: unknown;
  const goBy = (): void => {
    shop.value;
    outlooks.value;
    nowMs.value;
  };
  const job = (): void => {
    const found = standingsOf(shop.value, outlooks.value, nowMs.value, standings.value);
    standings.value = found;
    if (kept === outlooks.value || !isAllWorkedOut(outlooks.value)) return;
    kept = outlooks.value;
    keepStandings(which, shop.value, outlooks.value, found, nowMs.value);
  };
  return anew({ goBy, job, beforeDrawing });
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
