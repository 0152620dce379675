import type { ReminderKind } from '../logbook/kinds/shop/reminder-kinds';
import { nextDayStart, type ZoneOffset } from '../planner/local-day';
import type { Plan, PlannedStep } from '../planner/plan';
import type { Step } from '../planner/step';
import { DAY_MINUTES } from '../units';
import type { Reminder } from './reminder';

// Minutes are common practice, no source: blush shows within some minutes of the coat.
const BLUSH_AFTER = 10;
const BLUSH_USEFUL = 60;
const MOVE_USEFUL = 30;
/** Minutes left of a window at which it is told of. */
export const WINDOW_AHEAD = [60, 30, 10] as const;

/** What the steps of a plan remind of. */
export function planReminders({ steps }: Plan, zone: ZoneOffset): Reminder[] {
  return steps.flatMap((planned, at) => [
    ...ofWork(planned),
    ...ofCoat(planned, steps[at - 1]),
    ...ofWindow(planned, steps[at - 1]),
    ...ofRest(planned),
    ...ofDayEnd(planned, steps.slice(0, at), zone),
  ]);
}

function reminder(
  kind: ReminderKind,
  { pieceId, stepId }: PlannedStep,
  at: number,
  more: { readonly until?: number; readonly minutesLeft?: number } = {},
): Reminder {
  const suffix = more.minutesLeft === undefined ? '' : `:${more.minutesLeft}`;
  return { id: `${kind}:${stepId}${suffix}`, kind, at, pieceId, stepId, ...more };
}

/** Work that may begin. */
function ofWork(planned: PlannedStep): Reminder[] {
  const kind = planned.isDone ? undefined : workKind(planned.step);
  return kind === undefined ? [] : [reminder(kind, planned, planned.start)];
}

function workKind(step: Step): ReminderKind | undefined {
  if (step.kind === 'gate') return step.check === 'sink' ? 'sink-check' : undefined;
  if (step.kind !== 'work') return undefined;
  switch (step.task) {
    case 'drop-fill':
      return 'next-drop';
    case 'scuff':
    case 'level-sand':
    case 'rub-out':
      return step.task;
    case 'pore-fill':
    case 'filler-paste':
    case 'grain-seal':
    case 'glue':
    case 'spirit-off':
      return 'next-step';
    case 'clean':
    case 'other':
      return undefined;
    default:
      return 'next-coat';
  }
}

/** After a coat by gun: move the piece, look for blush if that was to be feared. */
function ofCoat(planned: PlannedStep, before: PlannedStep | undefined): Reminder[] {
  const { step, end } = planned;
  if (step.kind !== 'work' || step.place !== 'booth') return [];
  const move =
    (step.moveMinutes ?? 0) > 0 ? [reminder('move-piece', planned, end, { until: end + MOVE_USEFUL })] : [];
  const isFeared = before?.step.kind === 'hold' && before.step.against === 'blush';
  const look = reminder('check-blush', planned, end + BLUSH_AFTER, { until: end + BLUSH_USEFUL });
  return isFeared ? [...move, look] : move;
}

/** A window that is open, because the coat before it is laid: how long it still is. */
function ofWindow(planned: PlannedStep, before: PlannedStep | undefined): Reminder[] {
  const { closes, end } = planned;
  if (closes === undefined || !before?.isDone || before.pieceId !== planned.pieceId) return [];
  return WINDOW_AHEAD.filter((minutesLeft) => closes - minutesLeft >= end).map((minutesLeft) =>
    reminder('window-closing', planned, closes - minutesLeft, { until: closes, minutesLeft }),
  );
}

/** A wait of a day or more begins: nothing to do, and nothing to be done. */
function ofRest(planned: PlannedStep): Reminder[] {
  const { step, start, end, isDone } = planned;
  if (isDone || step.kind !== 'wait' || end - start < DAY_MINUTES) return [];
  return [reminder('rest-day', planned, start, { until: end })];
}

/** The next coat is kept for another day: the one before it was the last for today. */
function ofDayEnd(planned: PlannedStep, earlier: readonly PlannedStep[], zone: ZoneOffset): Reminder[] {
  if (planned.bound.by !== 'coats-a-day') return [];
  const last = earlier.findLast(
    ({ step, pieceId }) => pieceId === planned.pieceId && step.kind === 'work' && step.isCoat === true,
  );
  if (!last) return [];
  return [reminder('stop-for-today', planned, last.end, { until: nextDayStart(last.end, zone) })];
}
