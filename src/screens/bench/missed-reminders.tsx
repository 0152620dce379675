import { followReminders } from '../../actions/plan/follow-reminders';
import { isFireKind } from '../../logbook/kinds/reminder-kinds';
import { ReminderItem } from '../../parts/due/reminder-acts';
import { LinkButton } from '../../parts/frame/button';
import { Notice } from '../../parts/frame/notice';
import { linkTo } from '../../parts/frame/route';
import { useShop } from '../../parts/frame/shop-context';
import { toInstantMs } from '../../planner/local-day';
import { REMINDER_PAGE } from '../../words/plan/reminders';
import { whenWords } from '../../words/times';

/** The pieces come first on the bench; the bell leads to the rest. */
const MOST_SHOWN = 1;

/** What nobody answered in time: what is about fire first, then the newest. */
export function MissedReminders() {
  const open = useShop();
  const { missed } = followReminders(open).value;
  if (missed.length === 0) return null;
  const nowMs = open.nowMs.value;
  const inOrder = missed.toSorted(
    (one, other) => Number(isFireKind(other.kind)) - Number(isFireKind(one.kind)) || other.at - one.at,
  );
  const more = missed.length - MOST_SHOWN;
  return (
    <Notice kind={inOrder[0] && isFireKind(inOrder[0].kind) ? 'fire' : 'note'} title={REMINDER_PAGE.missed}>
      <ul class="reminders">
        {inOrder.slice(0, MOST_SHOWN).map((reminder) => (
          <ReminderItem
            key={reminder.id}
            reminder={reminder}
            when={REMINDER_PAGE.since(whenWords(toInstantMs(reminder.at), nowMs))}
          />
        ))}
      </ul>
      {more > 0 && (
        <div class="acts">
          <LinkButton icon="bell" href={linkTo('plan', 'reminders')}>
            {REMINDER_PAGE.more(more)}
          </LinkButton>
        </div>
      )}
    </Notice>
  );
}
