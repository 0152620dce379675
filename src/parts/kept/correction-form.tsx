import { type Signal, useSignal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import { correct } from '../../actions/correct';
import type { Entry, EntryOf } from '../../logbook/entry';
import { TIME_FIELD } from '../../words/common';
import { CORRECT_WORDS as WORDS } from '../../words/piece/coat/correct';
import { whenWords } from '../../words/times';
import { Send } from '../fields/form/form-fields';
import { type Form, useForm } from '../fields/form/use-form';
import { clockText, instantOf, type TimeChoice } from '../fields/time/time-choice';
import { TimeField } from '../fields/time/time-field';
import { fromHere } from '../frame/route';
import { useShop } from '../frame/shop-context';
import { sayLogged } from '../frame/undo';

export type To = EntryOf<'corrected'>['to'];

interface CorrectionFormProps {
  readonly entry: Entry;
  /** Whether everything else that is typed can be read. */
  readonly isWhole: boolean;
  /** What else than its time differs from what was said. */
  readonly changes: () => To;
  /** What was corrected, and the line that says so. */
  readonly what: string;
  readonly done: string;
  readonly backTo: string;
  readonly children: (form: Form) => ComponentChildren;
}

/** Corrects an entry: when it was, and whatever else stands in the form; a time that was not touched keeps its seconds. */
export function CorrectionForm(props: CorrectionFormProps) {
  const { entry, isWhole, changes, what, done, backTo, children } = props;
  const { needs, actions, nowMs } = useShop();
  const form = useForm();
  const atMs = Date.parse(entry.at);
  const time = useSignal<TimeChoice>({ kind: 'clock', text: clockText(atMs) });
  const shownMs = instantOf(time.value, nowMs.value);

  async function send(event: Event): Promise<void> {
    event.preventDefault();
    const goOn = fromHere();
    const to = (): To => ({ ...timeChange(time.value, atMs, needs.now()), ...changes() });
    const logged = await form.send(isWhole && shownMs !== undefined, () => correct(needs, entry.id, to()));
    if (!logged) return;
    sayLogged(actions, logged.id, what, done);
    goOn(backTo);
  }

  return (
    <form class="stack" onSubmit={(event) => void send(event)} noValidate>
      <CorrectedTime of={time} form={form} nowMs={nowMs.value} />
      {children(form)}
      <p class="quiet small">{WORDS.text}</p>
      <Send form={form} icon="edit">
        {WORDS.save}
      </Send>
    </form>
  );
}

/** When something really was. */
function CorrectedTime({ of, form, nowMs }: { of: Signal<TimeChoice>; form: Form; nowMs: number }) {
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
function timeChange(choice: TimeChoice, atMs: number, nowMs: number): { at?: string } {
  const instantMs = instantOf(choice, nowMs);
  const isMoved = instantMs !== undefined && clockText(instantMs) !== clockText(atMs);
  return isMoved ? { at: new Date(instantMs).toISOString() } : {};
}
