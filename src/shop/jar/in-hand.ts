import type { Shop } from '../../logbook/fold/fold';
import type { Jar } from '../../logbook/fold/mix/jars';
import type { Coat, Piece } from '../../logbook/fold/piece/pieces';

/** The piece that was worked on last. */
export function lastTouched(pieces: readonly Piece[]): Piece | undefined {
  const lastMs = ({ coats, startedMs }: Piece): number => coats.at(-1)?.atMs ?? startedMs;
  return [...pieces].sort((one, other) => lastMs(one) - lastMs(other)).at(-1);
}

/** The coat that the next one is like as long as nobody says otherwise: the last of this piece, else the newest anywhere. */
export const coatBefore = (
  piece: Pick<Piece, 'coats'> | undefined,
  { pieces }: Pick<Shop, 'pieces'>,
): Coat | undefined =>
  piece?.coats.at(-1) ??
  lastTouched([...pieces.values()].filter(({ coats }) => coats.length > 0))?.coats.at(-1);

/** The jar that the next coat comes from as long as nobody says otherwise: that of the coat before while it lasts, else the one filled last. Before a first coat a jar filled since comes first. */
export function jarInHand(
  piece: Pick<Piece, 'coats'> | undefined,
  shop: Pick<Shop, 'jars' | 'pieces'>,
): Jar | undefined {
  const jars = [...shop.jars.values()].filter(({ emptiedMs }) => emptiedMs === undefined);
  const before = coatBefore(piece, shop);
  const [last, filled] = [jars.find(({ id }) => id === before?.jar), jars.at(-1)];
  const isFilledSince = piece?.coats.length === 0 && before && filled && filled.filledMs > before.atMs;
  return isFilledSince ? filled : (last ?? filled);
}
