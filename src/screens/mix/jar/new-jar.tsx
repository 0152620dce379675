import { useSignal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import { USUAL_JARS, USUAL_SPRAY_CAN } from '../../../actions/mix/usual-jar';
import { finishTraits } from '../../../estimator/finishes/traits';
import { FINISHES } from '../../../logbook/kinds/mix/jar';
import { LIMITS } from '../../../logbook/limits';
import { Button } from '../../../parts/blocks/button';
import { Page, Section } from '../../../parts/blocks/page';
import { Choice } from '../../../parts/fields/choice';
import { freeName } from '../../../parts/fields/form/next-name';
import { Refusal } from '../../../parts/fields/form/refusal';
import { useForm } from '../../../parts/fields/form/use-form';
import { TextField } from '../../../parts/fields/text-field';
import { DateField } from '../../../parts/fields/time/date-field';
import { TypedField } from '../../../parts/fields/typed-field';
import { fromHere, linkTo, route, sentFrom } from '../../../parts/frame/route';
import { useShop, useUnits } from '../../../parts/frame/shop-context';
import { showToast } from '../../../parts/frame/toast';
import { FINISH_NAMES, JAR_FORM } from '../../../words/mix/jar';
import { TracerField } from '../tracer-field';
import {
  draftLike,
  isByCut,
  isWhole,
  type JarDraft,
  nameProblem,
  saidOf,
  takesCan,
  usualDraft,
  usualName,
  withFinish,
  withVessel,
} from './jar-draft';
import { mixSolids } from './mix-solids';
import { Outcome } from './outcome';
import { type PartProps, RetarderFields, ThinnerFields, ThinningFields } from './thinner-fields';

/** Says what is in a jar; at common practice it is one tap. */
export function NewJar() {
  const { actions, shop } = useShop();
  const isUs = useUnits() === 'us';
  const taken = [...shop.value.jars.values()].map(({ name }) => name);
  const named = (some: JarDraft): JarDraft => ({ ...some, name: freeName(some.name, taken) });
  // A name that nobody touched goes with the finish, whatever number it has.
  const change = (withIt: (draft: JarDraft) => JarDraft): void => {
    const usual = usualName(draft.value);
    const isUsual = draft.value.name === freeName(usual, taken);
    patch(isUsual ? named(withIt({ ...draft.value, name: usual })) : withIt(draft.value));
  };
  const like = shop.value.jars.get(route.value.query.get('like') ?? '');
  const draft = useSignal(like ? draftLike(like, isUs) : named(usualDraft('nitrocellulose', isUs)));
  const form = useForm();
  const patch = (some: Partial<JarDraft>) => {
    draft.value = { ...draft.value, ...some };
  };
  async function fill(event: Event): Promise<void> {
    const goOn = fromHere();
    const back = sentFrom();
    event.preventDefault();
    const isReady = isWhole(draft.value) && mixSolids(draft.value) !== 'too-thin';
    const filled = await form.send(isReady, () => actions.fillJar(saidOf(draft.value)));
    if (!filled) return;
    showToast({ text: JAR_FORM.filled(filled.name), onUndo: () => void actions.undo(filled.id) });
    // Who came for a jar goes back to the coat, with the jar filled in.
    goOn(
      back ? `${back}${back.includes('?') ? '&' : '?'}jar=${filled.jar}` : linkTo('mix', 'jar', filled.jar),
    );
  }
  const parts = { draft: draft.value, patch, isTried: form.isTried.value };
  const isOpen = form.isTried.value && !isWhole(draft.value);
  return (
    <Page title={JAR_FORM.title[draft.value.comesAs]} backTo={linkTo('mix')}>
      <p>{JAR_FORM.lead[draft.value.comesAs]}</p>
      <form class="stack" noValidate onSubmit={fill}>
        <Section title={JAR_FORM.product}>
          <ProductFields
            {...parts}
            onFinish={(finish) => change((now) => withFinish(now, finish, isUs))}
            onVessel={(comesAs) => change((now) => withVessel(now, comesAs, isUs))}
          />
        </Section>
        <Section title={JAR_FORM.thinnerTitle(draft.value.finish, draft.value.comesAs)}>
          {draft.value.comesAs === 'can' ? (
            <p class="quiet">{JAR_FORM.canText}</p>
          ) : (
            <Thinning {...parts} isOpen={isOpen} />
          )}
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
          <Button kind="main" icon="mix" isWide isSubmit>
            {JAR_FORM.submit[draft.value.comesAs]}
          </Button>
        </Section>
      </form>
    </Page>
  );
}

const Thinning = (props: PartProps & { readonly isOpen: boolean }) => (
  <>
    <ThinningFields {...props} />
    <Fold
      summary={takesRetarder(props.draft) ? JAR_FORM.thinnerMore : JAR_FORM.thinner}
      isOpen={props.isOpen}
    >
      <ThinnerFields {...props} />
      <RetarderFields {...props} />
    </Fold>
  </>
);

const takesRetarder = ({ finish }: JarDraft): boolean => finishTraits(finish).takesRetarder;

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

type ProductProps = PartProps & {
  readonly onFinish: (finish: JarDraft['finish']) => void;
  readonly onVessel: (comesAs: JarDraft['comesAs']) => void;
};

function ProductFields({ draft, patch, isTried, onFinish, onVessel }: ProductProps) {
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
      {takesCan(draft.finish) && (
        <Choice
          label={JAR_FORM.comesAs}
          options={VESSELS.map((value) => ({ value, ...JAR_FORM.vessels[value] }))}
          value={draft.comesAs}
          onChange={onVessel}
        />
      )}
      <TextField
        label={JAR_FORM.name[draft.comesAs]}
        text={draft.name}
        onText={(name) => patch({ name })}
        hint={JAR_FORM.nameHint}
        problem={isTried ? nameProblem(draft) : undefined}
      />
      <SolidsFields {...{ draft, patch, isTried }} />
    </>
  );
}

