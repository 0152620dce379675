import type { Shop } from '../../logbook/fold/fold';
import type { EntryInSi } from '../../logbook/fold/in-si';
import type { Coat, Piece } from '../../logbook/fold/piece/pieces';

export type CardWeighing = EntryInSi<'card-weighed'>;

/** A test card: a piece of foil that is coated beside a piece and weighed. */
export interface TestCard {
  readonly id: string;
  /** The entry that made it. */
  readonly entry: string;
  readonly madeMs: number;
  readonly endedMs: number | undefined;
  readonly pieceId: string | undefined;
  /** Of all faces that are coated, m2. */
  readonly areaM2: number;
  readonly bareKg: number;
  readonly divisionKg: number;
  /** As on a piece: a coat that went on both is as the piece's coat says, corrected. */
  readonly coats: readonly Coat[];
  /** The coats of pieces that it got too. */
  readonly withCoats: ReadonlySet<string>;
  /** Every one, in time order; those left out too. */
  readonly weighings: readonly CardWeighing[];
}

type Of = Pick<Shop, 'cardsMade' | 'cardsCoated' | 'cardsWeighed' | 'cardsEnded' | 'pieces' | 'struck'>;
const NONE: ReadonlyMap<string, TestCard> = new Map();
const known = new WeakMap<Of, ReadonlyMap<string, TestCard>>();

/** The test cards of a shop by id, the oldest first. */
export function cardsOf(shop: Of): ReadonlyMap<string, TestCard> {
  if (shop.cardsMade.length === 0) return NONE;
  const cards = known.get(shop) ?? new Map(shop.cardsMade.map((made) => [made.card, cardFrom(made, shop)]));
  known.set(shop, cards);
  return cards;
}

function cardFrom(made: EntryInSi<'card-made'>, shop: Of): TestCard {
  const isOwn = ({ card }: { readonly card: string }): boolean => card === made.card;
  const laid = shop.cardsCoated.filter((line) => isOwn(line) && !shop.struck.has(line.coat ?? ''));
  return {
    id: made.card,
    entry: made.id,
    madeMs: made.atMs,
    endedMs: shop.cardsEnded.find(isOwn)?.atMs,
    pieceId: made.piece,
    areaM2: made.area.si * made.faces,
    bareKg: made.bare.si,
    divisionKg: made.division.si,
    coats: laid.map((line) => coatOf(line, made.piece, shop)).sort((one, other) => one.atMs - other.atMs),
    withCoats: new Set(laid.flatMap(({ coat }) => coat ?? [])),
    weighings: shop.cardsWeighed.filter(isOwn),
  };
}

function coatOf(line: EntryInSi<'card-coated'>, piece: string | undefined, { pieces }: Of): Coat {
  const ofPiece = pieces.get(piece ?? '')?.coats.find(({ id }) => id === line.coat);
  const { card: _card, coat: _coat, kind: _kind, ...own } = line;
  return ofPiece ?? { ...own, v: 2, kind: 'coat-laid', piece: piece ?? line.card };
}

/** A card as if it were a piece of its own: foil takes no solvent. */
export const asPiece = ({ id, coats, madeMs }: TestCard): Piece => ({
  id,
  name: '',
  base: 'sealed',
  startedMs: madeMs,
  closedMs: undefined,
  coats,
  sandings: [],
  grounds: [],
  checks: [],
});

/** Those that count: kept out are what was dust, torn, damp, or not known. */
export const counted = ({ weighings }: Pick<TestCard, 'weighings'>): readonly CardWeighing[] =>
  weighings.filter(({ leftOut }) => leftOut === undefined);

/** Whether more coats may go on a card: it was neither ended nor dried warm. */
export const takesCoats = ({ endedMs, weighings }: TestCard): boolean =>
  endedMs === undefined && !weighings.some(({ warm }) => warm);

/** The cards that lie beside a piece, the newest first. */
export const cardsBeside = (piece: string, shop: Of): readonly TestCard[] =>
  [...cardsOf(shop).values()].filter(({ pieceId }) => pieceId === piece).reverse();

/** The card that the next coat on a piece from a jar may go on too: the one beside it, or one that is coated from that jar. */
export function cardFor(piece: string | undefined, jar: string | undefined, shop: Of): TestCard | undefined {
  const open = [...cardsOf(shop).values()].filter(takesCoats);
  return (
    open.findLast(({ pieceId }) => pieceId !== undefined && pieceId === piece) ??
    open.findLast(
      ({ pieceId, coats }) => pieceId === undefined && (coats.length === 0 || coats.at(-1)?.jar === jar),
    )
  );
}
