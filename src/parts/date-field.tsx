import { useId } from 'preact/hooks';
import { Problem } from './choice';

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
    <div class="field">
      <label for={id}>{label}</label>
      <div class="entry">
        <input
          id={id}
          type={kind}
          value={day}
          aria-invalid={problem !== undefined}
          aria-describedby={`${id}-hint ${id}-problem`}
          onInput={(event) => onDay(event.currentTarget.value)}
        />
      </div>
      <p id={`${id}-hint`} class="hint">
        {hint}
      </p>
      <Problem id={`${id}-problem`} text={problem} />
    </div>
  );
}
