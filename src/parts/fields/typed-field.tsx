import { useSignal } from '@preact/signals';
import { readTyped } from '../../logbook/as-typed';
import { type Limit, rangeIn } from '../../logbook/limits';
import type { Unit } from '../../logbook/unit';
import { rangeWords, unitWord } from '../../words/frame/logbook';
import { NumberField } from './number-field';

/** A quantity as it is being typed. */
export interface Draft<U extends Unit = Unit> {
  readonly text: string;
  readonly unit: U;
}

export interface TypedFieldProps<U extends Unit> {
  readonly label: string;
  readonly limit: Limit<readonly [U, ...U[]]>;
  readonly draft: Draft<U>;
  readonly onDraft: (draft: Draft<U>) => void;
  /** Where the value comes from, or what is usual; the accepted range when left out, where that tells anything. */
  readonly hint?: string | undefined;
  readonly isOptional?: boolean | undefined;
  /** Sending was tried: an empty field is now a problem too. */
  readonly isTried?: boolean | undefined;
  /** What the logbook said of it. */
  readonly refused?: string | undefined;
}

/** What is wrong with a draft; undefined when it can be sent. */
export function draftProblem(draft: Draft, limit: Limit, isOptional = false): string | undefined {
  if (isOptional && draft.text.trim() === '') return undefined;
  const read = readTyped(draft, limit);
  return read.ok ? undefined : read.failure;
}

/** From a tenth of a milligram to a sack full tells nobody anything: such a range is said where it is broken. */
const isTelling = ({ lowest, highest }: ReturnType<typeof rangeIn>): boolean =>
  highest <= 1000 * lowest || lowest <= 0;

/** A quantity with its units, held to its limit once the finger has left it; what was typed stays. */
export function TypedField<U extends Unit>(props: TypedFieldProps<U>) {
  const { label, limit, draft, onDraft, isOptional, isTried, refused } = props;
  const hasBeenLeft = useSignal(false);
  const problem = draftProblem(draft, limit, isOptional);
  const isTold = isTried || (hasBeenLeft.value && draft.text !== '');
  const range = rangeIn(limit, draft.unit);
  const told = isTelling(range) ? rangeWords({ ...range, unit: draft.unit }) : undefined;
  return (
    <div
      onFocusOut={() => {
        hasBeenLeft.value = true;
      }}
    >
      <NumberField
        label={label}
        text={draft.text}
        onText={(text, unit = draft.unit) => onDraft({ text, unit })}
        units={limit.units.map((unit) => ({ value: unit, label: unitWord(unit) }))}
        unit={draft.unit}
        onUnit={(unit) => onDraft({ text: draft.text, unit })}
        hint={props.hint ?? told}
        problem={(isTold ? problem : undefined) ?? refused}
      />
    </div>
  );
}
