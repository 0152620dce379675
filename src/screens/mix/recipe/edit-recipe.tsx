import { useSignal } from '@preact/signals';
import { writeRecipe } from '../../../actions/mix/recipe';
import { Button, LinkButton } from '../../../parts/blocks/button';
import { EmptyState } from '../../../parts/blocks/empty-state';
import { Page, Section } from '../../../parts/blocks/page';
import { Choice } from '../../../parts/fields/choice';
import { Refusal } from '../../../parts/fields/form/refusal';
import { useForm } from '../../../parts/fields/form/use-form';
import { NumberField } from '../../../parts/fields/number-field';
import { SelectField } from '../../../parts/fields/select-field';
import { TextField } from '../../../parts/fields/text-field';
import { fromHere, linkTo } from '../../../parts/frame/route';
import { useShop } from '../../../parts/frame/shop-context';
import { showToast } from '../../../parts/frame/toast';
import { LackingFields, useLacking } from '../../../parts/mix/lacking-fields';
import { lackingIn } from '../../../shop/recipe/lacking';
import { UNDER_WORDS, USE_WORDS, RECIPE_WORDS as WORDS } from '../../../words/mix/recipe';
import { NothingHere } from '../nothing-here';
import { LineRows } from './line-rows';
import {
  coatsProblem,
  draftOf,
  isWhole,
  newRecipe,
  type RecipeDraft,
  recipeSaid,
  withLine,
} from './recipe-draft';

/** Writes a recipe. */
export function NewRecipe() {
  const { shop } = useShop();
  if (shop.value.ingredients.size === 0) return <FirstIngredient />;
  return <RecipeForm title={WORDS.newTitle} start={newRecipe()} backTo={linkTo('mix')} />;
}

/** Writes a new version of a recipe. */
export function ChangeRecipe({ id }: { readonly id: string }) {
  const { shop } = useShop();
  const recipe = shop.value.recipes.get(id);
  if (!recipe) return <NothingHere title={WORDS.title} />;
  return (
    <RecipeForm
      title={WORDS.changeTitle}
      start={draftOf(recipe)}
      previous={id}
      backTo={linkTo('mix', 'recipe', id)}
    />
  );
}

/** What is written already stands there again on coming back from it. */
const newIngredient = (): string =>
  `${linkTo('mix', 'ingredient', 'new')}?back=${encodeURIComponent(location.hash)}`;

const FirstIngredient = () => (
  <Page title={WORDS.newTitle} backTo={linkTo('mix')}>
    <EmptyState title={WORDS.none} text={WORDS.needsIngredients}>
      <LinkButton kind="main" icon="add" href={newIngredient()}>
        {WORDS.newIngredient}
      </LinkButton>
    </EmptyState>
  </Page>
);

interface RecipeFormProps {
  readonly title: string;
  readonly start: RecipeDraft;
  readonly backTo: string;
  readonly previous?: string;
}

function RecipeForm({ title, start, backTo, previous }: RecipeFormProps) {
  const { shop, needs, actions } = useShop();
  const draft = useSignal(start);
  const form = useForm();
  const lacking = useLacking(lackingIn(usedIn(draft.value), shop.value));
  const patch = (some: Partial<RecipeDraft>) => {
    draft.value = { ...draft.value, ...some };
  };
  async function keep(event: Event): Promise<void> {
    const goOn = fromHere();
    event.preventDefault();
    const kept = await form.send(isWhole(draft.value) && lacking.isWhole(), () =>
      lacking.before(() => writeRecipe(needs, recipeSaid(draft.value, previous))),
    );
    if (!kept) return;
    showToast({ text: WORDS.kept(kept.name), onUndo: () => void actions.undo(kept.id) });
    goOn(linkTo('mix', 'recipe', kept.recipe));
  }
  const isTried = form.isTried.value;
  return (
    <Page title={title} backTo={backTo}>
      {previous !== undefined && <p>{WORDS.versionText}</p>}
      <form class="stack" noValidate onSubmit={keep}>
        <Section title={WORDS.title}>
          <TextField
            label={WORDS.name}
            text={draft.value.name}
            onText={(name) => patch({ name })}
            problem={isTried && draft.value.name.trim() === '' ? WORDS.noName : undefined}
          />
          <UseFields draft={draft.value} patch={patch} isTried={isTried} />
        </Section>
        <Section title={WORDS.lines}>
          <LineRows
            draft={draft.value}
            onLines={(lines) => patch({ lines })}
            isTried={isTried}
            before={previous === undefined ? 0 : start.lines.length}
          />
          <div class="acts">
            <Button icon="add" addsRow onClick={() => patch(withLine(draft.value))}>
              {WORDS.addLine}
            </Button>
            <LinkButton kind="plain" href={newIngredient()}>
              {WORDS.newIngredient}
            </LinkButton>
          </div>
        </Section>
        <Section title={WORDS.note}>
          <TextField label={WORDS.note} text={draft.value.note} onText={(note) => patch({ note })} isLong />
          <LackingFields form={lacking} isTried={isTried} />
          <Refusal refused={form.refused.value} />
          <Button kind="main" icon="check" isWide isSubmit>
            {previous === undefined ? WORDS.keep : WORDS.keepVersion}
          </Button>
        </Section>
      </form>
    </Page>
  );
}

const usedIn = ({ lines }: RecipeDraft) =>
  lines.flatMap(({ ingredient, measure }) =>
    ingredient === undefined ? [] : [{ ingredient, inDrops: measure === 'drops' }],
  );

interface UseProps {
  readonly draft: RecipeDraft;
  readonly patch: (some: Partial<RecipeDraft>) => void;
  readonly isTried: boolean;
}

/** What the mix is for, and the questions that go with it. */
function UseFields({ draft, patch, isTried }: UseProps) {
  const uses = Object.keys(USE_WORDS) as (keyof typeof USE_WORDS)[];
  const unders = Object.keys(UNDER_WORDS) as (keyof typeof UNDER_WORDS)[];
  return (
    <>
      <Choice
        label={WORDS.use}
        options={uses.map((value) => ({ value, ...USE_WORDS[value] }))}
        value={draft.use}
        onChange={(use) => patch({ use })}
      />
      {draft.use === 'opaque' && (
        <SelectField
          label={WORDS.over}
          options={unders.map((value) => ({ value, label: UNDER_WORDS[value] }))}
          value={draft.over}
          onChange={(over) => patch({ over })}
        />
      )}
      {draft.use === 'shading' && (
        <TextField label={WORDS.where} text={draft.where} onText={(where) => patch({ where })} />
      )}
      {draft.use !== 'clear' && (
        <NumberField
          label={draft.use === 'opaque' ? WORDS.coatsToHide : WORDS.passes}
          text={draft.coats}
          onText={(coats) => patch({ coats })}
          hint={WORDS.coatsHint}
          problem={isTried ? coatsProblem(draft.coats) : undefined}
        />
      )}
    </>
  );
}
