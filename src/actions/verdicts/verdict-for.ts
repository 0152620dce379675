import { standById } from '../../shop/zone/stands';
import type { Question } from '../../verdicts/act';
import { type Verdict, verdictOn } from '../../verdicts/verdict';
import { wholeKey } from '../outlook/awaited';
import type { OpenShop } from '../shop';
import { factsOf } from './facts-of';

/** The verdict on an act on a piece, or on a place on it, now; undefined where there is no such piece or place. */
export function verdictFor(
  { shop, outlooks, nowMs }: Pick<OpenShop, 'shop' | 'outlooks' | 'nowMs'>,
  id: string | undefined,
  question: Question,
): Verdict | undefined {
  const stand = standById(id ?? '', shop.value);
  const piece = stand?.zone ? stand.piece : shop.value.pieces.get(id ?? '');
  if (!stand || !piece) return undefined;
  const all = outlooks.value;
  const outlook = all.get(stand.id) ?? all.get(wholeKey(piece.id));
  const asked = { shop: shop.value, piece, outlook, nowMs: nowMs.value };
  return verdictOn(question, factsOf(asked, question));
}
