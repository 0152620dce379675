import { useId } from 'preact/hooks';
import { Field, tied } from './field';

export interface UnitOption<Unit extends string> {
  readonly value: Unit;
  /** As written beside the number: "mil". */
  readonly label: string;
  /** As read out: "thousandths of an inch". */
  readonly spoken?: string | undefined;
}

export interface NumberFieldProps<Unit extends string> {
  readonly label: string;
  /** What was typed, kept as typed. */
  readonly text: string;
  readonly onText: (text: string) => void;
  /** One unit: shown. Several: keys to choose from. */
  readonly units?: readonly UnitOption<Unit>[] | undefined;
  readonly unit?: Unit | undefined;
  readonly onUnit?: ((unit: Unit) => void) | undefined;
  /** The range that is accepted, or where the prefilled value comes from. */
  readonly hint?: string | undefined;
  readonly problem?: string | undefined;
  /** May be below nought: the keypad for decimals has no minus on some phones. */
  readonly isSigned?: boolean | undefined;
}

/** A number with its unit. It shows what was typed and never rewrites it; whoever holds it says what is wrong. */
export function NumberField<Unit extends string>(props: NumberFieldProps<Unit>) {
  const { label, text, onText, units = [], hint, problem, isSigned } = props;
  const id = useId();
  return (
    <Field {...{ id, label, hint, problem }}>
      <input
        {...tied(id, problem)}
        type="text"
        inputMode={isSigned ? 'text' : 'decimal'}
        autocomplete="off"
        enterkeyhint="next"
        value={text}
        onInput={(event) => onText(event.currentTarget.value)}
      />
      {units.length === 1 && <span class="unit">{units[0]?.label}</span>}
      {units.length > 1 && <UnitKeys {...props} units={units} />}
    </Field>
  );
}

type UnitKeysProps<Unit extends string> = Pick<NumberFieldProps<Unit>, 'label' | 'unit' | 'onUnit'> & {
  readonly units: readonly UnitOption<Unit>[];
};

function UnitKeys<Unit extends string>({ label, units, unit, onUnit }: UnitKeysProps<Unit>) {
  const name = useId();
  return (
    <div class="units" role="radiogroup" aria-label={label}>
      {units.map(({ value, label: written, spoken }) => (
        <label key={value} class="tile">
          <input
            type="radio"
            name={name}
            checked={value === unit}
            aria-label={spoken ?? written}
            onChange={() => onUnit?.(value)}
          />
          {written}
        </label>
      ))}
    </div>
  );
}
