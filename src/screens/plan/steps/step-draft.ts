import { parseNumber } from '../../../logbook/as-typed';
import type { PlanStep } from '../../../logbook/kinds/shop/plan';
import { COUNTS } from '../../../logbook/limits';
import { STEP_FIELDS } from '../../../words/plan/plan';
import { FAULT_WORDS } from '../../../words/plan/planner';
import { type Duration, durationOf, durationProblem, minutesIn } from './duration';

/** The lengths of time that a step has. */
export type StepField =
  | 'minutes'
  | 'moveMinutes'
  | 'earliest'
  | 'likely'
  | 'late'
  | 'againAfterMinutes'
  | 'fromMinutes'
  | 'untilMinutes'
  | 'scuffMinutes';

/** A step as it is being changed. */
export interface StepFormDraft {
  readonly times: Readonly<Partial<Record<StepField, Duration>>>;
  readonly isOwn: boolean;
  readonly tries: string;
  readonly against: 'blush' | 'damp' | 'cold';
}

/** A step, ready to be changed. A wait whose own numbers do not hold is shown as the model has it. */
export function draftOf(
  step: PlanStep,
  shown?: { earliest: number; likely: number; late: number },
): StepFormDraft {
  return {
    times: Object.fromEntries(
      Object.entries(minutesOf(step, shown)).map(([field, minutes]) => [field, durationOf(minutes)]),
    ),
    isOwn: step.kind === 'wait' && step.isOwn === true,
    tries: step.kind === 'gate' ? String(step.mostFailures) : '',
    against: step.kind === 'hold' ? step.against : 'blush',
  };
}

function minutesOf(step: PlanStep, shown?: { earliest: number; likely: number; late: number }) {
  switch (step.kind) {
    case 'work':
      return { minutes: step.minutes, ...(step.place === 'booth' && { moveMinutes: step.moveMinutes ?? 0 }) };
    case 'wait':
      return shown ?? step.minutes;
    case 'gate':
      return { minutes: step.minutes, againAfterMinutes: step.againAfterMinutes };
    case 'window': {
      const { fromMinutes, untilMinutes, scuffMinutes } = step;
      return { fromMinutes, untilMinutes, scuffMinutes };
    }
    case 'hold':
      return {};
  }
}

/** What is wrong with the draft, field by field. */
export function draftProblems(
  draft: StepFormDraft,
  kind: PlanStep['kind'],
): Partial<Record<StepField | 'tries', string>> {
  const found: Partial<Record<StepField | 'tries', string>> = {};
  for (const [field, duration] of Object.entries(draft.times) as [StepField, Duration][]) {
    const problem = durationProblem(duration);
    if (problem !== undefined) found[field] = problem;
  }
  if (kind === 'gate' && triesIn(draft) === undefined) found.tries = STEP_FIELDS.triesProblem;
  if (kind === 'wait' && Object.keys(found).length === 0 && !isBandInOrder(draft))
    found.late = FAULT_WORDS['band-out-of-order'];
  return found;
}

function triesIn({ tries }: StepFormDraft): number | undefined {
  const count = parseNumber(tries);
  const { lowest, highest } = COUNTS.tries;
  return count !== undefined && Number.isInteger(count) && count >= lowest && count <= highest
    ? count
    : undefined;
}

const minutesAt = ({ times }: StepFormDraft, field: StepField): number =>
  minutesIn(times[field] ?? { text: '0', unit: 'min' }) ?? 0;

function isBandInOrder(draft: StepFormDraft): boolean {
  const [earliest, likely, late] = (['earliest', 'likely', 'late'] as const).map((field) =>
    minutesAt(draft, field),
  );
  return (earliest ?? 0) <= (likely ?? 0) && (likely ?? 0) <= (late ?? 0);
}

/** The step as the draft has it. Only for a draft without problems. */
export function stepOf(step: PlanStep, draft: StepFormDraft): PlanStep {
  const at = (field: StepField): number => minutesAt(draft, field);
  switch (step.kind) {
    case 'work':
      return {
        ...step,
        minutes: at('minutes'),
        ...(draft.times.moveMinutes && { moveMinutes: at('moveMinutes') }),
      };
    case 'wait': {
      const { isOwn: _, ...wait } = step;
      // The model's numbers are not written into the plan: they would be old tomorrow.
      if (!draft.isOwn) return wait;
      return {
        ...wait,
        minutes: { earliest: at('earliest'), likely: at('likely'), late: at('late') },
        isOwn: true,
      };
    }
    case 'gate':
      return {
        ...step,
        minutes: at('minutes'),
        againAfterMinutes: at('againAfterMinutes'),
        mostFailures: triesIn(draft) ?? step.mostFailures,
      };
    case 'window':
      return {
        ...step,
        fromMinutes: at('fromMinutes'),
        untilMinutes: at('untilMinutes'),
        scuffMinutes: at('scuffMinutes'),
      };
    case 'hold':
      return { ...step, against: draft.against };
  }
}
