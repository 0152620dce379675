import * as v from 'valibot';
import { FIRST_JOBS, JOBS } from '../../../planner/starting-plans/job';
import type { GateCheck, Task, WaitFor } from '../../../planner/step';
import type { Weather } from '../../../planner/windows/working-times';
import { LOGBOOK_WORDS } from '../../../words/frame/logbook';
import { COUNTS } from '../../limits';
import { ClockTime, count, entryOf, Id, Instant } from '../envelope';

const FIRST_TASKS = [
  'clean',
  'scuff',
  'flash-coat',
  'coat',
  'toner-coat',
  'opaque-coat',
  'seal',
  'drop-fill',
  'pad',
  'level-sand',
  'rub-out',
  'other',
] as const satisfies readonly Task[];
export const TASKS = [
  ...FIRST_TASKS,
  'spirit-off',
  'pore-fill',
  'grain-seal',
  'filler-paste',
  'glue',
] as const satisfies readonly Task[];
const FIRST_WAITS = [
  'flash-off',
  'recoat',
  'shrink-back',
  'level-sand',
  'rub-out',
  'cure',
  'rest',
] as const satisfies readonly WaitFor[];
export const WAITS = [
  ...FIRST_WAITS,
  'filler-dry',
  'paste-soft',
  'clamped',
] as const satisfies readonly WaitFor[];
export const GATES = [
  'no-print',
  'powders',
  'sink',
  'colour',
  'look-over',
] as const satisfies readonly GateCheck[];
export const WEATHERS = ['blush', 'damp', 'cold'] as const satisfies readonly Weather[];
const WORK_PLACES = ['bench', 'booth'] as const;
export const CLOSURES = ['spraying', 'everything'] as const;
const MARKS = ['done', 'not-passed'] as const;

const Minutes = count(COUNTS.planMinutes);
const Band = v.pipe(
  v.object({ earliest: Minutes, likely: Minutes, late: Minutes }),
  v.check(({ earliest, likely, late }) => earliest <= likely && likely <= late, LOGBOOK_WORDS.bandOutOfOrder),
);

const planStep = <const Tasks extends readonly Task[], const Waits extends readonly WaitFor[]>(
  tasks: Tasks,
  waits: Waits,
) =>
  v.variant('kind', [
    v.object({
      kind: v.literal('work'),
      id: Id,
      task: v.picklist(tasks),
      place: v.picklist(WORK_PLACES),
      minutes: Minutes,
      moveMinutes: v.exactOptional(Minutes),
      isCoat: v.exactOptional(v.boolean()),
      notBefore: v.exactOptional(Instant),
    }),
    v.object({
      kind: v.literal('wait'),
      id: Id,
      until: v.picklist(waits),
      minutes: Band,
      /** Set by hand: no estimate takes its place. */
      isOwn: v.exactOptional(v.boolean()),
    }),
    v.object({
      kind: v.literal('gate'),
      id: Id,
      check: v.picklist(GATES),
      minutes: Minutes,
      againAfterMinutes: Minutes,
      mostFailures: count(COUNTS.tries),
    }),
    v.object({
      kind: v.literal('window'),
      id: Id,
      fromMinutes: Minutes,
      untilMinutes: Minutes,
      scuffMinutes: Minutes,
    }),
    v.object({ kind: v.literal('hold'), id: Id, against: v.picklist(WEATHERS) }),
  ]);
const PlanStep = planStep(TASKS, WAITS);
export type PlanStep = v.InferOutput<typeof PlanStep>;

/** By the clock on the wall; an end that is not after the beginning is on the next day. */
export const ClockSpan = v.object({ open: ClockTime, close: ClockTime });
const DayHours = v.object({ work: v.array(ClockSpan), booth: v.exactOptional(v.array(ClockSpan)) });
const DAYS_A_WEEK = 7;

const isForward = ({ from, to }: { readonly from: string; readonly to: string }): boolean => from < to;
const Span = v.pipe(
  v.object({ from: Instant, to: Instant }),
  v.forward(v.check(isForward, LOGBOOK_WORDS.endsFirst), ['to']),
);

const stepsOf = <Step extends v.GenericSchema>(step: Step) =>
  v.pipe(v.array(step), v.maxLength(COUNTS.planSteps.highest, LOGBOOK_WORDS.tooManySteps));

export const PLAN_KINDS = {
  /** The whole plan of a piece, in place of the one before. */
  'piece-planned': entryOf(
    'piece-planned',
    {
      piece: Id,
      job: v.exactOptional(v.picklist(FIRST_JOBS)),
      coatsADay: count(COUNTS.coatsADay),
      steps: stepsOf(planStep(FIRST_TASKS, FIRST_WAITS)),
      /** Coats laid before do not count towards this plan. */
      since: v.exactOptional(Instant),
    },
    { job: v.exactOptional(v.picklist(JOBS)), steps: stepsOf(PlanStep) },
  ),
  /** What the owner was told; without a time the promise is taken back. */
  'piece-promised': entryOf('piece-promised', { piece: Id, promised: v.exactOptional(Instant) }),
  /** `at` is when the step ended, or when the check was made. */
  'step-marked': entryOf('step-marked', { piece: Id, step: Id, as: v.picklist(MARKS) }),
  /** Seven days, Monday first; and when the compressor must be quiet. */
  'hours-set': entryOf('hours-set', {
    week: v.pipe(v.array(DayHours), v.length(DAYS_A_WEEK)),
    quiet: v.exactOptional(ClockSpan),
  }),
  'closure-set': entryOf('closure-set', { closure: Id, span: Span, closes: v.picklist(CLOSURES) }),
  'closure-lifted': entryOf('closure-lifted', { closure: Id }),
};