const SOLIDS_BY = ['cut', 'solids'] as const;

/** How strong it is: by its volume solids, shellac by its cut. */
function SolidsFields({ draft, patch, isTried }: PartProps) {
  const isCan = draft.comesAs === 'can';
  const usual = isCan ? USUAL_SPRAY_CAN : USUAL_JARS[draft.finish];
  return (
    <>
      {draft.finish === 'shellac' && !isCan && (
        <Choice
          label={JAR_FORM.solidsBy}
          options={SOLIDS_BY.map((value) => ({ value, ...JAR_FORM.solidsBys[value] }))}
          value={draft.solidsBy}
          onChange={(solidsBy) => patch({ solidsBy })}
        />
      )}
      {isByCut(draft) ? (
        <TypedField
          label={JAR_FORM.cut}
          limit={LIMITS.cut}
          draft={draft.cut}
          onDraft={(cut) => patch({ cut })}
          hint={JAR_FORM.cutHint}
          isTried={isTried}
        />
      ) : (
        <TypedField
          label={JAR_FORM.solids[draft.comesAs]}
          limit={LIMITS.volumeSolids}
          draft={draft.volumeSolids}
          onDraft={(volumeSolids) => patch({ volumeSolids })}
          hint={JAR_FORM.solidsHint(usual.volumeSolids)}
          isTried={isTried}
        />
      )}
      {draft.finish === 'shellac' && <MixedOn {...{ draft, patch }} />}
    </>
  );
}

const MixedOn = ({ draft, patch }: Pick<PartProps, 'draft' | 'patch'>) => (
  <DateField
    label={JAR_FORM.mixedOn}
    day={draft.mixedOn}
    onDay={(mixedOn) => patch({ mixedOn })}
    hint={JAR_FORM.mixedOnHint}
  />
);

const VESSELS = ['jar', 'can'] as const;

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
        label={JAR_FORM.amount[draft.comesAs]}
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
      <TracerField text={draft.tracer} onText={(tracer) => patch({ tracer })} isTried={isTried} />
    </>
  );
}
