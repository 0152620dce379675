import { useId } from 'preact/hooks';
import { Field, tied } from '../field';

export interface DateFieldProps {
  readonly label: string;
  /** `2026-11-25`; with a time `2026-11-25T14:20`; a time alone `14:20`. */
  readonly day: string;
  readonly onDay: (day: string) => void;
  readonly kind?: 'date' | 'datetime-local' | 'time' | undefined;
  readonly hint?: string | undefined;
  readonly problem?: string | undefined;
}

/** A day, a time of day, or both, by the phone's own picker. */
export function DateField({ label, day, onDay, kind = 'date', hint, problem }: DateFieldProps) {
  const id = useId();
  return (
    <Field {...{ id, label, hint, problem }}>
      <input
        {...tied(id, problem)}
        type={kind}
        value={day}
        onInput={(event) => onDay(event.currentTarget.value)}
      />
    </Field>
  );
}
