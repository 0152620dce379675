import { useEffect } from 'preact/hooks';
import { deliverReminders } from '../actions/plan/deliver';
import { followReminders } from '../actions/plan/follow-reminders';
import { reminderOfId } from '../actions/plan/reminder-of-id';
import { grouped } from '../reminders/group';
import { REMINDER_PAGE, REMINDER_WORDS } from '../words/reminders';
import { Icon } from './icons';
import { ReminderItem, sayAnswered } from './reminder-acts';
import { linkTo } from './route';
import { useShop } from './shop-context';

const MOST_SHOWN = 2;

/** What is due now, on top of every page; and what rings for it. */
export function DueReminders() {
  const open = useShop();
  const due = grouped(followReminders(open).value.due).flatMap(({ reminders }) => reminders);
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
