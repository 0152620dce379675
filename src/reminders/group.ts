import { isFireKind } from '../logbook/kinds/shop/reminder-kinds';
import type { Reminder } from './reminder';

/** Reminders closer together than this are told at once, minutes (judgement, no source). */
const TOGETHER_WITHIN = 10;

/** Reminders that fall together: those about fire first, then by time. */
export interface ReminderGroup {
  readonly at: number;
  readonly reminders: readonly Reminder[];
  /** Whether it must be acknowledged before it goes away. */
  readonly mustAcknowledge: boolean;
}

/** Puts reminders together that fall within ten minutes of the first of them. Acts wait for the last of theirs: none is called sooner. */
export function grouped(reminders: readonly Reminder[]): ReminderGroup[] {
  const isJudged = ({ word }: Reminder): boolean => word !== undefined;
  const groups = [
    ...closeTogether(reminders.filter((one) => !isJudged(one))),
    ...closeTogether(reminders.filter(isJudged)),
  ].map(asGroup);
  return groups.sort((a, b) => a.at - b.at);
}

function closeTogether(reminders: readonly Reminder[]): readonly (readonly [Reminder, ...Reminder[]])[] {
  const groups: [Reminder, ...Reminder[]][] = [];
  for (const reminder of reminders.toSorted((a, b) => a.at - b.at)) {
    const last = groups.at(-1);
    if (last && reminder.at - last[0].at <= TOGETHER_WITHIN) last.push(reminder);
    else groups.push([reminder]);
  }
  return groups;
}

function asGroup(members: readonly [Reminder, ...Reminder[]]): ReminderGroup {
  const [first] = members;
  return {
    at: first.word === undefined ? first.at : Math.max(...members.map(({ at }) => at)),
    // Each kind stays in the order of its times.
    reminders: members.toSorted((a, b) => Number(isFireKind(b.kind)) - Number(isFireKind(a.kind))),
    mustAcknowledge: members.some(({ kind }) => isFireKind(kind)),
  };
}
