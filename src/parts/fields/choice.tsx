import { useId } from 'preact/hooks';
import { Icon } from '../blocks/icons';

export interface ChoiceOption<Value extends string> {
  readonly value: Value;
  readonly label: string;
  readonly hint?: string | undefined;
  readonly disabled?: boolean | undefined;
}

export interface ChoiceProps<Value extends string> {
  readonly label: string;
  readonly options: readonly ChoiceOption<Value>[];
  readonly value: Value | undefined;
  readonly onChange: (value: Value) => void;
  readonly problem?: string | undefined;
}

/** One of a few, as big tiles; the chosen tile is filled and ticked. */
export function Choice<Value extends string>({
  label,
  options,
  value,
  onChange,
  problem,
}: ChoiceProps<Value>) {
  const id = useId();
  return (
    <fieldset class="choice" aria-describedby={problem ? `${id}-problem` : undefined}>
      <legend>{label}</legend>
      <div class="tiles">
        {options.map((option) => (
          <label key={option.value} class="tile">
            <input
              type="radio"
              name={id}
              value={option.value}
              checked={option.value === value}
              disabled={option.disabled}
              onChange={() => onChange(option.value)}
            />
            <Icon name="check" />
            <span>
              {option.label}
              {option.hint && <small>{option.hint}</small>}
            </span>
          </label>
        ))}
      </div>
      <Problem id={`${id}-problem`} text={problem} />
    </fieldset>
  );
}

/** What is wrong with a field, said where it is; read out when it comes up. */
export function Problem({ id, text }: { readonly id: string; readonly text: string | undefined }) {
  return (
    <p id={id} class="problem" aria-live="polite">
      {text && <Icon name="stop" />}
      {text && <span>{text}</span>}
    </p>
  );
}
