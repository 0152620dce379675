import type { Lines, Told } from './in-si';

export type ReminderAnswer = Told<'reminder-answered'>;
export type ReminderSettings = Told<'reminders-set'>;

/** What was answered to reminders, in time order, and how they were last set. */
export const foldReminders = (lines: Lines) => ({
  reminderAnswers: lines.of('reminder-answered'),
  reminderSettings: lines.of('reminders-set').at(-1),
});
