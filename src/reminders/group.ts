import { isFireKind } from '../logbook/kinds/reminder-kinds';
import type { Reminder } from './reminder';

/** Reminders closer together than this are told at once, minutes. */
const TOGETHER_WITHIN = 10;

/** Reminders that fall together: those about fire first, then by time. */
export interface ReminderGroup {
  readonly at: number;
  readonly reminders: readonly Reminder[];
  /** Whether it must be acknowledged before it goes away. */
  readonly mustAcknowledge: boolean;
}

/** Puts reminders together that fall within ten minutes of the first of them. */
export function grouped(reminders: readonly Reminder[]): ReminderGroup[] {
  const groups: Reminder[][] = [];
  for (const reminder of [...reminders].sort((a, b) => a.at - b.at)) {
    const last = groups.at(-1);
    if (last?.[0] && reminder.at - last[0].at <= TOGETHER_WITHIN) last.push(reminder);
    else groups.push([reminder]);
  }
  return groups.map((members) => ({
    at: members[0]?.at ?? 0,
    reminders: members.toSorted(
      (a, b) => Number(isFireKind(b.kind)) - Number(isFireKind(a.kind)) || a.at - b.at,
    ),
    mustAcknowledge: members.some(({ kind }) => isFireKind(kind)),
  }));
}
