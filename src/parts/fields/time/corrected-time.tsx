import type { Signal } from '@preact/signals';
import { TIME_FIELD } from '../../../words/common';
import { CORRECT_WORDS as WORDS } from '../../../words/piece/coat/correct';
import { whenWords } from '../../../words/times';
import type { Form } from '../form/use-form';
import { clockText, instantOf, type TimeChoice } from './time-choice';
import { TimeField } from './time-field';

/** When something really was. */
export function CorrectedTime({ of, form, nowMs }: { of: Signal<TimeChoice>; form: Form; nowMs: number }) {
  const shownMs = instantOf(of.value, nowMs);
  return (
    <TimeField
      label={WORDS.when}
      value={of.value}
      onChange={(choice) => {
        of.value = choice;
      }}
      nowMs={nowMs}
      shown={shownMs === undefined ? undefined : whenWords(shownMs, nowMs)}
      problem={
        form.refused.value?.fields['at'] ??
        (form.isTried.value && shownMs === undefined ? TIME_FIELD.notGiven : undefined)
      }
    />
  );
}

/** The time as a correction says it; nothing where it was not touched, so that it keeps its seconds. */
export function timeChange(choice: TimeChoice, atMs: number, nowMs: number): { at?: string } {
  const instantMs = instantOf(choice, nowMs);
  const isMoved = instantMs !== undefined && clockText(instantMs) !== clockText(atMs);
  return isMoved ? { at: new Date(instantMs).toISOString() } : {};
}
