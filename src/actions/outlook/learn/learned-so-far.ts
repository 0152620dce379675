import { factorOf, TENTH } from '../../../estimator/belief';
import { FINISH_LAWS, type FinishLaw, isCuring } from '../../../estimator/finishes/finish-law';
import { type LawBelief, timeAt } from '../../../estimator/finishes/law-belief';
import type { Piece } from '../../../logbook/fold/piece/pieces';
import { asPiece, cardsOf } from '../../../shop/card/cards';
import { type Bench, productOf, taughtTo } from './taught';

/** What checks and cards have said of a product. */
export interface LearnedOf {
  readonly product: string;
  /** As on its newest jar. */
  readonly jar: string;
  /** It takes so many times as long as usual. */
  readonly slower: number;
  /** Eight times of ten within this factor of it, either way. */
  readonly within: number;
}

/** What was learned of every product so far, as the next piece from its newest jar would believe it. */
export function learnedSoFar(bench: Bench): readonly LearnedOf[] {
  const { shop } = bench;
  const films = [...shop.pieces.values(), ...[...cardsOf(shop).values()].map(asPiece)].sort(
    (one, other) => lastMs(one) - lastMs(other),
  );
  const newest = new Map(films.map((piece) => [productOf(piece, shop), piece]));
  return [...newest].flatMap(([product, piece]) => {
    const jar = shop.jars.get(piece.coats.at(-1)?.jar ?? '');
    if (product === undefined || !jar) return [];
    const { diffusivity, law } = taughtTo({ id: '', piece, zone: undefined }, bench);
    const { finish } = jar.product;
    const told = isCuring(finish)
      ? law && byLaw(FINISH_LAWS[finish], law)
      : diffusivity && { slower: Math.exp(-diffusivity.mean), within: factorOf(diffusivity) };
    return told ? [{ product, jar: jar.name, ...told }] : [];
  });
}

const lastMs = ({ coats }: Piece): number => coats.at(-1)?.atMs ?? 0;

/** Where a product lies in its law, as a factor of the usual time: of its drying or its cure, whichever more is known of. */
function byLaw({ recoat, level }: FinishLaw, { drying, cure }: LawBelief) {
  const isByDrying = drying.spread < cure.spread;
  const { mean, spread } = isByDrying ? drying : cure;
  const usual = isByDrying ? recoat : level;
  const [low, high] = [timeAt(usual, mean - TENTH * spread), timeAt(usual, mean + TENTH * spread)];
  return { slower: timeAt(usual, mean) / usual.typical, within: Math.sqrt(high / low) };
}
