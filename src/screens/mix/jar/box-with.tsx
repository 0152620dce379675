import { useSignal } from '@preact/signals';
import { boxJars } from '../../../actions/mix/box-jars';
import type { Jar } from '../../../logbook/fold/mix/jars';
import { Button } from '../../../parts/blocks/button';
import { Fold } from '../../../parts/blocks/fold';
import { Refusal } from '../../../parts/fields/form/refusal';
import { useForm } from '../../../parts/fields/form/use-form';
import { named, SelectField } from '../../../parts/fields/select-field';
import { fromHere, linkTo } from '../../../parts/frame/route';
import { useShop } from '../../../parts/frame/shop-context';
import { showToast } from '../../../parts/frame/toast';
import { JAR_WORDS as WORDS } from '../../../words/mix/jar';

/** Pours this jar and another together. */
export function BoxWith({ jar }: { readonly jar: Jar }) {
  const { shop, needs, actions } = useShop();
  const chosen = useSignal<string | undefined>(undefined);
  const form = useForm();
  const others = [...shop.value.jars.values()].filter(
    ({ id, emptiedMs }) => id !== jar.id && emptiedMs === undefined,
  );
  if (jar.emptiedMs !== undefined || others.length === 0) return null;
  const other = others.find(({ id }) => id === chosen.value);
  const box = async (): Promise<void> => {
    const goOn = fromHere();
    const boxed = other && (await form.send(true, () => boxJars(needs, jar, other)));
    if (!boxed) return;
    showToast({ text: WORDS.boxed(boxed.name), onUndo: () => void actions.undo(boxed.id) });
    goOn(linkTo('mix', 'jar', boxed.jar));
  };
  return (
    <Fold title={WORDS.box}>
      <p>{WORDS.boxText}</p>
      <SelectField
        label={WORDS.boxWith}
        prompt={WORDS.boxPrompt}
        options={named(others)}
        value={chosen.value}
        onChange={(id) => {
          chosen.value = id;
        }}
      />
      <Refusal refused={form.refused.value} />
      <Button onClick={() => void box()} disabled={!other}>
        {WORDS.boxDo}
      </Button>
    </Fold>
  );
}
