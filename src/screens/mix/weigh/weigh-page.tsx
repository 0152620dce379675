import { useSignal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import { dropWeighUp, overPouredLine, pour, standingOf } from '../../../actions/mix/weigh-up';
import type { WeighUp } from '../../../logbook/fold/weigh-ups';
import { LIMITS } from '../../../logbook/limits';
import { Button, LinkButton } from '../../../parts/button';
import { Notice } from '../../../parts/notice';
import { NumberField } from '../../../parts/number-field';
import { Page, Section } from '../../../parts/page';
import { Refusal } from '../../../parts/refusal';
import { fromHere, linkTo } from '../../../parts/route';
import { useShop } from '../../../parts/shop-context';
import { showToast } from '../../../parts/toast';
import { draftProblem } from '../../../parts/typed-field';
import { useForm } from '../../../parts/use-form';
import { WEIGH_WORDS as WORDS } from '../../../words/mix-weigh';
import { numberWords, percentWords } from '../../../words/quantities';
import { gramsWords, scaleWords } from '../grams';
import { NothingHere } from '../nothing-here';
import { FillFromWeighUp } from './fill-from-weigh-up';

/** A weigh-up: the next ingredient, what the scale should show, and what was poured. */
export function WeighPage({ id }: { readonly id: string }) {
  const { shop } = useShop();
  const weighUp = shop.value.weighUps.get(id);
  if (!weighUp) return <NothingHere title={WORDS.title} />;
  const name = shop.value.recipes.get(weighUp.recipe)?.name ?? WORDS.title;
  return (
    <Page title={name} backTo={linkTo('mix')}>
      {weighUp.jar !== undefined ? (
        <Notice kind="note" title={WORDS.over2}>
          <LinkButton href={linkTo('mix', 'jar', weighUp.jar)}>{WORDS.toJar}</LinkButton>
        </Notice>
      ) : weighUp.droppedMs !== undefined ? (
        <Notice kind="note">{WORDS.given}</Notice>
      ) : (
        <Pouring weighUp={weighUp} name={name} />
      )}
      <Batch weighUp={weighUp} />
    </Page>
  );
}

function Pouring({ weighUp, name }: { readonly weighUp: WeighUp; readonly name: string }) {
  const standing = standingOf(weighUp);
  return (
    <>
      <Grown weighUp={weighUp} />
      {standing.next === undefined ? (
        <FillFromWeighUp weighUp={weighUp} name={name} totalKg={weighUp.totalKg} />
      ) : (
        <NextPour key={weighUp.pours.length} weighUp={weighUp} line={standing.next} />
      )}
      <Acts weighUp={weighUp} />
    </>
  );
}

/** An over-pour, how much the batch grows by it, and what is topped up. */
function Grown({ weighUp }: { readonly weighUp: WeighUp }) {
  const { shop } = useShop();
  const { factor, moreKg, lines } = standingOf(weighUp);
  const over = overPouredLine(weighUp);
  if (over === undefined) return null;
  const name = shop.value.ingredients.get(weighUp.plan[over]?.ingredient ?? '')?.name ?? '';
  return (
    <Notice kind="caution" title={WORDS.over(name, percentWords(factor - 1, 1))} isNew>
      <p>{WORDS.grown(numberWords(factor, 3), gramsWords(moreKg))}</p>
      {lines.some(({ isTopUp }) => isTopUp) && <p>{WORDS.topUps}</p>}
    </Notice>
  );
}

function NextPour({ weighUp, line }: { readonly weighUp: WeighUp; readonly line: number }) {
  const { shop, needs, actions } = useShop();
  const form = useForm();
  const text = useSignal('');
  const { lines, targetKg } = standingOf(weighUp);
  const left = lines[line];
  const name = shop.value.ingredients.get(weighUp.plan[line]?.ingredient ?? '')?.name ?? '';
  const problem = draftProblem({ text: text.value, unit: 'g' }, LIMITS.mass);
  const note = async (scaleG: string, isWhole: boolean): Promise<void> => {
    const poured = await form.send(isWhole, () => pour(needs, weighUp, line, scaleG));
    if (poured) showToast({ text: WORDS.noted(name), onUndo: () => void actions.undo(poured.id) });
  };
  const heading = useArrival(weighUp.pours.length);
  const isTopUp = (left?.pouredKg ?? 0) > 0;
  const exactG = scaleWords(Math.max(targetKg, weighUp.divisionKg), weighUp.divisionKg);
  return (
    <form
      class="pour"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        void note(text.value, problem === undefined);
      }}
    >
      <h2 ref={heading} tabIndex={-1}>
        {isTopUp ? WORDS.topUp(name) : WORDS.pourNow(name)}
      </h2>
      {weighUp.isTared && <p>{WORDS.taredNow}</p>}
      <p>{WORDS.until}</p>
      <p class="pour-target digits">
        {scaleWords(targetKg, weighUp.divisionKg)} <span>g</span>
      </p>
      {!weighUp.isTared && <p class="quiet digits">{WORDS.addsUp(gramsWords(left?.toPourKg ?? 0))}</p>}
      <Button
        kind="main"
        icon="check"
        isWide
        onClick={() => void note(exactG, true)}
        disabled={form.isBusy.value}
      >
        {WORDS.exact(exactG)}
      </Button>
      <NumberField
        label={WORDS.shows}
        text={text.value}
        onText={(typed) => {
          text.value = typed;
        }}
        units={[{ value: 'g', label: 'g' }]}
        hint={WORDS.showsHint}
        problem={
          form.isTried.value && text.value !== ''
            ? (problem ?? form.refused.value?.fields['scale'])
            : undefined
        }
      />
      {!form.refused.value?.fields['scale'] && <Refusal refused={form.refused.value} />}
      <Button icon="edit" isWide isSubmit disabled={form.isBusy.value || text.value.trim() === ''}>
        {WORDS.poured}
      </Button>
      <p class="quiet small">{WORDS.later}</p>
    </form>
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

/** Every line: what was poured of it, and what is to come. */
function Batch({ weighUp }: { readonly weighUp: WeighUp }) {
  const { shop } = useShop();
  const { lines } = standingOf(weighUp);
  const done = lines.filter(({ toPourKg }) => toPourKg === 0).length;
  return (
    <Section title={WORDS.list}>
      <p class="digits">
        {WORDS.progress(done, lines.length)} · {WORDS.inVessel(gramsWords(weighUp.totalKg))}
      </p>
      <dl class="ledger">
        {[...lines.entries()].map(([i, { ingredient, pouredKg, toPourKg }]) => (
          <div key={i}>
            <dt>{shop.value.ingredients.get(ingredient)?.name}</dt>
            <dd class="digits">{WORDS.of(gramsWords(pouredKg), gramsWords(pouredKg + toPourKg))}</dd>
          </div>
        ))}
      </dl>
    </Section>
  );
}

function Acts({ weighUp }: { readonly weighUp: WeighUp }) {
  const { needs, actions } = useShop();
  const last = weighUp.pours.at(-1);
  async function undo(): Promise<void> {
    const done = last && (await actions.undo(last.entry));
    if (done) showToast({ text: done.ok ? WORDS.undone : done.failure.sentence });
  }
  async function drop(): Promise<void> {
    const goOn = fromHere();
    const done = await dropWeighUp(needs, weighUp.id);
    if (!done.ok) showToast({ text: done.failure.sentence });
    else {
      showToast({ text: WORDS.dropped, onUndo: () => void actions.undo(done.value.id) });
      goOn(linkTo('mix'));
    }
  }
  return (
    <div class="acts">
      {last && (
        <Button icon="undo" onClick={() => void undo()}>
          {WORDS.undo}
        </Button>
      )}
      <Button kind="plain" onClick={() => void drop()}>
        {WORDS.drop}
      </Button>
    </div>
  );
}
