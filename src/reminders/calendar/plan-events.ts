import { localDay, toInstantMs, type ZoneOffset } from '../../planner/local-day';
import type { Plan, PlannedStep } from '../../planner/plan';
import { stepName } from '../../planner/say';
import type { Bench } from '../../planner/step';
import { HOUR_MINUTES } from '../../units';
import { CALENDAR_WORDS, REMINDER_WORDS } from '../../words/plan/reminders';
import { WINDOW_AHEAD } from '../plan-reminders';
import { ragReminders } from '../shop-reminders';
import type { EventDraft } from './calendar';

// Minutes before: common practice, no source.
const STEP_ALARMS = [10] as const;
const DAY_END_ALARMS = [0] as const;
/** At eight on the day itself. */
const PROMISE_ALARMS = [-8 * HOUR_MINUTES] as const;

/** Whose plan it is, as a calendar shows it. */
export interface CalendarNames {
  /** The name of a piece as its owner knows it. */
  readonly piece: (pieceId: string) => string;
  /** The time zone of the shop, by its IANA name. */
  readonly zone: string;
}

/**
 * What a plan puts into the calendar: all work that is to come, windows that are open, the end of each day with work, days that were
 * promised. What has begun by now is left out. All pieces make the feed of the bench; leave pieces out of the bench's list for one
 * piece alone.
 */
export function planEvents(plan: Plan, bench: Bench, names: CalendarNames): EventDraft[] {
  const asked = new Set(bench.pieces.map(({ id }) => id));
  const steps = plan.steps.filter(({ pieceId, isDone }) => asked.has(pieceId) && !isDone);
  const works = steps.filter(({ kind, start }) => (kind === 'work' || kind === 'gate') && start > plan.now);
  const windows = steps.filter(
    ({ closes, bound }) => closes !== undefined && closes > plan.now && isLaid(plan, bound),
  );
  const estimate = (minute: number): string =>
    CALENDAR_WORDS.estimate(clockOf(minute, bench.working.zone), names.zone);
  const held = new Set(bench.pieces.flatMap(({ id, isHeld }) => (isHeld ? [id] : [])));
  const told = ({ pieceId }: PlannedStep, minute: number): string =>
    orHeld(estimate(minute), held.has(pieceId));
  return [
    ...works.map((step) => workEvent(step, names.piece(step.pieceId), told(step, step.start))),
    ...windows.map((step) => windowEvent(step, names.piece(step.pieceId), told(step, step.closes ?? 0))),
    ...ragReminders(plan, bench.working)
      .filter(({ at }) => at > plan.now)
      .map(({ id, at }) => dayEndEvent(id, at, estimate(at))),
    ...promiseEvents(plan, bench, names.piece),
  ];
}

/** What the clock on the wall shows, "09:05". */
function clockOf(minute: number, zone: ZoneOffset): string {
  const wall = new Date(toInstantMs(minute + zone(minute)));
  return wall.toISOString().slice(11, 16);
}

/** Whether the coat that opens a window is on the piece, and its time no guess any more. */
const isLaid = ({ steps }: Plan, bound: PlannedStep['bound']): boolean =>
  bound.by === 'step' && steps.some(({ stepId, isDone }) => isDone && stepId === bound.stepId);

/** What an event says of a piece that is held: that first. */
const orHeld = (text: string, isHeld: boolean | undefined): string =>
  isHeld ? `${CALENDAR_WORDS.held} ${text}` : text;

const uidOf = (what: string): string => `coatwait-${what}`;

const workEvent = (
  { step, stepId, start, end }: PlannedStep,
  piece: string,
  description: string,
): EventDraft => ({
  uid: uidOf(stepId),
  time: { startMs: toInstantMs(start), endMs: toInstantMs(end) },
  summary: CALENDAR_WORDS.step(stepName(step), piece),
  description,
  alarmsBefore: STEP_ALARMS,
});

const windowEvent = (
  { stepId, closes = 0 }: PlannedStep,
  piece: string,
  description: string,
): EventDraft => ({
  uid: uidOf(stepId),
  time: { startMs: toInstantMs(closes), endMs: toInstantMs(closes) },
  summary: CALENDAR_WORDS.windowCloses(piece),
  description,
  alarmsBefore: WINDOW_AHEAD,
});

/** Rags, overspray and filters: it sounds when the day is taken to be over. */
const dayEndEvent = (id: string, at: number, when: string): EventDraft => ({
  uid: uidOf(id),
  time: { startMs: toInstantMs(at), endMs: toInstantMs(at) },
  summary: CALENDAR_WORDS.dayEnd,
  description: `${REMINDER_WORDS.rags.text} ${when}`,
  alarmsBefore: DAY_END_ALARMS,
});

function promiseEvents(
  { now }: Plan,
  { pieces, working }: Bench,
  pieceName: CalendarNames['piece'],
): EventDraft[] {
  return pieces.flatMap(({ id, promised, isHeld }) =>
    promised === undefined || localDay(promised, working.zone) < localDay(now, working.zone)
      ? []
      : [
          {
            uid: uidOf(`${id}-promise`),
            time: { day: localDay(promised, working.zone) },
            summary: CALENDAR_WORDS.promised(pieceName(id)),
            description: orHeld(CALENDAR_WORDS.promisedText, isHeld),
            alarmsBefore: PROMISE_ALARMS,
          },
        ],
  );
}
