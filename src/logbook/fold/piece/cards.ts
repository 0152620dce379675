import type { Lines } from '../in-si';

/** What was said of test cards, in time order; `shop/card/cards.ts` puts it together. */
export const foldCards = (lines: Lines) => ({
  cardsMade: lines.of('card-made'),
  cardsCoated: lines.of('card-coated'),
  cardsWeighed: lines.of('card-weighed'),
  cardsEnded: lines.of('card-ended'),
});
