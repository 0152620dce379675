import { minutesLeftWords, REMINDER_WORDS, reminderTitle } from '../words/plan/reminders';
import type { Reminder } from './reminder';

/** The title and the text of a reminder, for a notification. */
export function reminderText(
  { kind, minutesLeft }: Reminder,
  about: string | undefined,
): { readonly title: string; readonly text: string } {
  const { title, text } = REMINDER_WORDS[kind];
  const left = minutesLeft === undefined ? '' : `${minutesLeftWords(minutesLeft)}. `;
  return { title: reminderTitle(title, about), text: `${left}${text}` };
}
