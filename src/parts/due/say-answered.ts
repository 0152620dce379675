import type { Answered } from '../../actions/reminders/answer-reminder';
import type { OpenShop } from '../../actions/shop';
import type { Answer } from '../../reminders/reminder';
import { REMINDER_PAGE } from '../../words/plan/reminders';
import { sayRefused } from '../frame/say-refused';
import { showToast } from '../frame/toast';
import { undoWithToast } from '../frame/undo';

/** Says what came of an answer, with its undo. */
export function sayAnswered(open: OpenShop, title: string, answer: Answer, answered: Answered): void {
  if (!answered.ok) {
    sayRefused(answered.failure);
    return;
  }
  const { id, kind } = answered.value;
  const piece = kind === 'coat-laid' ? open.shop.value.pieces.get(answered.value.piece)?.name : undefined;
  const said = answer === 'later' ? REMINDER_PAGE.putOff(title) : REMINDER_PAGE.answered(title);
  const text = piece === undefined ? said : REMINDER_PAGE.coatLaid(piece);
  showToast({ text, onUndo: () => void undoWithToast(open.actions, id, title) });
}
