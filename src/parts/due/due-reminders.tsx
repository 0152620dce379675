import { useEffect } from 'preact/hooks';
import { deliverReminders } from '../../actions/reminders/deliver';
import { followReminders } from '../../actions/reminders/follow-reminders';
import { reminderOfId } from '../../actions/reminders/reminder-of-id';
import { REMINDER_PAGE, REMINDER_WORDS } from '../../words/plan/reminders';
import { Button } from '../blocks/button';
import { linkTo } from '../frame/route';
import { useShop } from '../frame/shop-context';
import { DoneAct } from './reminder-acts';
import { groupByKind, groupName, useAnswerAll } from './reminder-groups';
import { sayAnswered } from './say-answered';

/** What is due now, in one card over the foot of the page: nothing moves for it, and no form is covered. And what rings for it. */
export function DueReminders() {
  const open = useShop();
  const groups = groupByKind(followReminders(open).value.due);
  const answerAll = useAnswerAll();
  useEffect(
    () =>
      deliverReminders(open, (id, answer, answered) => {
        const kind = reminderOfId(id, open.shop.value)?.kind;
        if (kind) sayAnswered(open, REMINDER_WORDS[kind].title, answer, answered);
      }),
    [open],
  );
  const [first, ...others] = groups;
  if (!first) return null;
  const { title, names } = groupName(first, open.shop.value);
  return (
    <aside class="due-card" aria-label={REMINDER_PAGE.label} data-fire={first.isFire || undefined}>
      <p class="due-words">
        <strong>{title}</strong>
        <span class="quiet">{names}</span>
      </p>
      {others.length > 0 && (
        <a
          class="due-more digits"
          href={linkTo('plan', 'reminders')}
          aria-label={REMINDER_PAGE.more(others.length)}
        >
          +{others.length}
        </a>
      )}
      <DoneAct
        reminders={first.reminders}
        names={names}
        onDone={() => void answerAll(first.reminders, 'done')}
      />
      <Button onClick={() => void answerAll(first.reminders, 'later')}>{REMINDER_PAGE.laterShort}</Button>
    </aside>
  );
}
