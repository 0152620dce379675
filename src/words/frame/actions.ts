// English text of what an action answers.
import { MODEL_STOPPED } from '../common';

/** Why the times of a piece cannot be worked out. */
export const NO_OUTLOOK_WORDS = {
  'no-coats': 'No coat has been logged yet.',
  'unknown-jar': 'The jar of one of its coats is not in this logbook. Restore the backup that has it.',
  'no-room-for-lacquer':
    'Thinner and retarder leave no room for lacquer in one of its jars. Undo that jar and fill it again.',
  'no-drying-law': 'This version knows no drying law for its finish.',
  'too-thick':
    'Too thick to be worked out: its coats together are more than this phone can follow. Look through its coats, and undo one that was logged wrong.',
  unsolvable:
    'The numbers of its coats cannot be worked out. Look through its coats and jars, and undo what was logged wrong.',
  lost: MODEL_STOPPED,
} as const;

/** Said beside the thinning of a jar. */
export const NO_ROOM_FOR_LACQUER =
  'Thinner and retarder leave no room for lacquer. Make one of them less, or say it of the lacquer.';
