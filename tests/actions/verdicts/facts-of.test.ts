import { expect, test } from 'vitest';
import { factsOf } from '../../../src/actions/verdicts/facts-of';
import type { Piece } from '../../../src/logbook/fold/piece/pieces';
import { DAY_1_MS, layCoat, PIECE } from '../../logbook/entries';
import { outlookOf, type Said, shopOf } from '../../verdicts/random-shops';

const HOUR_MS = 3_600_000;
const ANY: [number, number, number] = [1, 2, 3];

/** What the judge is told of the end of a window, of a conversion finish coated ten hours after the jar was filled. */
function windowEnd(hours: [number, number, number] | null) {
  const said: Said = {
    base: 'sealed',
    finish: 'conversion',
    done: [[10, layCoat()]],
    isPlanned: false,
    isOwnWait: false,
    outlook: {
      moments: { touch: ANY, recoat: ANY, level: ANY, rubOut: ANY, settled: ANY },
      windowEnd: hours,
    },
    nowHour: 801,
  };
  const shop = shopOf(said);
  const piece = shop.pieces.get(PIECE) as Piece;
  return factsOf({ shop, piece, outlook: outlookOf(said, piece), nowMs: DAY_1_MS }).windowEnd;
}

test('the end of a window counts from the coat, each edge of it; without one there is none', () => {
  const coatMs = DAY_1_MS + 10 * HOUR_MS;
  expect(windowEnd([12, 24, 72])).toEqual({
    earliestMs: coatMs + 12 * HOUR_MS,
    likelyMs: coatMs + 24 * HOUR_MS,
    lateMs: coatMs + 72 * HOUR_MS,
  });
  expect(windowEnd(null)).toBeUndefined();
});
