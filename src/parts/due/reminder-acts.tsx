import { type Answered, answerReminder, laysCoat } from '../../actions/plan/answer-reminder';
import { reminderName } from '../../actions/plan/reminder-name';
import type { OpenShop } from '../../actions/shop';
import { isFireKind } from '../../logbook/kinds/reminder-kinds';
import type { Answer, Reminder } from '../../reminders/reminder';
import { reminderText } from '../../reminders/say';
import { REMINDER_PAGE, REMINDER_WORDS } from '../../words/plan/reminders';
import { Button, LinkButton } from '../frame/button';
import { linkTo } from '../frame/route';
import { useShop } from '../frame/shop-context';
import { showToast } from '../frame/toast';
import { undoWithToast } from '../frame/undo';

/** Says what came of an answer, with its undo. */
export function sayAnswered(open: OpenShop, title: string, answer: Answer, answered: Answered): void {
  if (!answered.ok) {
    showToast({ text: answered.failure.sentence });
    return;
  }
  const { id, kind } = answered.value;
  const piece = kind === 'coat-laid' ? open.shop.value.pieces.get(answered.value.piece)?.name : undefined;
  const said = answer === 'later' ? REMINDER_PAGE.putOff(title) : REMINDER_PAGE.answered(title);
  const text = piece === undefined ? said : REMINDER_PAGE.coatLaid(piece);
  showToast({ text, onUndo: () => void undoWithToast(open.actions, id, title) });
}

/** One reminder: what it says, and the answers to it. A coat is laid on its own page, where its cautions stand. */
export function ReminderItem({ reminder, when }: { readonly reminder: Reminder; readonly when?: string }) {
  const open = useShop();
  const name = reminderName(reminder, open.shop.value);
  const { title, text } = reminderText(reminder, name);
  const answer = async (given: Answer): Promise<void> => {
    const answered = await answerReminder(open.needs, reminder, given, open.needs.now());
    sayAnswered(open, REMINDER_WORDS[reminder.kind].title, given, answered);
  };
  return (
    <li class="reminder" data-fire={isFireKind(reminder.kind) || undefined}>
      <p>
        <strong>{title}</strong> {when !== undefined && <span class="quiet digits">{when}</span>}
      </p>
      <p>{text}</p>
      <div class="acts">
        <DoneAct reminder={reminder} onDone={() => void answer('done')} />
        <Button icon="clock" onClick={() => void answer('later')}>
          {REMINDER_PAGE.later}
        </Button>
      </div>
    </li>
  );
}

function DoneAct({ reminder, onDone }: { readonly reminder: Reminder; readonly onDone: () => void }) {
  const { kind, pieceId = '' } = reminder;
  if (laysCoat(reminder))
    return (
      <LinkButton kind="main" icon="coat" href={`${linkTo('lay')}?piece=${pieceId}`}>
        {REMINDER_PAGE.lay}
      </LinkButton>
    );
  if (isFireKind(kind))
    return (
      <LinkButton kind="main" icon="fire" href={linkTo('air', 'day-end')}>
        {REMINDER_PAGE.dayEnd}
      </LinkButton>
    );
  return (
    <>
      {kind === 'customer-update' && (
        <LinkButton kind="main" icon="share" href={linkTo('plan', pieceId, 'owner')}>
          {REMINDER_PAGE.tell}
        </LinkButton>
      )}
      <Button kind={kind === 'customer-update' ? 'usual' : 'main'} icon="check" onClick={onDone}>
        {REMINDER_PAGE.done}
      </Button>
    </>
  );
}
