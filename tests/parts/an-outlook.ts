import type { Outlook } from '../../src/actions/outlook/outlook';
import type { Estimate, Milestone } from '../../src/estimator/estimate';
import type { Entry, EntryBody } from '../../src/logbook/entry';
import { fold, type Shop } from '../../src/logbook/fold/fold';
import type { Piece } from '../../src/logbook/fold/piece/pieces';
import { DAY_1_MS, entry, fillJar, PIECE, startPiece } from '../logbook/entries';

/** Hours after the first coat at which each milestone comes: earliest, likely, late. */
export type Hours = Readonly<Record<Milestone, readonly [number, number, number]>>;

export const HOURS: Hours = {
  touch: [0.1, 0.2, 0.3],
  recoat: [1, 2, 3],
  level: [100, 200, 300],
  rubOut: [200, 300, 400],
  settled: [500, 1000, Number.POSITIVE_INFINITY],
};

const band = ([earliest, likely, late]: readonly [number, number, number]) => ({
  earliestS: earliest * 3600,
  likelyS: likely * 3600,
  lateS: late * 3600,
});

/** An outlook made up for a test: only what the screens read of it is there. */
export const anOutlook = (
  hours: Hours = HOURS,
  profiles: Estimate['profiles'] = [],
): Extract<Outlook, { state: 'ready' }> => ({
  state: 'ready',
  startMs: DAY_1_MS,
  stale: false,
  estimate: {
    milestones: {
      touch: band(hours.touch),
      recoat: band(hours.recoat),
      level: band(hours.level),
      rubOut: band(hours.rubOut),
      settled: band(hours.settled),
    },
    profiles,
  } as unknown as Estimate,
});

/** A shop with one piece and one jar, and whatever is done to them at so many hours of the first day. */
export function aShop(...done: readonly { readonly hour: number; readonly body: EntryBody }[]): {
  shop: Shop;
  piece: Piece;
} {
  const entries: Entry[] = [
    entry(1, startPiece(), DAY_1_MS),
    entry(2, fillJar(), DAY_1_MS),
    ...done.map(({ hour, body }, index) => entry(3 + index, body, DAY_1_MS + hour * 3_600_000)),
  ];
  const shop = fold(entries);
  return { shop, piece: shop.pieces.get(PIECE) as Piece };
}
