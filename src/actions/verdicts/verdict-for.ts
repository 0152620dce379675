import type { Question } from '../../verdicts/act';
import { type Verdict, verdictOn } from '../../verdicts/verdict';
import type { OpenShop } from '../shop';
import { factsOf } from './facts-of';

/** The verdict on an act on a piece, now; undefined where there is no such piece. */
export function verdictFor(
  { shop, outlooks, nowMs }: Pick<OpenShop, 'shop' | 'outlooks' | 'nowMs'>,
  pieceId: string | undefined,
  question: Question,
): Verdict | undefined {
  const piece = shop.value.pieces.get(pieceId ?? '');
  if (!piece) return undefined;
  const asked = { shop: shop.value, piece, outlook: outlooks.value.get(piece.id), nowMs: nowMs.value };
  return verdictOn(question, factsOf(asked, question));
}
