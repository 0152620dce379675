import { laysCoat } from '../../actions/reminders/answer-reminder';
import { isFireKind, type ReminderKind } from '../../logbook/kinds/shop/reminder-kinds';
import { REMINDER_PAGE } from '../../words/plan/reminders';
import { Button, LinkButton } from '../blocks/button';
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
        <DoneAct reminders={reminders} names={names} onDone={() => void answerAll(reminders, 'done')} />
        <Button icon="clock" onClick={() => void answerAll(reminders, 'later')}>
          {REMINDER_PAGE.later}
          <span class="heard">: {title}</span>
        </Button>
      </div>
    </li>
  );
}

interface DoneActProps {
  readonly reminders: KindGroup['reminders'];
  /** What they are about: said with the button, since another may look like it. */
  readonly names: string;
  readonly onDone: () => void;
}

/** What takes film off is logged where its amount is said, or the film would be thought thicker than it is. */
const SANDINGS: ReadonlySet<ReminderKind> = new Set(['scuff', 'level-sand', 'rub-out']);

/** Where the act that a reminder asks for is done, and what its button says; undefined where a tap does it. */
function wayOf(reminders: KindGroup['reminders']): readonly [href: string, label: string] | undefined {
  const [{ kind, pieceId = '', thingId = '' }] = reminders;
  if (laysCoat({ kind })) return [coatOn(reminders.flatMap((one) => one.pieceId ?? [])), REMINDER_PAGE.lay];
  if (SANDINGS.has(kind)) return [linkTo('piece', pieceId, 'sand'), REMINDER_PAGE.lay];
  if (isFireKind(kind)) return [linkTo('air', 'day-end'), REMINDER_PAGE.dayEnd];
  if (kind === 'weigh-card') return [linkTo('more', 'cards', thingId), REMINDER_PAGE.weigh];
  if (kind === 'customer-update') return [linkTo('plan', pieceId, 'owner'), REMINDER_PAGE.tell];
  return undefined;
}

/** The act that a reminder asks for: on its own page, or done with a tap. */
export function DoneAct({ reminders, names, onDone }: DoneActProps) {
  const about = <span class="heard">: {names}</span>;
  const way = wayOf(reminders);
  if (way) {
    const [href, label] = way;
    return (
      <LinkButton kind="main" href={href}>
        {label}
        {about}
      </LinkButton>
    );
  }
  return (
    <Button kind="main" onClick={onDone}>
      {reminders.length > 1 ? REMINDER_PAGE.allDone : REMINDER_PAGE.done}
      {about}
    </Button>
  );
}

/** The address where a coat on these pieces is logged. */
const coatOn = (pieces: readonly string[]): string =>
  `${linkTo('lay')}?${pieces.map((id) => `piece=${encodeURIComponent(id)}`).join('&')}`;
