import { useId } from 'preact/hooks';
import { Problem } from './choice';

export interface SelectFieldProps<Value extends string> {
  readonly label: string;
  readonly options: readonly { readonly value: Value; readonly label: string }[];
  readonly value: Value | undefined;
  readonly onChange: (value: Value) => void;
  /** Shown while nothing is chosen. */
  readonly prompt?: string | undefined;
  readonly hint?: string | undefined;
  readonly problem?: string | undefined;
}

/** One of many, as the phone's own list. */
export function SelectField<Value extends string>(props: SelectFieldProps<Value>) {
  const { label, options, value, onChange, prompt, hint, problem } = props;
  const id = useId();
  return (
    <div class="field">
      <label for={id}>{label}</label>
      <div class="entry">
        <select
          id={id}
          value={value ?? ''}
          aria-invalid={problem !== undefined}
          aria-describedby={`${id}-hint ${id}-problem`}
          onChange={(event) => onChange(event.currentTarget.value as Value)}
        >
          {value === undefined && <option value="">{prompt ?? ''}</option>}
          {options.map((option) => (
            <option key={option.value} value={option.value}>
              {option.label}
            </option>
          ))}
        </select>
      </div>
      <p id={`${id}-hint`} class="hint">
        {hint}
      </p>
      <Problem id={`${id}-problem`} text={problem} />
    </div>
  );
}
