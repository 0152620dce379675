import { useSignal } from '@preact/signals';
import { drawFromJar, weighJar } from '../../../actions/mix/jar';
import type { Jar } from '../../../logbook/fold/mix/jars';
import { LIMITS } from '../../../logbook/limits';
import { Button } from '../../../parts/blocks/button';
import { Choice } from '../../../parts/fields/choice';
import { Refusal } from '../../../parts/fields/form/refusal';
import { useForm } from '../../../parts/fields/form/use-form';
import { type Draft, draftProblem, TypedField } from '../../../parts/fields/typed-field';
import { useShop, useUnits } from '../../../parts/frame/shop-context';
import { showToast } from '../../../parts/frame/toast';
import { JAR_WORDS as WORDS } from '../../../words/mix/jar';

/** Sets the amount right by weighing what is in the jar. */
export function WeighForm({ jar }: { readonly jar: Jar }) {
  const { needs, actions } = useShop();
  const mass = useSignal<Draft<'g'>>({ text: '', unit: 'g' });
  const missing = useSignal<'used' | 'evaporated'>('used');
  const form = useForm();
  async function weigh(event: Event): Promise<void> {
    event.preventDefault();
    const isWhole = draftProblem(mass.value, LIMITS.mass) === undefined;
    const said = { jar: jar.id, mass: mass.value, missing: missing.value };
    const weighed = await form.send(isWhole, () => weighJar(needs, said));
    if (!weighed) return;
    mass.value = { text: '', unit: 'g' };
    form.reset();
    showToast({ text: WORDS.weighed, onUndo: () => void actions.undo(weighed.id) });
  }
  return (
    <details class="more">
      <summary>{WORDS.weigh}</summary>
      <form class="stack" noValidate onSubmit={weigh}>
        <TypedField
          label={WORDS.weight}
          limit={LIMITS.mass}
          draft={mass.value}
          onDraft={(draft) => {
            mass.value = draft;
          }}
          isTried={form.isTried.value}
        />
        <Choice
          label={WORDS.missing}
          options={(['used', 'evaporated'] as const).map((value) => ({ value, ...WORDS.missingIs[value] }))}
          value={missing.value}
          onChange={(value) => {
            missing.value = value;
          }}
        />
        <Refusal refused={form.refused.value} />
        <Button isSubmit>{WORDS.note}</Button>
      </form>
    </details>
  );
}

/** Notes what was taken out other than by a coat. */
export function DrawForm({ jar }: { readonly jar: Jar }) {
  const { needs, actions } = useShop();
  const unit = useUnits() === 'us' ? 'fl-oz-us' : 'mL';
  const volume = useSignal<Draft<'mL' | 'L' | 'fl-oz-us' | 'fl-oz-imperial'>>({ text: '', unit });
  const form = useForm();
  async function draw(event: Event): Promise<void> {
    event.preventDefault();
    const isWhole = draftProblem(volume.value, LIMITS.volume) === undefined;
    const drawn = await form.send(isWhole, () => drawFromJar(needs, { jar: jar.id, volume: volume.value }));
    if (!drawn) return;
    volume.value = { text: '', unit };
    form.reset();
    showToast({ text: WORDS.drawnDone, onUndo: () => void actions.undo(drawn.id) });
  }
  return (
    <details class="more">
      <summary>{WORDS.draw}</summary>
      <form class="stack" noValidate onSubmit={draw}>
        <TypedField
          label={WORDS.drawn}
          limit={LIMITS.volume}
          draft={volume.value}
          onDraft={(draft) => {
            volume.value = draft;
          }}
          isTried={form.isTried.value}
        />
        <Refusal refused={form.refused.value} />
        <Button isSubmit>{WORDS.note}</Button>
      </form>
    </details>
  );
}
