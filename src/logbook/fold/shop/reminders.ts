import type { EntryInSi, Lines } from '../in-si';

export type ReminderAnswer = EntryInSi<'reminder-answered'>;
export type ReminderSettings = EntryInSi<'reminders-set'>;

/** What was answered to reminders, in time order, and how they were last set. */
export const foldReminders = (lines: Lines) => ({
  reminderAnswers: lines.of('reminder-answered'),
  reminderSettings: lines.of('reminders-set').at(-1),
});
