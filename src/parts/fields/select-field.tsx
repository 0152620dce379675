import { useId } from 'preact/hooks';
import { Field, tied } from './field';

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

/** Things with a name, as the options of a list. */
export const named = <Id extends string>(
  things: Iterable<{ readonly id: Id; readonly name: string }>,
): { readonly value: Id; readonly label: string }[] =>
  [...things].map(({ id, name }) => ({ value: id, label: name }));

/** One of many, as the phone's own list. */
export function SelectField<Value extends string>(props: SelectFieldProps<Value>) {
  const { label, options, value, onChange, prompt, hint, problem } = props;
  const id = useId();
  return (
    <Field {...{ id, label, hint, problem }}>
      <select
        {...tied(id, problem)}
        value={value ?? ''}
        onChange={(event) => onChange(event.currentTarget.value as Value)}
      >
        {value === undefined && <option value="">{prompt ?? ''}</option>}
        {options.map((option) => (
          <option key={option.value} value={option.value}>
            {option.label}
          </option>
        ))}
      </select>
    </Field>
  );
}
