import type { Shop } from '../../logbook/fold/fold';
import type { Coat, Piece } from '../../logbook/fold/piece/pieces';
import { markOf } from '../../logbook/ids/phone-mark';
import { MINUTE_MS } from '../../units';

/** Two people who log one coat do it within this (judgement, no source). */
const TOGETHER_MS = MINUTE_MS;

/**
 * Two coats that may be one, logged by two people: on one place, from one jar, on two phones of the shop within a minute. The second
 * is the same on every phone. Undefined where there are none, or somebody has said that both went on.
 */
export function loggedTwice(
  piece: Piece,
  { phones, records, struck }: Pick<Shop, 'phones' | 'records' | 'struck'>,
): readonly [first: Coat, second: Coat] | undefined {
  if (phones.size < 2) return undefined;
  const apart = new Set(
    (records.get(piece.id) ?? []).flatMap((entry) =>
      entry.kind === 'coat-apart' && !struck.has(entry.id) ? [entry.coat] : [],
    ),
  );
  const isTwice = (first: Coat, second: Coat): boolean =>
    first.jar === second.jar &&
    first.zoneId === second.zoneId &&
    second.atMs - first.atMs <= TOGETHER_MS &&
    markOf(first.id) !== markOf(second.id) &&
    [first, second].every(({ id }) => phones.has(markOf(id)));
  for (const second of piece.coats) {
    if (apart.has(second.id)) continue;
    const before = piece.coats.slice(0, piece.coats.indexOf(second));
    const first = before.findLast((one) => isTwice(one, second));
    if (first) return [first, second];
  }
  return undefined;
}
