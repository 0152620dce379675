import { fillFromWeighUp, pouredBatch } from '../../../actions/mix/fill-from-weigh-up';
import { mixFacts } from '../../../actions/mix/mix-facts';
import type { WeighUp } from '../../../logbook/fold/mix/weigh-ups';
import { Button } from '../../../parts/blocks/button';
import { Refusal } from '../../../parts/fields/form/refusal';
import { useForm } from '../../../parts/fields/form/use-form';
import { fromHere, linkTo } from '../../../parts/frame/route';
import { useShop, useUnits } from '../../../parts/frame/shop-context';
import { showToast } from '../../../parts/frame/toast';
import { JarFields, useJarDraft } from '../../../parts/mix/jar-fields';
import { LackingFields, useLacking } from '../../../parts/mix/lacking-fields';
import { lackingIn } from '../../../shop/recipe/lacking';
import { JAR_FORM } from '../../../words/mix/jar';
import { WEIGH_WORDS as WORDS } from '../../../words/mix/weigh';
import { draftOfJob, pieceOfJob } from '../amount/amount-job';
import { gramsWords } from '../grams';

interface FillProps {
  readonly weighUp: WeighUp;
  readonly name: string;
  readonly totalKg: number;
}

/** Everything is poured: the batch becomes a jar. */
export function FillFromWeighUp({ weighUp, name, totalKg }: FillProps) {
  const { shop, needs, actions } = useShop();
  const isUs = useUnits() === 'us';
  const source = { from: 'recipe', id: weighUp.recipe } as const;
  const job = { piece: pieceOfJob(null, source, shop.value), source };
  const batch = pouredBatch(weighUp);
  const facts = mixFacts(batch, shop.value);
  const finish = facts.ok ? facts.value.finish : 'nitrocellulose';
  const jar = useJarDraft(name, finish, draftOfJob(job, shop.value, isUs).keepBack);
  const lacking = useLacking(lackingIn(batch, shop.value));
  const form = useForm();
  async function fill(event: Event): Promise<void> {
    const goOn = fromHere();
    event.preventDefault();
    const filled = await form.send(jar.isWhole() && lacking.isWhole(), () =>
      lacking.before(() => fillFromWeighUp(needs, weighUp, jar.said())),
    );
    if (!filled) return;
    showToast({ text: JAR_FORM.filled(filled.name), onUndo: () => void actions.undo(filled.id) });
    goOn(linkTo('mix', 'jar', filled.jar));
  }
  return (
    <form class="stack" noValidate onSubmit={fill}>
      <h2>{WORDS.done}</h2>
      <p class="digits">{WORDS.doneText(gramsWords(totalKg))}</p>
      <LackingFields form={lacking} isTried={form.isTried.value} />
      <JarFields jar={jar} isTried={form.isTried.value} />
      <Refusal refused={form.refused.value} />
      <Button kind="main" icon="mix" isWide isSubmit>
        {WORDS.fill}
      </Button>
    </form>
  );
}
