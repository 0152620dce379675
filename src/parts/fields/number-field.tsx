import { useId } from 'preact/hooks';
import { eitherOf, inPlain } from '../../logbook/as-typed';
import { Button } from '../blocks/button';
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
  /** With the unit that was typed behind the number, where one was. */
  readonly onText: (text: string, unit?: Unit) => void;
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

/**
 * A number with its unit. While it is typed it stays as typed; once the finger leaves it, it is written plainly: "1 1/2 mil" is
 * 1.5 with the unit mil chosen. Where a comma may mean either, it asks. Whoever holds it says what is wrong.
 */
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
        onChange={(event) => tidy(event.currentTarget.value, props)}
      />
      {units.length === 1 && <span class="unit">{units[0]?.label}</span>}
      {units.length > 1 && <UnitKeys {...props} units={units} />}
      <EitherKeys {...props} />
    </Field>
  );
}

const valuesOf = <Unit extends string>({ units = [] }: NumberFieldProps<Unit>): readonly Unit[] =>
  units.map(({ value }) => value);

/** Writes what was typed plainly, and chooses the unit that was typed with it. */
function tidy<Unit extends string>(typed: string, props: NumberFieldProps<Unit>): void {
  const plain = inPlain(typed, valuesOf(props));
  if (plain && plain.text !== typed) props.onText(plain.text, plain.unit as Unit | undefined);
}

/** The two numbers that were perhaps meant, a key each. */
function EitherKeys<Unit extends string>(props: NumberFieldProps<Unit>) {
  const either = eitherOf(props.text, valuesOf(props));
  if (!either) return null;
  return (
    <fieldset class="either" aria-label={props.label}>
      {either.numbers.map((meant) => (
        <Button key={meant} onClick={() => props.onText(meant, either.unit as Unit | undefined)}>
          {meant}
        </Button>
      ))}
    </fieldset>
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
