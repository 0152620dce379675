import { useSignal } from '@preact/signals';
import { LIMITS } from '../../logbook/limits';
import { Button } from '../../parts/button';
import { Section } from '../../parts/page';
import { Refusal } from '../../parts/refusal';
import { useShop, useUnits } from '../../parts/shop-context';
import { showToast } from '../../parts/toast';
import { type Draft, draftProblem, TypedField } from '../../parts/typed-field';
import { undoWithToast } from '../../parts/undo';
import { useForm } from '../../parts/use-form';
import { MORE_WORDS } from '../../words/more';

const WORDS = MORE_WORDS.sanding;

/** How warm it is where the sanding is done: hardness is held against it. */
export function SandingRoom() {
  const { shop, actions } = useShop();
  const unit = useUnits() === 'us' ? 'F' : 'C';
  const form = useForm();
  const kept = shop.value.settings.sandingTemperature?.typed as Draft<'C' | 'F'> | undefined;
  const draft = useSignal<Draft<'C' | 'F'>>(kept ?? { text: '', unit });

  async function keep(event: Event): Promise<void> {
    event.preventDefault();
    const isWhole = draftProblem(draft.value, LIMITS.temperature) === undefined;
    const done = await form.send(isWhole, () => actions.changeSettings({ sandingTemperature: draft.value }));
    if (done)
      showToast({ text: WORDS.kept, onUndo: () => void undoWithToast(actions, done.id, WORDS.title) });
  }

  return (
    <Section title={WORDS.title}>
      <form class="stack" onSubmit={(event) => void keep(event)} noValidate>
        <TypedField
          label={WORDS.label}
          limit={LIMITS.temperature}
          draft={draft.value}
          onDraft={(next) => {
            draft.value = next;
          }}
          hint={WORDS.hint}
          isTried={form.isTried.value}
          refused={form.refused.value?.fields['patch.sandingTemperature']}
        />
        <Refusal refused={form.refused.value} />
        <div class="acts">
          <Button isSubmit>{WORDS.keep}</Button>
        </div>
      </form>
    </Section>
  );
}
