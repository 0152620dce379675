import type { Shop } from '../../logbook/fold/fold';
import { REMINDER_KINDS } from '../../logbook/kinds/shop/reminder-kinds';
import type { Reminder } from '../../reminders/reminder';

/** What an answer must know of its reminder, read from the id alone, for the plan may have gone on since; undefined for no id of ours. */
export function reminderOfId(
  id: string,
  { plans, pieces }: Pick<Shop, 'plans' | 'pieces'>,
): Pick<Reminder, 'id' | 'kind' | 'pieceId' | 'stepId'> | undefined {
  const [name, about = ''] = id.split(':');
  const kind = REMINDER_KINDS.find((known) => known === name);
  if (!kind) return undefined;
  const plan = [...plans.values()].find(({ steps }) => steps.some((step) => step.id === about));
  if (plan) return { id, kind, pieceId: plan.piece, stepId: about };
  // Without a plan it counts from the last coat.
  const piece = [...pieces.values()].find(({ coats }) => coats.at(-1)?.id === about);
  return piece ? { id, kind, pieceId: piece.id } : { id, kind };
}
