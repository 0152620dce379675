import { answerReminder, laysCoat } from '../../actions/reminders/answer-reminder';
import { reminderName } from '../../actions/reminders/reminder-name';
import type { Shop } from '../../logbook/fold/fold';
import { isFireKind, type ReminderKind } from '../../logbook/kinds/shop/reminder-kinds';
import type { Answer, Reminder } from '../../reminders/reminder';
import { REMINDER_PAGE, REMINDER_WORDS } from '../../words/plan/reminders';
import { VERDICT_WORDS } from '../../words/verdicts/words';
import { useShop } from '../frame/shop-context';
import { showToast } from '../frame/toast';
import { sayAnswered } from './say-answered';

/** Reminders of one kind: they are told, and done, together. */
export interface KindGroup {
  readonly kind: ReminderKind;
  readonly isFire: boolean;
  readonly reminders: readonly [Reminder, ...Reminder[]];
}

/** What burns first, then what waits for the gun, then the rest. */
const urgency = ({ reminders: [first], isFire }: KindGroup): number =>
  isFire ? 0 : laysCoat(first) || first.kind === 'window-closing' ? 1 : 2;

/** The kinds among some reminders, the most urgent first. */
export function groupByKind(reminders: readonly Reminder[]): readonly KindGroup[] {
  const groups = new Map<ReminderKind, [Reminder, ...Reminder[]]>();
  for (const reminder of reminders) {
    const group = groups.get(reminder.kind);
    if (group) group.push(reminder);
    else groups.set(reminder.kind, [reminder]);
  }
  return [...groups]
    .map(([kind, some]) => ({ kind, isFire: isFireKind(kind), reminders: some }))
    .sort((one, other) => urgency(one) - urgency(other));
}

/** "Next coat", and what it is about: one name, or all of them. */
export function groupName({ kind, reminders }: KindGroup, shop: Shop) {
  const names = [...new Set(reminders.flatMap((one) => reminderName(one, shop) ?? []))];
  const { title, text } = REMINDER_WORDS[kind];
  return {
    title: reminders.length === 1 ? title : REMINDER_PAGE.times(title, reminders.length),
    names: [...judgedWord(reminders), names.length > 0 ? names.join(', ') : text].join(': '),
  };
}

/** What the judge says of an act, the least of it where there are several. */
function judgedWord(reminders: readonly Reminder[]): readonly string[] {
  const words = reminders.map(({ word }) => word);
  if (words.includes(undefined)) return [];
  return [VERDICT_WORDS[words.includes('perhaps') ? 'perhaps' : 'ready']];
}

/** Answers some reminders of one kind, and says so once. */
export function useAnswerAll() {
  const open = useShop();
  return async (reminders: readonly Reminder[], answer: Answer): Promise<void> => {
    const [first] = reminders;
    if (!first) return;
    const { title } = REMINDER_WORDS[first.kind];
    for (const [i, reminder] of reminders.entries()) {
      const answered = await answerReminder(open.needs, reminder, answer, open.needs.now());
      if (!answered.ok || i === 0) sayAnswered(open, title, answer, answered);
      if (!answered.ok) return;
    }
    if (reminders.length > 1) showToast({ text: REMINDER_PAGE.allAnswered(title, reminders.length) });
  };
}
