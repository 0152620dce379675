import type { Shop } from '../../logbook/fold/fold';
import type { Reminder } from '../../reminders/reminder';

/** What a reminder is about, by name: its piece, its jar or its cartridge. */
export function reminderName(
  { pieceId = '', thingId = '' }: Pick<Reminder, 'pieceId' | 'thingId'>,
  { pieces, jars, filters }: Shop,
): string | undefined {
  return pieces.get(pieceId)?.name ?? jars.get(thingId)?.name ?? filters.get(thingId)?.name;
}
