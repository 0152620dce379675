import { useSignal } from '@preact/signals';
import { LIMITS, type Limit } from '../../logbook/limits';
import type { Unit } from '../../logbook/unit';
import { Button } from '../../parts/blocks/button';
import { Fold } from '../../parts/blocks/fold';
import { Refusal } from '../../parts/fields/form/refusal';
import { useForm } from '../../parts/fields/form/use-form';
import { type Draft, draftProblem, TypedField } from '../../parts/fields/typed-field';
import { typedWords } from '../../parts/fields/typed-words';
import { useShop, useUnits } from '../../parts/frame/shop-context';
import { showToast } from '../../parts/frame/toast';
import { undoWithToast } from '../../parts/frame/undo';
import { MORE_WORDS } from '../../words/frame/more';

interface KeptSettingProps<U extends Unit> {
  readonly setting: 'sandingTemperature' | 'altitude';
  readonly words: { readonly title: string; readonly label: string; readonly hint: string };
  readonly limit: Limit<readonly [U, ...U[]]>;
  readonly unit: U;
}

/** How warm it is where the sanding is done: hardness is held against it. */
export function SandingRoom() {
  const unit = useUnits() === 'us' ? 'F' : 'C';
  const { sanding } = MORE_WORDS;
  return <KeptSetting setting="sandingTemperature" words={sanding} limit={LIMITS.temperature} unit={unit} />;
}

/** How high the shop lies: thin air cools a wet wick more, and vapour takes more room in it. */
export function Altitude() {
  const unit = useUnits() === 'us' ? 'ft' : 'm';
  return <KeptSetting setting="altitude" words={MORE_WORDS.altitude} limit={LIMITS.altitude} unit={unit} />;
}

function KeptSetting<U extends Unit>({ setting, words, limit, unit }: KeptSettingProps<U>) {
  const { shop, actions } = useShop();
  const units = useUnits();
  const form = useForm();
  const kept = shop.value.settings[setting]?.typed as Draft<U> | undefined;
  const draft = useSignal<Draft<U>>(kept ?? { text: '', unit });

  async function keep(event: Event): Promise<void> {
    event.preventDefault();
    const isWhole = draftProblem(draft.value, limit) === undefined;
    const done = await form.send(isWhole, () => actions.changeSettings({ [setting]: draft.value }));
    if (done)
      showToast({ text: MORE_WORDS.kept, onUndo: () => void undoWithToast(actions, done.id, words.title) });
  }

  return (
    <Fold title={words.title} brief={kept && typedWords(kept, units)}>
      <form class="stack" onSubmit={(event) => void keep(event)} noValidate>
        <TypedField
          label={words.label}
          limit={limit}
          draft={draft.value}
          onDraft={(next) => {
            draft.value = next;
          }}
          hint={words.hint}
          isTried={form.isTried.value}
          refused={form.refused.value?.fields[`patch.${setting}`]}
        />
        <Refusal refused={form.refused.value} />
        <div class="acts">
          <Button isSubmit>{MORE_WORDS.keep}</Button>
        </div>
      </form>
    </Fold>
  );
}
