import { followReminders } from '../../actions/plan/follow-reminders';
import { reminderName } from '../../actions/plan/reminder-name';
import { isFireKind } from '../../logbook/kinds/reminder-kinds';
import { linkTo } from '../../parts/frame/route';
import { useShop } from '../../parts/frame/shop-context';
import { toInstantMs } from '../../planner/local-day';
import { reminderText } from '../../reminders/say';
import { NOTICE_LINE } from '../../words/bench-rows';
import { sinceWords } from '../../words/times';
import { LineLink } from './line-link';

/** What is due and what was missed, in one line: what is about fire first, red, and one for all of it. */
export function DueLine() {
  const open = useShop();
  const { missed, due } = followReminders(open).value;
  const all = [...missed, ...due];
  const fire = all.find(({ kind }) => isFireKind(kind));
  if (fire)
    return (
      <LineLink
        kind="fire"
        icon="fire"
        href={linkTo('air', 'day-end')}
        text={NOTICE_LINE.fireShort}
        when={sinceWords(toInstantMs(fire.at), open.nowMs.value)}
      />
    );
  const first = due[0] ?? missed.at(-1);
  if (!first) return <p class="quiet notice-words">{NOTICE_LINE.nothing}</p>;
  const { title } = reminderText(first, reminderName(first, open.shop.value));
  return (
    <LineLink
      kind="due"
      icon="bell"
      href={linkTo('plan', 'reminders')}
      text={NOTICE_LINE.due(title, all.length - 1)}
    />
  );
}
