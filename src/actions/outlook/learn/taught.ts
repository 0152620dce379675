import { PRIOR } from '../../../estimator/belief';
import type { Belief } from '../../../estimator/estimate';
import { isCuring } from '../../../estimator/finishes/finish-law';
import type { LawBelief } from '../../../estimator/finishes/law-belief';
import { lawOf } from '../../../estimator/finishes/law-history';
import type { Shop } from '../../../logbook/fold/fold';
import type { Jar } from '../../../logbook/fold/mix/jars';
import type { Piece } from '../../../logbook/fold/piece/pieces';
import { asPiece, cardsOf, counted } from '../../../shop/card/cards';
import { sheetOf } from '../../../shop/stack/sheet-times';
import { type Stand, standById } from '../../../shop/zone/stands';
import { MONTH_S } from '../../../units';
import type { CardOutlooks } from '../card-outlook';
import type { Outlook, PieceId } from '../outlook';
import { BETWEEN_PIECES, type Lesson, shopBelief, shopLawBelief, wordOf } from './shop-belief';

/** What the other pieces with the same product have taught by their checks, and the test cards by their weight. */
export interface Taught {
  /** Of how solvent moves, where the product hardens by losing it alone. */
  readonly diffusivity: Belief | undefined;
  /** Of where the product lies in its law, where it cures. */
  readonly law: LawBelief | undefined;
}

/** What is known on the bench. */
export interface Bench {
  readonly shop: Shop;
  readonly outlooks: ReadonlyMap<PieceId, Outlook>;
  readonly cards: CardOutlooks;
}

/** How far what one piece or card has taught stands off another: shares of the prior's spread, all judgement. */
const APART = {
  /** A card that got this very piece's coats. */
  ownCard: 0.1 / PRIOR.spread,
  otherJar: 0.2,
  /** Poured together, so nobody knows of what. */
  pouredTogether: 0.4,
  /** For a year between them, growing with its root. */
  year: 0.3,
} as const;
const YEAR_MS = 12 * MONTH_S * 1000;

/** What the checks of others and the test cards say of the product on a piece. */
export function taughtTo({ id: own, piece }: Stand, { shop, outlooks, cards }: Bench): Taught {
  const product = productOf(piece, shop);
  const others = [...outlooks].flatMap(([id, outlook]) => {
    const other = outlook.state === 'ready' && id !== own ? standById(id, shop)?.piece : undefined;
    if (outlook.state !== 'ready' || !other || other.checks.length === 0) return [];
    if (productOf(other, shop) !== product) return [];
    const apart = Math.hypot(BETWEEN_PIECES, between(piece, other, shop));
    return [{ estimate: outlook.estimate, apart }];
  });
  const byChecks = others.flatMap(({ estimate, apart }) =>
    lawOf(estimate) ? [] : [{ chances: estimate.learned, apart }],
  );
  return {
    diffusivity: shopBelief([...byChecks, ...byCards(piece, product, shop, cards)]),
    law: shopLawBelief(
      others.flatMap(({ estimate, apart }) => {
        const law = lawOf(estimate);
        return law ? [{ ...law.learned, apart }] : [];
      }),
    ),
  };
}

/** What the test cards with this product say; the one that got the coats of this very piece most of all. */
function byCards(piece: Piece, product: string | undefined, shop: Shop, cards: CardOutlooks): Lesson[] {
  return [...cards].flatMap(([id, outlook]) => {
    const card = cardsOf(shop).get(id);
    if (outlook.state !== 'ready' || !card || counted(card).length === 0) return [];
    const film = asPiece(card);
    if (productOf(film, shop) !== product) return [];
    const isOwn = piece.coats.some((coat) => card.withCoats.has(coat.id));
    const apart = Math.hypot(isOwn ? APART.ownCard : BETWEEN_PIECES, between(piece, film, shop));
    return [{ chances: wordOf(outlook.reading.diffusivity), apart }];
  });
}

/** What lies between two films besides their being two: another jar, jars poured together, and time. */
function between(one: Piece, other: Piece, { jars }: Shop): number {
  const [last, before] = [one.coats.at(-1), other.coats.at(-1)];
  const isPoured = [last, before].some((coat) => jars.get(coat?.jar ?? '')?.boxedFrom !== undefined);
  const years = Math.abs((last?.atMs ?? 0) - (before?.atMs ?? 0)) / YEAR_MS;
  return Math.hypot(
    last?.jar === before?.jar ? 0 : APART.otherJar,
    isPoured ? APART.pouredTogether : 0,
    APART.year * Math.sqrt(years),
  );
}

const texts = new WeakMap<Jar['product'], string>();

/**
 * The product of a piece's newest coat, as a text: what other pieces have taught of it holds for this one. Where it cures, that is
 * held against its sheet, so the sheet belongs to it.
 */
export function productOf({ coats }: Piece, shop: Shop): string | undefined {
  const jar = shop.jars.get(coats.at(-1)?.jar ?? '');
  if (!jar) return undefined;
  const { product } = jar;
  const text =
    texts.get(product) ?? JSON.stringify([product.finish, product.volumeSolids.si, product.solvents]);
  texts.set(product, text);
  return isCuring(product.finish) ? `${text} ${sheetOf(jar.id, shop)?.id}` : text;
}
