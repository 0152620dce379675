import type { Shop } from '../../../logbook/fold/fold';
import type { TestCard } from '../../../shop/card/cards';

/** The bare weight as it was typed. */
export const bareText = (card: TestCard, { cardsMade }: Pick<Shop, 'cardsMade'>): string =>
  cardsMade.find(({ id }) => id === card.entry)?.bare.typed.text ?? '';
