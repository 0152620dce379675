import { followReminders } from '../../actions/reminders/follow-reminders';
import { reminderName } from '../../actions/reminders/reminder-name';
import type { Waiting } from '../../hub/hub-status';
import { isFireKind } from '../../logbook/kinds/shop/reminder-kinds';
import { linkTo } from '../../parts/frame/route';
import { useShop } from '../../parts/frame/shop-context';
import { hubHere } from '../../parts/kept/hub-here';
import { toInstantMs } from '../../planner/local-day';
import { reminderText } from '../../reminders/say';
import { HOUR_MS } from '../../units';
import { NOTICE_LINE } from '../../words/bench-rows';
import { HUB_STATUS } from '../../words/frame/hub';
import { REMINDER_WORDS } from '../../words/plan/reminders';
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
  if (!first) return <HubMark />;
  const others = all.length - 1;
  // Of several there is no room for a name: the list behind the line has them.
  const title =
    others > 0
      ? REMINDER_WORDS[first.kind].title
      : reminderText(first, reminderName(first, open.shop.value)).title;
  return (
    <LineLink
      kind="due"
      icon="bell"
      href={linkTo('plan', 'reminders')}
      text={NOTICE_LINE.due(title, others)}
    />
  );
}

/** Nothing is due; but what has waited for the hub for over an hour is told. */
function HubMark() {
  const { nowMs } = useShop();
  const here = hubHere.value;
  const status: Waiting | undefined = (here?.at?.status ?? here?.asKnown)?.value;
  const sinceMs = status?.waitingSinceMs;
  if (!status || sinceMs === undefined || nowMs.value - sinceMs <= HOUR_MS)
    return <p class="quiet notice-words">{NOTICE_LINE.nothing}</p>;
  const { entries, there } = status;
  return (
    <LineLink kind="due" icon="note" href={linkTo('more', 'hub')} text={HUB_STATUS.long(entries - there)} />
  );
}
