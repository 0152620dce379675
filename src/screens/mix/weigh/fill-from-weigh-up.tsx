import { useSignal } from '@preact/signals';
import { fillFromWeighUp, pouredBatch } from '../../../actions/mix/fill-from-weigh-up';
import { mixFacts } from '../../../actions/mix/mix-facts';
import { USUAL_JARS } from '../../../actions/mix/usual-jar';
import type { WeighUp } from '../../../logbook/fold/weigh-ups';
import { LIMITS } from '../../../logbook/limits';
import { Refusal } from '../../../parts/fields/refusal';
import { TextField } from '../../../parts/fields/text-field';
import { type Draft, draftProblem, TypedField } from '../../../parts/fields/typed-field';
import { useForm } from '../../../parts/fields/use-form';
import { Button } from '../../../parts/frame/button';
import { fromHere, linkTo } from '../../../parts/frame/route';
import { useShop, useUnits } from '../../../parts/frame/shop-context';
import { showToast } from '../../../parts/frame/toast';
import { JAR_FORM } from '../../../words/mix/jar';
import { WEIGH_WORDS as WORDS } from '../../../words/mix/weigh';
import { gramsWords } from '../grams';

interface FillProps {
  readonly weighUp: WeighUp;
  readonly name: string;
  readonly totalKg: number;
}

/** Everything is poured: the batch becomes a jar. */
export function FillFromWeighUp({ weighUp, name: recipeName, totalKg }: FillProps) {
  const { shop, needs, actions } = useShop();
  const units = useUnits();
  const facts = mixFacts(pouredBatch(weighUp), shop.value);
  const usual = USUAL_JARS[facts.ok ? facts.value.finish : 'nitrocellulose'].life;
  const name = useSignal(recipeName);
  const life = useSignal<Draft<'h' | 'd' | 'months'>>({ text: usual.text, unit: usual.unit });
  const keepBack = useSignal<Draft<'%'>>({ text: '10', unit: '%' });
  const form = useForm();
  async function fill(event: Event): Promise<void> {
    const goOn = fromHere();
    event.preventDefault();
    const isWhole =
      name.value.trim() !== '' &&
      draftProblem(life.value, LIMITS.life, true) === undefined &&
      draftProblem(keepBack.value, LIMITS.keepBack, true) === undefined;
    const filled = await form.send(isWhole, () =>
      fillFromWeighUp(needs, weighUp, {
        name: name.value.trim(),
        ...(life.value.text.trim() === '' ? {} : { life: { span: life.value, as: usual.as } }),
        ...(keepBack.value.text.trim() === '' ? {} : { keepBack: keepBack.value }),
      }),
    );
    if (!filled) return;
    showToast({ text: JAR_FORM.filled(filled.name), onUndo: () => void actions.undo(filled.id) });
    goOn(linkTo('mix', 'jar', filled.jar));
  }
  return (
    <form class="stack" noValidate onSubmit={fill}>
      <h2>{WORDS.done}</h2>
      <p class="digits">{WORDS.doneText(gramsWords(totalKg))}</p>
      <TextField
        label={WORDS.jarName}
        text={name.value}
        onText={(text) => {
          name.value = text;
        }}
        problem={form.isTried.value && name.value.trim() === '' ? JAR_FORM.noName : undefined}
      />
      <TypedField
        label={JAR_FORM.life[usual.as](units)}
        limit={LIMITS.life}
        draft={life.value}
        onDraft={(draft) => {
          life.value = draft;
        }}
        hint={JAR_FORM.lifeHint(units)}
        isOptional
        isTried={form.isTried.value}
      />
      <TypedField
        label={WORDS.keepBack}
        limit={LIMITS.keepBack}
        draft={keepBack.value}
        onDraft={(draft) => {
          keepBack.value = draft;
        }}
        hint={WORDS.keepBackHint}
        isOptional
        isTried={form.isTried.value}
      />
      <Refusal refused={form.refused.value} />
      <Button kind="main" icon="mix" isWide isSubmit disabled={form.isBusy.value}>
        {WORDS.fill}
      </Button>
    </form>
  );
}
