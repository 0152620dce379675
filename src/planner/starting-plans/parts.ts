import { DAY_MINUTES, HOUR_MINUTES } from '../../units';
import { DROP_MINUTES, SOFT_AGAIN_DAYS, SPRAYING } from '../bench-times';
import type {
  Band,
  GateCheck,
  GateStep,
  HoldStep,
  Step,
  Task,
  WaitFor,
  WaitStep,
  WindowStep,
  WorkStep,
} from '../step';
import type { Weather } from '../windows/working-times';

// The pieces starting plans are written with. Minutes are common practice, no source, unless said.

/** A step of a starting plan: as a step, but it has no name yet and nothing of it is done. */
export type StepDraft =
  | WithoutNames<WorkStep>
  | WithoutNames<WaitStep>
  | WithoutNames<GateStep>
  | WithoutNames<WindowStep>
  | WithoutNames<HoldStep>;
type WithoutNames<S extends Step> = Omit<S, 'id' | 'done'>;

/** A plan to start from; the person changes it freely. */
export interface StartingPlan {
  readonly coatsADay: number;
  readonly steps: readonly StepDraft[];
}

export const days = (earliest: number, likely: number, late: number): Band => ({
  earliest: earliest * DAY_MINUTES,
  likely: likely * DAY_MINUTES,
  late: late * DAY_MINUTES,
});
export const minutes = (earliest: number, likely: number, late: number): Band => ({ earliest, likely, late });
export const hours = (earliest: number, likely: number, late: number): Band =>
  minutes(earliest * HOUR_MINUTES, likely * HOUR_MINUTES, late * HOUR_MINUTES);

export const atBench = (task: Task, minutes: number): StepDraft => ({
  kind: 'work',
  task,
  place: 'bench',
  minutes,
});

/** A coat by gun. */
export const sprayed = (task: Task): StepDraft => ({
  kind: 'work',
  task,
  place: 'booth',
  ...SPRAYING,
  isCoat: true,
});

/** An application at the bench that counts among the coats a day: a drop in a chip, a session with the pad. */
export const applied = (task: Task, minutes: number): StepDraft => ({
  kind: 'work',
  task,
  place: 'bench',
  minutes,
  isCoat: true,
});

/** Drops, with time between them to shrink back. */
export const drops = (count: number): StepDraft[] =>
  times(count, [applied('drop-fill', DROP_MINUTES)], [wait('shrink-back', hours(3, 4, 5))]);

export const wait = (until: WaitFor, minutes: Band): StepDraft => ({ kind: 'wait', until, minutes });

const AGAIN_AFTER_DAYS: Partial<Record<GateCheck, number>> = {
  'no-print': SOFT_AGAIN_DAYS,
  powders: SOFT_AGAIN_DAYS,
};

/** A check of two minutes; if it does not pass, again the next day or the next week, and after seven times something else is wrong. */
export const check = (what: GateCheck): StepDraft => ({
  kind: 'gate',
  check: what,
  minutes: 2,
  againAfterMinutes: (AGAIN_AFTER_DAYS[what] ?? 1) * DAY_MINUTES,
  failedAt: [],
  mostFailures: 7,
});

export const window = (fromMinutes: number, untilMinutes: number): StepDraft => ({
  kind: 'window',
  fromMinutes,
  untilMinutes,
  scuffMinutes: 30,
});

export const hold = (against: Weather): StepDraft => ({ kind: 'hold', against });

/** The same step so many times, with something between each two. */
export function times(
  count: number,
  steps: readonly StepDraft[],
  between: readonly StepDraft[],
): StepDraft[] {
  return Array.from({ length: count }, (_, at) => (at === 0 ? steps : [...between, ...steps])).flat();
}

/** From the last coat to the end: hard enough to level, a look days later whether it sank, hard enough to rub out. */
export const hardened = (
  toLevel: Band,
  levelMinutes: number,
  rubOutMinutes: number,
  toSink = days(2, 3, 7),
): readonly StepDraft[] => [
  wait('level-sand', toLevel),
  check('powders'),
  atBench('level-sand', levelMinutes),
  wait('rest', toSink),
  check('sink'),
  wait('rub-out', days(0, 0, 7)),
  check('no-print'),
  atBench('rub-out', rubOutMinutes),
  check('look-over'),
];
