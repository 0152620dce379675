import { minutesLeftWords, PERHAPS_TEXT, REMINDER_WORDS, reminderTitle } from '../words/plan/reminders';
import { VERDICT_WORDS } from '../words/verdicts/words';
import type { Reminder } from './reminder';

/** The judge's word, before what is said of an act. */
const judged = ({ word }: Reminder): string => (word === undefined ? '' : `${VERDICT_WORDS[word]}. `);

/** The title and the text of a reminder, for a notification. */
export function reminderText(
  reminder: Reminder,
  about: string | undefined,
): { readonly title: string; readonly text: string } {
  const { kind, minutesLeft, word } = reminder;
  const { title, text } = REMINDER_WORDS[kind];
  const left = minutesLeft === undefined ? '' : `${minutesLeftWords(minutesLeft)}. `;
  return {
    title: reminderTitle(title, about),
    text: `${left}${judged(reminder)}${word === 'perhaps' ? PERHAPS_TEXT : text}`,
  };
}

/** A reminder among others, in a line. */
export const reminderLine = (reminder: Reminder, about: string | undefined): string =>
  `${judged(reminder)}${reminderText(reminder, about).title}`;
