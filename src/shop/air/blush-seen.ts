import type { Shop } from '../../logbook/fold/fold';
import type { Check, Coat, Piece } from '../../logbook/fold/piece/pieces';
import type { AirReading } from '../../logbook/fold/shop/air';
import { type BlushSeen, type LearnedBlush, learnedBlush } from '../../science/air/learned-blush';
import { HOUR_MS } from '../../units';
import { measuredAir } from './measured-air';

/** A reading speaks for a coat laid this long after it (judgement, no source). */
const SPEAKS_FOR_MS = 4 * HOUR_MS;

/** The coats that were looked at for blush, each with the dew-point margin that its piece had. */
export function blushSeen(shop: Shop): readonly BlushSeen[] {
  return [...shop.pieces.values()].flatMap((piece) =>
    blushChecks(piece.checks).flatMap((check) => seenBy(check, piece, shop)),
  );
}

const found = new WeakMap<readonly Check[], readonly Check[]>();

/** Most of ten years' checks are of other kinds, and stay what they are: they are looked through once. */
function blushChecks(checks: readonly Check[]): readonly Check[] {
  const some = found.get(checks) ?? checks.filter(({ test }) => test === 'blush');
  found.set(checks, some);
  return some;
}

function seenBy(check: Check, { coats }: Piece, shop: Shop): BlushSeen[] {
  const coat = coats.findLast(({ atMs }) => atMs <= check.atMs);
  const reading = coat && coatAir(coat, shop);
  return reading ? [{ marginK: measuredAir(reading, shop).marginK, blushed: check.result === 'fails' }] : [];
}

/** The reading that a coat was laid by; where none was named, the last one before it, if it still speaks for it. */
export function coatAir(coat: Coat, { airReadings }: Shop): AirReading | undefined {
  if (coat.air !== undefined) return airReadings.find(({ id }) => id === coat.air);
  const reading = airReadings.findLast(({ atMs }) => atMs <= coat.atMs);
  return reading && coat.atMs - reading.atMs <= SPEAKS_FOR_MS ? reading : undefined;
}

/** What the logged blush checks say of this person's own limit. */
export const ownBlush = (shop: Shop): LearnedBlush => learnedBlush(blushSeen(shop));
