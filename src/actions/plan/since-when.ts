import type { ReminderKind } from '../../logbook/kinds/shop/reminder-kinds';
import type { Plan } from '../../planner/plan';
import type { Reminder } from '../../reminders/reminder';

/**
 * The reminders of a plan made now, each that has come due with the time at which it did.
 *
 * A plan made now puts what is waiting at now, for it cannot be sooner; when it came due is told by the plan as it was at the last entry.
 * @param atLastEntry the reminders of that plan
 */
export function sinceWhen(
  reminders: readonly Reminder[],
  atLastEntry: readonly Reminder[],
  plan: Plan,
): readonly Reminder[] {
  const before = new Map(atLastEntry.map(({ id, at }) => [id, at]));
  const next = nextSteps(plan);
  return reminders.map((reminder) => {
    const at = before.get(reminder.id);
    const isWaiting =
      !AFTER_THE_COAT.has(reminder.kind) && reminder.stepId !== undefined && next.has(reminder.stepId);
    return isWaiting && at !== undefined && at < reminder.at && at <= plan.now
      ? { ...reminder, at }
      : reminder;
  });
}

/** Of a coat that is not laid yet these are still to come, however late it is. */
const AFTER_THE_COAT: ReadonlySet<ReminderKind> = new Set(['move-piece', 'check-blush']);

/** The step of each piece that the person does next. */
function nextSteps({ steps }: Plan): ReadonlySet<string> {
  const next = new Map<string, string>();
  for (const { pieceId, stepId, kind, isDone } of steps)
    if (!isDone && (kind === 'work' || kind === 'gate') && !next.has(pieceId)) next.set(pieceId, stepId);
  return new Set(next.values());
}
