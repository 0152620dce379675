import { localDay, toInstantMs } from '../../planner/local-day';
import type { Plan, PlannedStep } from '../../planner/plan';
import { stepName } from '../../planner/say';
import type { Bench } from '../../planner/step';
import { CALENDAR_WORDS } from '../../words/plan/reminders';
import type { EventDraft } from './calendar';

// Minutes before: common practice, no source.
const STEP_ALARMS = [10] as const;
const WINDOW_ALARMS = [60, 30, 10] as const;
/** At eight on the day itself. */
const PROMISE_ALARMS = [-8 * 60] as const;

/**
 * What a plan puts into the calendar: all work that is to come, windows that are open, days that were promised. All pieces make the
 * feed of the bench; leave pieces out of the bench's list for one piece alone.
 * @param pieceName the name of a piece as its owner knows it
 */
export function planEvents(plan: Plan, bench: Bench, pieceName: (pieceId: string) => string): EventDraft[] {
  const asked = new Set(bench.pieces.map(({ id }) => id));
  const steps = plan.steps.filter(({ pieceId, isDone }) => asked.has(pieceId) && !isDone);
  const works = steps.filter(({ kind }) => kind === 'work' || kind === 'gate');
  const windows = steps.filter(({ closes, bound }) => closes !== undefined && isLaid(plan, bound));
  return [
    ...works.map((step) => workEvent(step, pieceName(step.pieceId))),
    ...windows.map((step) => windowEvent(step, pieceName(step.pieceId))),
    ...promiseEvents(bench, pieceName),
  ];
}

/** Whether the coat that opens a window is on the piece, and its time no guess any more. */
const isLaid = ({ steps }: Plan, bound: PlannedStep['bound']): boolean =>
  bound.by === 'step' && steps.some(({ stepId, isDone }) => isDone && stepId === bound.stepId);

const uidOf = (what: string): string => `coatwait-${what}`;

function workEvent({ step, stepId, start, end }: PlannedStep, piece: string): EventDraft {
  return {
    uid: uidOf(stepId),
    time: { startMs: toInstantMs(start), endMs: toInstantMs(end) },
    summary: CALENDAR_WORDS.step(stepName(step), piece),
    description: CALENDAR_WORDS.estimate,
    alarmsBefore: STEP_ALARMS,
  };
}

function windowEvent({ stepId, closes = 0 }: PlannedStep, piece: string): EventDraft {
  return {
    uid: uidOf(stepId),
    time: { startMs: toInstantMs(closes), endMs: toInstantMs(closes) },
    summary: CALENDAR_WORDS.windowCloses(piece),
    description: CALENDAR_WORDS.estimate,
    alarmsBefore: WINDOW_ALARMS,
  };
}

function promiseEvents({ pieces, shop }: Bench, pieceName: (pieceId: string) => string): EventDraft[] {
  return pieces.flatMap(({ id, promised }) =>
    promised === undefined
      ? []
      : [
          {
            uid: uidOf(`${id}-promise`),
            time: { day: localDay(promised, shop.zone) },
            summary: CALENDAR_WORDS.promised(pieceName(id)),
            description: CALENDAR_WORDS.promisedText,
            alarmsBefore: PROMISE_ALARMS,
          },
        ],
  );
}
