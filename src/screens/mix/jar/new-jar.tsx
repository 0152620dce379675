import { useSignal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import { USUAL_JARS } from '../../../actions/mix/usual-jar';
import { FINISHES } from '../../../logbook/kinds/jar';
import { LIMITS } from '../../../logbook/limits';
import { Choice } from '../../../parts/fields/choice';
import { Refusal } from '../../../parts/fields/refusal';
import { TextField } from '../../../parts/fields/text-field';
import { TypedField } from '../../../parts/fields/typed-field';
import { useForm } from '../../../parts/fields/use-form';
import { Button } from '../../../parts/frame/button';
import { Page, Section } from '../../../parts/frame/page';
import { fromHere, linkTo } from '../../../parts/frame/route';
import { useShop, useUnits } from '../../../parts/frame/shop-context';
import { showToast } from '../../../parts/frame/toast';
import { FINISH_NAMES, JAR_FORM } from '../../../words/mix/jar';
import { isWhole, type JarDraft, nameProblem, saidOf, usualDraft, withFinish } from './draft';
import { mixSolids } from './mix-solids';
import { Outcome } from './outcome';
import { type PartProps, RetarderFields, ThinnerFields, ThinningFields } from './thinner-fields';

/** Says what is in a jar; at common practice it is one tap. */
export function NewJar() {
  const { actions } = useShop();
  const isUs = useUnits() === 'us';
  const draft = useSignal(usualDraft('nitrocellulose', isUs));
  const form = useForm();
  const patch = (some: Partial<JarDraft>) => {
    draft.value = { ...draft.value, ...some };
  };
  async function fill(event: Event): Promise<void> {
    const goOn = fromHere();
    event.preventDefault();
    const isReady = isWhole(draft.value) && mixSolids(draft.value) !== 'too-thin';
    const filled = await form.send(isReady, () => actions.fillJar(saidOf(draft.value)));
    if (!filled) return;
    showToast({ text: JAR_FORM.filled(filled.name), onUndo: () => void actions.undo(filled.id) });
    goOn(linkTo('mix', 'jar', filled.jar));
  }
  const parts = { draft: draft.value, patch, isTried: form.isTried.value };
  const isOpen = form.isTried.value && !isWhole(draft.value);
  return (
    <Page title={JAR_FORM.title} backTo={linkTo('mix')}>
      <p>{JAR_FORM.lead}</p>
      <form class="stack" noValidate onSubmit={fill}>
        <Section title={JAR_FORM.product}>
          <ProductFields {...parts} onFinish={(finish) => patch(withFinish(draft.value, finish, isUs))} />
        </Section>
        <Section title={JAR_FORM.thinnerTitle}>
          <ThinningFields {...parts} />
          <Fold summary={JAR_FORM.thinnerMore} isOpen={isOpen}>
            <ThinnerFields {...parts} />
            <RetarderFields {...parts} />
          </Fold>
          <Fold summary={JAR_FORM.pigmentTitle} isOpen={isOpen}>
            <PigmentFields {...parts} />
          </Fold>
          <Fold summary={JAR_FORM.moreTitle} isOpen={isOpen}>
            <AmountFields {...parts} />
          </Fold>
        </Section>
        <Section title={JAR_FORM.outcome}>
          <Outcome draft={draft.value} />
          <Refusal refused={form.refused.value} />
          <Button kind="main" icon="mix" isWide isSubmit disabled={form.isBusy.value}>
            {JAR_FORM.submit}
          </Button>
        </Section>
      </form>
    </Page>
  );
}

interface FoldProps {
  readonly summary: string;
  /** Something in it needs an answer. */
  readonly isOpen: boolean;
  readonly children: ComponentChildren;
}

/** What most jars leave at common practice, a tap away. */
const Fold = ({ summary, isOpen, children }: FoldProps) => (
  <details class="more" open={isOpen || undefined}>
    <summary>{summary}</summary>
    <div class="stack">{children}</div>
  </details>
);

type ProductProps = PartProps & { readonly onFinish: (finish: JarDraft['finish']) => void };

function ProductFields({ draft, patch, isTried, onFinish }: ProductProps) {
  return (
    <>
      <div class="wide-tiles">
        <Choice
          label={JAR_FORM.finish}
          options={FINISHES.map((value) => ({ value, ...FINISH_NAMES[value] }))}
          value={draft.finish}
          onChange={onFinish}
        />
      </div>
      <TextField
        label={JAR_FORM.name}
        text={draft.name}
        onText={(name) => patch({ name })}
        hint={JAR_FORM.nameHint}
        problem={isTried ? nameProblem(draft) : undefined}
      />
      <TypedField
        label={JAR_FORM.solids}
        limit={LIMITS.volumeSolids}
        draft={draft.volumeSolids}
        onDraft={(volumeSolids) => patch({ volumeSolids })}
        hint={JAR_FORM.solidsHint(USUAL_JARS[draft.finish].volumeSolids)}
        isTried={isTried}
      />
    </>
  );
}

function PigmentFields({ draft, patch, isTried }: PartProps) {
  const sorts = ['none', 'grains', 'flakes'] as const;
  return (
    <>
      <Choice
        label={JAR_FORM.pigment}
        options={sorts.map((value) => ({ value, ...JAR_FORM.pigmentSorts[value] }))}
        value={draft.pigment}
        onChange={(pigment) => patch({ pigment })}
      />
      {draft.pigment !== 'none' && (
        <TypedField
          label={JAR_FORM.pigmentShare}
          limit={LIMITS.pigmentOfSolids}
          draft={draft.pigmentShare}
          onDraft={(pigmentShare) => patch({ pigmentShare })}
          hint={JAR_FORM.pigmentHint}
          isTried={isTried}
        />
      )}
    </>
  );
}

function AmountFields({ draft, patch, isTried }: PartProps) {
  const units = useUnits();
  return (
    <>
      <TypedField
        label={JAR_FORM.amount}
        limit={LIMITS.volume}
        draft={draft.amount}
        onDraft={(amount) => patch({ amount })}
        hint={JAR_FORM.amountHint}
        isOptional
        isTried={isTried}
      />
      <TypedField
        label={JAR_FORM.life[USUAL_JARS[draft.finish].life.as](units)}
        limit={LIMITS.life}
        draft={draft.life}
        onDraft={(life) => patch({ life })}
        hint={JAR_FORM.lifeHint(units)}
        isOptional
        isTried={isTried}
      />
    </>
  );
}
