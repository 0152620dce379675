import { useSignal } from '@preact/signals';
import { type PlanStep, WEATHERS } from '../../../logbook/kinds/shop/plan';
import { Button } from '../../../parts/blocks/button';
import { Choice } from '../../../parts/fields/choice';
import { keepFocus, leadToProblem } from '../../../parts/fields/form/use-form';
import { NumberField } from '../../../parts/fields/number-field';
import type { Band } from '../../../planner/step';
import { PIECE_PLAN, STEP_FIELDS } from '../../../words/plan/plan';
import { DURATION_UNITS, type Duration, durationProblem } from './duration';
import { draftOf, draftProblems, type StepField, type StepFormDraft, stepOf } from './step-draft';

const UNITS = DURATION_UNITS.map((value) => ({
  value,
  label: STEP_FIELDS.units[value],
  spoken: STEP_FIELDS.spoken[value],
}));

interface StepFormProps {
  readonly step: PlanStep;
  /** Of a wait: as the plan has it now. */
  readonly shown: Band | undefined;
  /** Whether the drying model has a wait of its own for it. */
  readonly isEstimated: boolean;
  readonly onSave: (step: PlanStep) => Promise<unknown>;
}

const WHOSE = [
  { value: 'model', label: STEP_FIELDS.estimated, hint: STEP_FIELDS.estimatedHint },
  { value: 'own', label: STEP_FIELDS.ownWait, hint: STEP_FIELDS.ownWaitHint },
] as const;
const AGAINST = WEATHERS.map((value) => ({ value, label: STEP_FIELDS.against_[value] }));

/** The times of a step, to be changed. What was typed stays when it is wrong. */
export function StepForm({ step, shown, isEstimated, onSave }: StepFormProps) {
  const draft = useSignal<StepFormDraft>(draftOf(step, shown));
  const isTried = useSignal(false);
  const problems = isTried.value ? draftProblems(draft.value, step.kind) : {};
  const change = (more: Partial<StepFormDraft>): void => {
    draft.value = { ...draft.value, ...more };
  };
  const isModels = step.kind === 'wait' && isEstimated && !draft.value.isOwn;

  async function save(event: Event): Promise<void> {
    event.preventDefault();
    isTried.value = true;
    if (Object.keys(draftProblems(draft.value, step.kind)).length > 0) return leadToProblem();
    // A wait without a model behind it is the person's own as soon as it is changed.
    const isOwn = step.kind === 'wait' && (!isEstimated || draft.value.isOwn);
    const focusAgain = keepFocus();
    await onSave(stepOf(step, { ...draft.value, isOwn }));
    focusAgain();
  }

  return (
    <form class="stack" onSubmit={(event) => void save(event)} noValidate>
      {step.kind === 'wait' && isEstimated && (
        <Choice
          label={STEP_FIELDS.whose}
          options={WHOSE}
          value={draft.value.isOwn ? 'own' : 'model'}
          onChange={(value) => change({ isOwn: value === 'own' })}
        />
      )}
      {!isModels &&
        (Object.entries(draft.value.times) as [StepField, Duration][]).map(([field, duration]) => (
          <DurationField
            key={field}
            label={STEP_FIELDS[field]}
            duration={duration}
            onDuration={(typed) => change({ times: { ...draft.value.times, [field]: typed } })}
            problem={problems[field]}
          />
        ))}
      {step.kind === 'gate' && (
        <NumberField
          label={STEP_FIELDS.mostFailures}
          text={draft.value.tries}
          onText={(tries) => change({ tries })}
          problem={problems.tries}
        />
      )}
      {step.kind === 'hold' && (
        <Choice
          label={STEP_FIELDS.against}
          options={AGAINST}
          value={draft.value.against}
          onChange={(against) => change({ against })}
        />
      )}
      <div class="acts">
        <Button kind="main" icon="check" isSubmit>
          {PIECE_PLAN.save}
        </Button>
      </div>
    </form>
  );
}

/** A length of time in minutes, hours or days. */
function DurationField({
  label,
  duration,
  onDuration,
  problem,
}: {
  readonly label: string;
  readonly duration: Duration;
  readonly onDuration: (duration: Duration) => void;
  readonly problem?: string | undefined;
}) {
  return (
    <NumberField
      label={label}
      text={duration.text}
      onText={(text, unit = duration.unit) => onDuration({ text, unit })}
      units={UNITS}
      unit={duration.unit}
      onUnit={(unit) => onDuration({ ...duration, unit })}
      problem={problem ?? (duration.text === '' ? undefined : durationProblem(duration))}
    />
  );
}
