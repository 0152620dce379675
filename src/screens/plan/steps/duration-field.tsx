import { NumberField } from '../../../parts/fields/number-field';
import { STEP_FIELDS } from '../../../words/plan/plan';
import { DURATION_UNITS, type Duration, durationProblem } from './duration';

const UNITS = DURATION_UNITS.map((value) => ({
  value,
  label: STEP_FIELDS.units[value],
  spoken: STEP_FIELDS.spoken[value],
}));

/** A length of time in minutes, hours or days. */
export function DurationField({
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
      onText={(text) => onDuration({ ...duration, text })}
      units={UNITS}
      unit={duration.unit}
      onUnit={(unit) => onDuration({ ...duration, unit })}
      problem={problem ?? (duration.text === '' ? undefined : durationProblem(duration))}
    />
  );
}
