import { effect, type ReadonlySignal, type Signal } from '@preact/signals';
import type { Shop } from '../../logbook/fold/fold';
import { closedStanding, type Standing, standingOf } from '../../verdicts/standing';
import type { Outlook, PieceId } from '../outlook/outlook';
import { factsOf } from './facts-of';

export interface StandingsNeeds {
  readonly shop: ReadonlySignal<Shop>;
  readonly outlooks: ReadonlySignal<ReadonlyMap<PieceId, Outlook>>;
  readonly nowMs: ReadonlySignal<number>;
  /** Where the standings are shown. */
  readonly standings: Signal<ReadonlyMap<PieceId, Standing>>;
}

/** Where every piece stands, judged again with every entry, every estimate and every tick. Gives what ends it. */
export const followStandings = ({ shop, outlooks, nowMs, standings }: StandingsNeeds): (() => void) =>
  effect(() => {
    standings.value = standingsOf(shop.value, outlooks.value, nowMs.value);
  });

/** Where every piece of a shop stands. */
export const standingsOf = (
  shop: Shop,
  outlooks: ReadonlyMap<PieceId, Outlook>,
  nowMs: number,
): ReadonlyMap<PieceId, Standing> =>
  new Map(
    [...shop.pieces.values()].map((piece) => [
      piece.id,
      piece.closedMs === undefined
        ? standingOf(factsOf({ shop, piece, outlook: outlooks.get(piece.id), nowMs }))
        : closedStanding(piece.closedMs),
    ]),
  );
