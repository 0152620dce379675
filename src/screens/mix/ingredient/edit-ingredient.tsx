import { useSignal } from '@preact/signals';
import { describeIngredient } from '../../../actions/mix/ingredient';
import { INGREDIENT_KINDS_OF } from '../../../logbook/kinds/mix/ingredient';
import { FINISHES } from '../../../logbook/kinds/mix/jar';
import { Fold } from '../../../parts/blocks/fold';
import { Page, Section } from '../../../parts/blocks/page';
import { Choice } from '../../../parts/fields/choice';
import { Send } from '../../../parts/fields/form/form-fields';
import { useForm } from '../../../parts/fields/form/use-form';
import { SelectField } from '../../../parts/fields/select-field';
import { TextField } from '../../../parts/fields/text-field';
import { fromHere, linkTo, sentFrom } from '../../../parts/frame/route';
import { useShop } from '../../../parts/frame/shop-context';
import { showToast } from '../../../parts/frame/toast';
import { FACT_FROM, SORT_WORDS, INGREDIENT_WORDS as WORDS } from '../../../words/mix/ingredient';
import { FINISH_NAMES } from '../../../words/mix/jar';
import { NothingHere } from '../nothing-here';
import { FactFields, type IngredientPartProps } from './fact-fields';
import {
  type IngredientDraft,
  ingredientProblems,
  isColour,
  isVolatile,
  newIngredient,
  withSort,
} from './ingredient-draft';
import { draftOf, ingredientSaid } from './ingredient-said';
import { DropFields, LetDownFields, OriginFields } from './other-fields';

/** Adds an ingredient to the shop. */
export function NewIngredient() {
  return (
    <IngredientForm
      title={WORDS.newTitle}
      start={newIngredient('white-base')}
      backTo={sentFrom() ?? linkTo('mix', 'ingredient')}
    />
  );
}

/** Changes an ingredient's description. */
export function ChangeIngredient({ id }: { readonly id: string }) {
  const { shop } = useShop();
  const one = shop.value.ingredients.get(id);
  if (!one) return <NothingHere title={WORDS.one} />;
  return (
    <IngredientForm
      title={WORDS.changeTitle}
      id={id}
      start={draftOf(one)}
      backTo={sentFrom() ?? linkTo('mix', 'ingredient', id)}
    />
  );
}

interface FormProps {
  readonly title: string;
  readonly start: IngredientDraft;
  readonly backTo: string;
  readonly id?: string;
}

function IngredientForm({ title, start, backTo, id }: FormProps) {
  const { needs, actions } = useShop();
  const draft = useSignal(start);
  const form = useForm();
  const patch = (some: Partial<IngredientDraft>) => {
    draft.value = { ...draft.value, ...some };
  };
  async function keep(event: Event): Promise<void> {
    const goOn = fromHere();
    event.preventDefault();
    const isWhole = ingredientProblems(draft.value).length === 0;
    const said = () => describeIngredient(needs, ingredientSaid(draft.value), id);
    const kept = await form.send(isWhole, said);
    if (!kept) return;
    showToast({ text: WORDS.kept(kept.name), onUndo: () => void actions.undo(kept.id) });
    goOn(backTo);
  }
  const parts: IngredientPartProps = { draft: draft.value, patch, isTried: form.isTried.value };
  return (
    <Page title={title} backTo={backTo}>
      <p>{WORDS.lead}</p>
      <form class="stack" noValidate onSubmit={keep}>
        <Section title={WORDS.one}>
          <NameFields {...parts} />
          {draft.value.is === 'let-down' && <LetDownFields {...parts} />}
        </Section>
        <div class="folds">
          <Fold title={WORDS.facts} brief={id === undefined ? FACT_FROM.usual : undefined}>
            <FactFields {...parts} />
          </Fold>
          <Fold title={WORDS.drops}>
            <DropFields {...parts} />
          </Fold>
          <Fold title={WORDS.where}>
            <OriginFields {...parts} />
          </Fold>
        </div>
        <Send form={form} icon="check">
          {WORDS.keep}
        </Send>
      </form>
    </Page>
  );
}

function NameFields({ draft, patch, isTried }: IngredientPartProps) {
  return (
    <>
      <Choice
        label={WORDS.sort}
        options={INGREDIENT_KINDS_OF.map((value) => ({ value, ...SORT_WORDS[value] }))}
        value={draft.is}
        onChange={(is) => patch(withSort(draft, is, draft.finish))}
      />
      <TextField
        label={WORDS.name}
        text={draft.name}
        onText={(name) => patch({ name })}
        problem={isTried && draft.name.trim() === '' ? WORDS.noName : undefined}
      />
      {!isVolatile(draft.is) && !isColour(draft.is) && draft.is !== 'let-down' && (
        <SelectField
          label={WORDS.finish}
          options={FINISHES.map((value) => ({ value, label: FINISH_NAMES[value].label }))}
          value={draft.finish}
          onChange={(finish) => patch(withSort(draft, draft.is, finish))}
        />
      )}
    </>
  );
}
