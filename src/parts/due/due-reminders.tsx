import { useEffect } from 'preact/hooks';
import { laysCoat } from '../../actions/plan/answer-reminder';
import { deliverReminders } from '../../actions/plan/deliver';
import { followReminders } from '../../actions/plan/follow-reminders';
import { reminderOfId } from '../../actions/plan/reminder-of-id';
import { isFireKind } from '../../logbook/kinds/reminder-kinds';
import type { Reminder } from '../../reminders/reminder';
import { REMINDER_PAGE, REMINDER_WORDS } from '../../words/plan/reminders';
import { Icon } from '../frame/icons';
import { linkTo } from '../frame/route';
import { useShop } from '../frame/shop-context';
import { ReminderItem, sayAnswered } from './reminder-acts';

/** A small phone keeps its page in sight. */
const MOST_SHOWN = 1;

/** What burns first, then what waits for the gun, then the rest. */
const urgency = (reminder: Reminder): number =>
  isFireKind(reminder.kind) ? 0 : laysCoat(reminder) || reminder.kind === 'window-closing' ? 1 : 2;

/** What is due now, on top of every page; and what rings for it. */
export function DueReminders() {
  const open = useShop();
  const due = followReminders(open).value.due.toSorted((one, other) => urgency(one) - urgency(other));
  useEffect(
    () =>
      deliverReminders(open, (id, answer, answered) => {
        const kind = reminderOfId(id, open.shop.value)?.kind;
        if (kind) sayAnswered(open, REMINDER_WORDS[kind].title, answer, answered);
      }),
    [open],
  );
  if (due.length === 0) return null;
  const more = due.length - MOST_SHOWN;
  return (
    <aside class="due-reminders" aria-label={REMINDER_PAGE.label}>
      <Icon name="bell" />
      <ul>
        {due.slice(0, MOST_SHOWN).map((reminder) => (
          <ReminderItem key={`${reminder.id} ${reminder.at}`} reminder={reminder} />
        ))}
        {more > 0 && (
          <li>
            <a href={linkTo('plan', 'reminders')}>{REMINDER_PAGE.more(more)}</a>
          </li>
        )}
      </ul>
    </aside>
  );
}
