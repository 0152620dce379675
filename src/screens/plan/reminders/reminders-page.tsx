import { followReminders } from '../../../actions/reminders/follow-reminders';
import { reminderName } from '../../../actions/reminders/reminder-name';
import { Page, Section } from '../../../parts/blocks/page';
import { ReminderItem } from '../../../parts/due/reminder-acts';
import { groupByKind } from '../../../parts/due/reminder-groups';
import { linkTo } from '../../../parts/frame/route';
import { useShop } from '../../../parts/frame/shop-context';
import { toInstantMs } from '../../../planner/local-day';
import type { Reminder } from '../../../reminders/reminder';
import { reminderText } from '../../../reminders/say';
import { DAY_MS } from '../../../units';
import { PLAN_WORDS } from '../../../words/plan/plan';
import { REMINDER_PAGE } from '../../../words/plan/reminders';
import { whenWords } from '../../../words/times';
import { Abilities } from './abilities';
import { CalendarAct } from './calendar-act';
import { KindSwitches } from './kind-switches';
import { QuietHours } from './quiet-hours';

const MOST_SHOWN = 8;
const SOON_MS = 7 * DAY_MS;

/** Everything that reminds: what was missed first, what comes, what is switched, and what this phone can do. */
export function RemindersPage() {
  const open = useShop();
  const nowMs = open.nowMs.value;
  const { due, missed, upcoming } = followReminders(open).value;
  const soon = upcoming.filter(({ at }) => toInstantMs(at) - nowMs < SOON_MS);
  const when = ({ at }: Reminder): string => whenWords(toInstantMs(at), nowMs);
  const lines = (some: readonly Reminder[]) => (
    <ul class="times">
      {some.map((reminder) => (
        <li key={reminder.id}>
          <span class="digits">{when(reminder)}</span>
          <span>{reminderText(reminder, reminderName(reminder, open.shop.value)).title}</span>
        </li>
      ))}
    </ul>
  );
  const isEmpty = due.length + missed.length + upcoming.length === 0;
  return (
    <Page title={REMINDER_PAGE.title} backTo={linkTo('plan')} backLabel={PLAN_WORDS.toPlan} columns="two">
      <div class="stack">
        <Groups title={REMINDER_PAGE.due} reminders={due} nowMs={nowMs} />
        <Groups title={REMINDER_PAGE.missed} reminders={missed} nowMs={nowMs} />
        <Section title={REMINDER_PAGE.upcoming}>
          {isEmpty && <p class="quiet">{REMINDER_PAGE.none}</p>}
          {!isEmpty && soon.length === 0 && <p class="quiet">{REMINDER_PAGE.noneSoon}</p>}
          {lines(soon.slice(0, MOST_SHOWN))}
          {soon.length > MOST_SHOWN && (
            <details class="folded">
              <summary>{REMINDER_PAGE.more(soon.length - MOST_SHOWN)}</summary>
              {lines(soon.slice(MOST_SHOWN))}
            </details>
          )}
        </Section>
        <CalendarAct />
      </div>
      <div class="folds">
        <Abilities />
        <QuietHours />
        <KindSwitches />
      </div>
    </Page>
  );
}

interface GroupsProps {
  readonly title: string;
  readonly reminders: readonly Reminder[];
  readonly nowMs: number;
}

/** Reminders that wait for an answer, those of one kind together. */
function Groups({ title, reminders, nowMs }: GroupsProps) {
  if (reminders.length === 0) return null;
  return (
    <Section title={title}>
      <ul class="stack">
        {groupByKind(reminders).map((group) => (
          <ReminderItem
            key={group.kind}
            group={group}
            when={REMINDER_PAGE.since(whenWords(toInstantMs(group.reminders[0].at), nowMs))}
          />
        ))}
      </ul>
    </Section>
  );
}
