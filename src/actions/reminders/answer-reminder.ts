import type { EntryOf } from '../../logbook/entry';
import type { Coat } from '../../logbook/fold/piece/pieces';
import type { Task } from '../../planner/step';
import type { Answer, Reminder } from '../../reminders/reminder';
import { fail, type Result } from '../../result';
import { tasksOf } from '../../shop/plan/happenings';
import { REMINDER_PAGE } from '../../words/plan/reminders';
import { layCoat } from '../coat';
import { filmSaidBy } from '../film-said';
import { type ActionNeeds, log } from '../log';
import { markStep } from '../plan/mark-step';
import type { Refused } from '../refused';

/** What was logged for an answer, or why nothing was. */
export type Answered = Result<EntryOf<'coat-laid' | 'step-marked' | 'reminder-answered'>, Refused>;

const STEP_KINDS: ReadonlySet<string> = new Set([
  'scuff',
  'level-sand',
  'rub-out',
  'sink-check',
  'next-step',
]);

/** Whether "done" lays a coat. */
export const laysCoat = ({ kind }: Pick<Reminder, 'kind'>): boolean =>
  kind === 'next-coat' || kind === 'next-drop';

/**
 * Answers a reminder at an instant. "Done" of a coat lays it as the one before of its kind; of a step it marks the step;
 * of anything else it settles the reminder.
 */
export function answerReminder(
  needs: ActionNeeds,
  reminder: Pick<Reminder, 'id' | 'kind' | 'pieceId' | 'stepId'>,
  answer: Answer,
  atMs: number,
): Promise<Answered> {
  const { id, kind, pieceId, stepId } = reminder;
  if (answer === 'done' && pieceId !== undefined) {
    if (laysCoat(reminder)) return layAsBefore(needs, pieceId, stepId, atMs);
    if (STEP_KINDS.has(kind) && stepId !== undefined)
      return isPlanned(needs, pieceId, stepId)
        ? markStep(needs, { piece: pieceId, step: stepId, as: 'done' }, atMs)
        : log(needs, 'reminder-answered', { reminder: id, answer }, atMs);
  }
  return log(needs, 'reminder-answered', { reminder: id, answer }, atMs);
}

/** A scuff that the planner put in is no step of the plan. */
const isPlanned = ({ logbook }: ActionNeeds, pieceId: string, stepId: string): boolean =>
  logbook.shop.value.plans.get(pieceId)?.steps.some(({ id }) => id === stepId) === true;

async function layAsBefore(
  needs: ActionNeeds,
  pieceId: string,
  stepId: string | undefined,
  atMs: number,
): Promise<Answered> {
  const before = coatBefore(needs, pieceId, stepId);
  if (!before) return fail({ sentence: REMINDER_PAGE.noCoatBefore, fields: {} });
  const { jar, how } = before;
  const said = { piece: pieceId, jar, how, film: filmSaidBy(before) };
  return layCoat(needs, said, atMs);
}

/** The last coat that was of the kind that comes next, from a jar that still stands there. */
function coatBefore({ logbook }: ActionNeeds, pieceId: string, stepId: string | undefined): Coat | undefined {
  const shop = logbook.shop.value;
  const plan = shop.plans.get(pieceId);
  const step = plan?.steps.find(({ id }) => id === stepId);
  const task: Task | undefined = step?.kind === 'work' ? step.task : undefined;
  return shop.pieces
    .get(pieceId)
    ?.coats.findLast(
      (coat) =>
        shop.jars.get(coat.jar)?.emptiedMs === undefined &&
        (task === undefined || !plan ? coat.how !== 'flash' : tasksOf(coat, plan, shop).includes(task)),
    );
}
