import type { Belief, Estimate } from '../../estimator/estimate';
import { isCuring } from '../../estimator/finishes/finish-law';
import type { LawBelief } from '../../estimator/finishes/law-belief';
import { lawOf } from '../../estimator/finishes/law-history';
import type { Shop } from '../../logbook/fold/fold';
import type { Jar } from '../../logbook/fold/jars';
import type { Piece } from '../../logbook/fold/pieces';
import { sheetOf } from '../../shop/stack/sheet-times';
import { type Stand, standById } from '../../shop/zone/stands';
import type { Outlook, PieceId } from './outlook';
import { OF_LACQUER, shopBelief, shopLawBelief } from './shop-belief';

/** What the other pieces with the same product have taught by their checks. */
export interface Taught {
  /** Of how solvent moves, where the product hardens by losing it alone. */
  readonly diffusivity: Belief | undefined;
  /** Of where the product lies in its law, where it cures. */
  readonly law: LawBelief | undefined;
}

interface Bench {
  readonly shop: Shop;
  readonly outlooks: ReadonlyMap<PieceId, Outlook>;
}

/** What the checks of others say of the product on a piece. */
export function taughtTo({ id: own, piece }: Stand, { shop, outlooks }: Bench): Taught {
  const product = productOf(piece, shop);
  const estimates = [...outlooks].flatMap(([id, outlook]) => {
    const other = outlook.state === 'ready' && id !== own ? standById(id, shop)?.piece : undefined;
    if (outlook.state !== 'ready' || !other || other.checks.length === 0) return [];
    return productOf(other, shop) === product ? [outlook.estimate] : [];
  });
  return {
    diffusivity: ofLacquers(estimates),
    law: shopLawBelief(estimates.flatMap((one) => lawOf(one)?.learned ?? [])),
  };
}

const ofLacquers = (estimates: readonly Estimate[]): Belief | undefined =>
  shopBelief(
    estimates.filter((one) => !lawOf(one)).map(({ learned }) => learned),
    OF_LACQUER,
  );

const texts = new WeakMap<Jar['product'], string>();

/**
 * The product of a piece's newest coat, as a text: what other pieces have taught of it holds for this one. Where it cures, that is
 * held against its sheet, so the sheet belongs to it.
 */
function productOf({ coats }: Piece, shop: Shop): string | undefined {
  const jar = shop.jars.get(coats.at(-1)?.jar ?? '');
  if (!jar) return undefined;
  const { product } = jar;
  const text =
    texts.get(product) ?? JSON.stringify([product.finish, product.volumeSolids.si, product.solvents]);
  texts.set(product, text);
  return isCuring(product.finish) ? `${text} ${sheetOf(jar.id, shop)?.id}` : text;
}
