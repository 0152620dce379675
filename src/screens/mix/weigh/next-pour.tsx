import type { Signal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import { pour, standingOf } from '../../../actions/mix/weigh-up';
import type { WeighUp } from '../../../logbook/fold/mix/weigh-ups';
import { LIMITS } from '../../../logbook/limits';
import { Button } from '../../../parts/blocks/button';
import { Refusal } from '../../../parts/fields/form/refusal';
import { useForm } from '../../../parts/fields/form/use-form';
import { NumberField } from '../../../parts/fields/number-field';
import { draftProblem } from '../../../parts/fields/typed-field';
import { useShop, useUnits } from '../../../parts/frame/shop-context';
import { showToast } from '../../../parts/frame/toast';
import { wholeDrops } from '../../../science/mixing/amount';
import { mixIngredients } from '../../../shop/recipe/ingredients';
import { PLAN_WORDS, WEIGH_WORDS as WORDS } from '../../../words/mix/weigh';
import { numberWords } from '../../../words/quantities';
import { volumeWords } from '../../../words/volumes';
import { gramsWords } from '../grams';
import { exactly } from './exactly';
import { MOST_DROPS } from './plan-lines';
import { type Typing, textFor, typed, withOwnPour } from './typing';

interface NextPourProps {
  readonly weighUp: WeighUp;
  readonly line: number;
  /** What is being typed; it outlives this form, which goes with every pour, made here or in another window. */
  readonly typing: Signal<Typing | undefined>;
}

/** What to pour next, until what the scale shows, and what it shows then. */
export function NextPour({ weighUp, line, typing }: NextPourProps) {
  const { shop, needs, actions } = useShop();
  const form = useForm();
  const text = textFor(weighUp, line, typing.value);
  const standing = standingOf(weighUp);
  const left = standing.lines[line];
  const exact = exactly(weighUp, standing);
  const name = shop.value.ingredients.get(weighUp.plan[line]?.ingredient ?? '')?.name ?? '';
  const problem = draftProblem({ text, unit: 'g' }, LIMITS.mass);
  const note = async (scaleG: string, isWhole: boolean): Promise<void> => {
    const before = typing.value;
    typing.value = before && withOwnPour(before);
    const poured = await form.send(isWhole, () => pour(needs, weighUp, line, scaleG));
    typing.value = poured ? undefined : before;
    if (poured) showToast({ text: WORDS.noted(name), onUndo: () => void actions.undo(poured.id) });
  };
  const heading = useArrival(weighUp.pours.length);
  const isTopUp = (left?.pouredKg ?? 0) > 0;
  return (
    <form
      class="pour"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        void note(text, problem === undefined);
      }}
    >
      <h2 ref={heading} tabIndex={-1}>
        {isTopUp ? WORDS.topUp(name) : WORDS.pourNow(name)}
      </h2>
      {weighUp.isTared && <p>{WORDS.taredNow}</p>}
      <p>{exact.isSeen ? WORDS.until : PLAN_WORDS.notWeighable}</p>
      <p class="pour-target digits">
        {exact.said} <span>g</span>
      </p>
      <AsDrops ingredient={weighUp.plan[line]?.ingredient} massKg={left?.toPourKg ?? 0} />
      <AsVolume ingredient={weighUp.plan[line]?.ingredient} massKg={left?.toPourKg ?? 0} />
      <Button kind="main" icon="check" isWide onClick={() => void note(exact.scaleG, true)}>
        {WORDS.exact(exact.said)}
      </Button>
      <NumberField
        label={WORDS.shows}
        text={text}
        onText={(shown) => {
          typing.value = typed(weighUp, line, shown);
        }}
        units={[{ value: 'g', label: 'g' }]}
        hint={WORDS.showsHint}
        problem={
          (form.isTried.value && text !== '' ? problem : undefined) ?? form.refused.value?.fields['scale']
        }
      />
      {!form.refused.value?.fields['scale'] && <Refusal refused={form.refused.value} />}
      <Button icon="edit" isWide isSubmit disabled={text.trim() === ''}>
        {WORDS.poured}
      </Button>
      <p class="quiet small">{WORDS.later}</p>
    </form>
  );
}

interface PourOf {
  readonly ingredient: string | undefined;
  readonly massKg: number;
}

/** How much of it that is, by weight and, where its density is known, by volume. */
function AsVolume({ ingredient, massKg }: PourOf) {
  const { shop } = useShop();
  const units = useUnits();
  const densityKgM3 = mixIngredients(shop.value.ingredients).get(ingredient ?? '')?.densityKgM3;
  const volume = densityKgM3 === undefined ? undefined : volumeWords(massKg / densityKgM3, units);
  return <p class="quiet digits">{WORDS.addsUp(gramsWords(massKg), volume)}</p>;
}

/** The same by drops of its own bottle, where a drop is known and it is few of them. */
function AsDrops({ ingredient, massKg }: PourOf) {
  const { shop } = useShop();
  const dropKg = mixIngredients(shop.value.ingredients).get(ingredient ?? '')?.dropMassKg;
  if (dropKg === undefined || massKg / dropKg > MOST_DROPS) return null;
  const { drops, error } = wholeDrops(massKg / dropKg);
  const isOff = Math.abs(error) > 0.05;
  const off = `${error > 0 ? '+' : ''}${numberWords(error * 100, 0)} %`;
  return (
    <p class="digits">
      {isOff ? PLAN_WORDS.wholeDrops(drops, off) : PLAN_WORDS.drops(numberWords(drops, 0))}
    </p>
  );
}

/** Puts the reader at the next ingredient when one was poured. */
function useArrival(pours: number) {
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    if (pours > 0) heading.current?.focus({ preventScroll: true });
  }, [pours]);
  return heading;
}
