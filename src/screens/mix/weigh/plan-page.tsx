import { refuseMix } from '../../../actions/mix/mix-refused';
import { beginWeighUp } from '../../../actions/mix/weigh-up';
import type { Recipe } from '../../../logbook/fold/mix/recipes';
import { Button } from '../../../parts/blocks/button';
import { Fold } from '../../../parts/blocks/fold';
import { Page, Section } from '../../../parts/blocks/page';
import { Choice } from '../../../parts/fields/choice';
import { Refusal } from '../../../parts/fields/form/refusal';
import { useForm } from '../../../parts/fields/form/use-form';
import { NumberField } from '../../../parts/fields/number-field';
import { fromHere, linkTo, route } from '../../../parts/frame/route';
import { useShop } from '../../../parts/frame/shop-context';
import { LackingFields, useLacking } from '../../../parts/mix/lacking-fields';
import { succeed } from '../../../result';
import type { MixFailure } from '../../../science/mixing/failure';
import type { Batch } from '../../../science/mixing/ingredient';
import { lackingIn } from '../../../shop/recipe/lacking';
import { unitWord } from '../../../words/frame/logbook';
import { PLAN_WORDS as WORDS } from '../../../words/mix/weigh';
import { numberWords } from '../../../words/quantities';
import { NothingHere } from '../nothing-here';
import { MixCautions } from './cautions';
import { DIVISIONS, division, TARINGS, taring } from './chosen';
import { JobHint } from './job-hint';
import { useLetDowns } from './let-downs';
import { planLines } from './plan-lines';
import { PlanRow } from './plan-row';
import { SIZE_UNITS, sizeProblem, useSizedBatch } from './use-sized-batch';

/** How much to mix, on what scale, and in what order: before the first pour. */
export function PlanPage() {
  const { shop } = useShop();
  const recipe = shop.value.recipes.get(route.value.query.get('recipe') ?? '');
  return recipe ? <Plan recipe={recipe} /> : <NothingHere title={WORDS.title} />;
}

function Plan({ recipe }: { readonly recipe: Recipe }) {
  const { size, batch, factor, mixedM3 } = useSizedBatch(recipe, route.value.query.get('mL'));
  const letDowns = useLetDowns();
  return (
    <Page title={`${WORDS.title}: ${recipe.name}`} backTo={linkTo('mix', 'recipe', recipe.id)}>
      <Section title={WORDS.howMuch}>
        <NumberField
          label={WORDS.howMuch}
          text={size.value.text}
          onText={(text, unit = size.value.unit) => {
            size.value = { text, unit };
          }}
          units={SIZE_UNITS.map((value) => ({ value, label: unitWord(value) }))}
          unit={size.value.unit}
          onUnit={(unit) => {
            size.value = { ...size.value, unit };
          }}
          hint={WORDS.factor(numberWords(factor, 3))}
          problem={sizeProblem(size.value)}
        />
        <JobHint recipe={recipe} size={size} mixedM3={mixedM3} />
      </Section>
      <Fold title={WORDS.scale} brief={WORDS.divisions[division.now.value]}>
        <ScaleFields />
      </Fold>
      {batch.ok ? (
        <Ready
          recipe={recipe}
          batch={letDowns.applied(batch.value)}
          sizeIsRight={sizeProblem(size.value) === undefined}
          letDowns={letDowns}
        />
      ) : (
        <CannotYet recipe={recipe} failure={batch.failure} />
      )}
    </Page>
  );
}

/** Why the batch cannot be worked out: what is not known is asked here, and the plan goes on from it. */
function CannotYet({ recipe, failure }: { readonly recipe: Recipe; readonly failure: MixFailure }) {
  const { shop } = useShop();
  const form = useForm();
  const lacking = useLacking(lackingIn(usedIn(recipe), shop.value));
  const refused = refuseMix(failure, shop.value);
  if (lacking.lacking.length === 0 && !refused.ok) return <Refusal refused={refused.failure} />;
  return (
    <>
      <LackingFields form={lacking} isTried={form.isTried.value} />
      <Refusal refused={form.refused.value} />
      <Button
        kind="main"
        icon="next"
        isWide
        onClick={() =>
          void form.send(lacking.isWhole(), () => lacking.before(async () => succeed(undefined)))
        }
      >
        {WORDS.takeValues}
      </Button>
    </>
  );
}

const usedIn = ({ lines }: Recipe) =>
  lines.map(({ ingredient, amount }) => ({ ingredient, inDrops: amount.typed.unit === 'drops' }));

function ScaleFields() {
  return (
    <>
      <Choice
        label={WORDS.division}
        options={DIVISIONS.map((value) => ({ value, label: WORDS.divisions[value] }))}
        value={division.now.value}
        onChange={division.set}
      />
      <Choice
        label={WORDS.taring}
        options={TARINGS.map((value) => ({ value, ...WORDS[value] }))}
        value={taring.now.value}
        onChange={taring.set}
      />
    </>
  );
}

interface ReadyProps {
  readonly recipe: Recipe;
  readonly batch: Batch;
  readonly sizeIsRight: boolean;
  readonly letDowns: ReturnType<typeof useLetDowns>;
}

function Ready({ recipe, batch, sizeIsRight, letDowns }: ReadyProps) {
  const { shop, needs } = useShop();
  const form = useForm();
  const lacking = useLacking(lackingIn(batch, shop.value));
  const divisionKg = Number(division.now.value) / 1000;
  const lines = planLines(batch, divisionKg, shop.value);
  const isTared = taring.now.value === 'tared';
  const begin = async (): Promise<void> => {
    const goOn = fromHere();
    const begun = await form.send(sizeIsRight && lacking.isWhole(), () =>
      lacking.before(() =>
        beginWeighUp(needs, {
          recipe: recipe.id,
          plan: lines.map(({ ingredient, massKg }) => ({ ingredient, massKg })),
          division: { text: division.now.value, unit: 'g' },
          isTared,
        }),
      ),
    );
    if (begun) goOn(linkTo('mix', 'weigh', begun.weighUp));
  };
  return (
    <>
      <Section title={WORDS.lines}>
        <ol class="plan">
          {[...lines.entries()].map(([i, line]) => (
            <PlanRow
              key={line.ingredient}
              line={line}
              scaleKg={
                isTared ? line.massKg : lines.slice(0, i + 1).reduce((sum, { massKg }) => sum + massKg, 0)
              }
              divisionKg={divisionKg}
              letDowns={letDowns}
              batch={batch}
            />
          ))}
        </ol>
      </Section>
      <LackingFields form={lacking} isTried={form.isTried.value} />
      <MixCautions ingredients={lines.map(({ ingredient }) => ingredient)} />
      <Refusal refused={form.refused.value} />
      <Button kind="main" icon="mix" isWide onClick={() => void begin()}>
        {WORDS.begin}
      </Button>
    </>
  );
}
