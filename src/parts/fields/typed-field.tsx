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
  /** Where the value comes from, or what is usual; the accepted range when left out. */
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

/** A quantity with its units, held to its limit once the finger has left it; what was typed stays. */
export function TypedField<U extends Unit>(props: TypedFieldProps<U>) {
  const { label, limit, draft, onDraft, isOptional, isTried, refused } = props;
  const hasBeenLeft = useSignal(false);
  const problem = draftProblem(draft, limit, isOptional);
  const isTold = isTried || (hasBeenLeft.value && draft.text !== '');
  const range = rangeWords({ ...rangeIn(limit, draft.unit), unit: draft.unit });
  return (
    <div
      onFocusOut={() => {
        hasBeenLeft.value = true;
      }}
    >
      <NumberField
        label={label}
        text={draft.text}
        onText={(text) => onDraft({ text, unit: draft.unit })}
        units={limit.units.map((unit) => ({ value: unit, label: unitWord(unit) }))}
        unit={draft.unit}
        onUnit={(unit) => onDraft({ text: draft.text, unit })}
        onBoth={(text, unit) => onDraft({ text, unit })}
        hint={props.hint ?? range}
        problem={(isTold ? problem : undefined) ?? refused}
      />
    </div>
  );
}
