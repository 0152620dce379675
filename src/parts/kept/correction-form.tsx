import { useSignal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import { correct } from '../../actions/correct';
import type { Entry, EntryOf } from '../../logbook/entry';
import { CORRECT_WORDS as WORDS } from '../../words/piece/coat/correct';
import { Send } from '../fields/form/form-fields';
import { type Form, useForm } from '../fields/form/use-form';
import { CorrectedTime, timeChange } from '../fields/time/corrected-time';
import { clockText, instantOf, type TimeChoice } from '../fields/time/time-choice';
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
