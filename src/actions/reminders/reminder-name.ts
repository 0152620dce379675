import type { Shop } from '../../logbook/fold/fold';
import type { Reminder } from '../../reminders/reminder';
import { cardsOf } from '../../shop/card/cards';

/** What a reminder is about, by name: its piece, its jar, its cartridge, or the piece beside which its card lies. */
export function reminderName(
  { pieceId = '', thingId = '' }: Pick<Reminder, 'pieceId' | 'thingId'>,
  shop: Shop,
): string | undefined {
  const { pieces, jars, filters } = shop;
  const beside = cardsOf(shop).get(thingId)?.pieceId;
  return pieces.get(beside ?? pieceId)?.name ?? jars.get(thingId)?.name ?? filters.get(thingId)?.name;
}
