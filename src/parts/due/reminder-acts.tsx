import { laysCoat } from '../../actions/plan/answer-reminder';
import { isFireKind } from '../../logbook/kinds/reminder-kinds';
import { REMINDER_PAGE } from '../../words/plan/reminders';
import { Button, LinkButton } from '../frame/button';
import { linkTo } from '../frame/route';
import { useShop } from '../frame/shop-context';
import { groupName, type KindGroup, useAnswerAll } from './reminder-groups';

/** Reminders of one kind: what they say, and the answers to all of them. A coat is logged on its own page, where its cautions stand. */
export function ReminderItem({ group, when }: { readonly group: KindGroup; readonly when: string }) {
  const open = useShop();
  const answerAll = useAnswerAll();
  const { title, names } = groupName(group, open.shop.value);
  const { reminders, isFire } = group;
  return (
    <li class="reminder" data-fire={isFire || undefined}>
      <p>
        <strong>{title}</strong> <span class="quiet digits">{when}</span>
      </p>
      <p>{names}</p>
      <div class="acts">
        <DoneAct reminders={reminders} onDone={() => void answerAll(reminders, 'done')} />
        <Button icon="clock" onClick={() => void answerAll(reminders, 'later')}>
          {REMINDER_PAGE.later}
        </Button>
      </div>
    </li>
  );
}

interface DoneActProps {
  readonly reminders: KindGroup['reminders'];
  readonly onDone: () => void;
}

/** The act that a reminder asks for: on its own page, or done with a tap. */
export function DoneAct({ reminders, onDone }: DoneActProps) {
  const [{ kind, pieceId = '', thingId = '' }] = reminders;
  if (laysCoat({ kind }))
    return (
      <LinkButton kind="main" href={coatOn(reminders.flatMap((one) => one.pieceId ?? []))}>
        {REMINDER_PAGE.lay}
      </LinkButton>
    );
  if (isFireKind(kind))
    return (
      <LinkButton kind="main" href={linkTo('air', 'day-end')}>
        {REMINDER_PAGE.dayEnd}
      </LinkButton>
    );
  if (kind === 'weigh-card')
    return (
      <LinkButton kind="main" href={linkTo('more', 'cards', thingId)}>
        {REMINDER_PAGE.weigh}
      </LinkButton>
    );
  if (kind === 'customer-update')
    return (
      <LinkButton kind="main" href={linkTo('plan', pieceId, 'owner')}>
        {REMINDER_PAGE.tell}
      </LinkButton>
    );
  return (
    <Button kind="main" onClick={onDone}>
      {reminders.length > 1 ? REMINDER_PAGE.allDone : REMINDER_PAGE.done}
    </Button>
  );
}

/** The address where a coat on these pieces is logged. */
const coatOn = (pieces: readonly string[]): string =>
  `${linkTo('lay')}?${pieces.map((id) => `piece=${encodeURIComponent(id)}`).join('&')}`;
