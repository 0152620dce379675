import { useSignal } from '@preact/signals';
import { dropWeighUp, overPouredLine, standingOf } from '../../../actions/mix/weigh-up';
import type { WeighUp } from '../../../logbook/fold/mix/weigh-ups';
import { Button, LinkButton } from '../../../parts/blocks/button';
import { Icon } from '../../../parts/blocks/icons';
import { Notice } from '../../../parts/blocks/notice';
import { Page, Section } from '../../../parts/blocks/page';
import { fromHere, linkTo } from '../../../parts/frame/route';
import { sayOutcome, sayRefused } from '../../../parts/frame/say-refused';
import { useShop } from '../../../parts/frame/shop-context';
import { showToast } from '../../../parts/frame/toast';
import { WEIGH_WORDS as WORDS } from '../../../words/mix/weigh';
import { CORRECT_WORDS } from '../../../words/piece/coat/correct';
import { numberWords, percentWords } from '../../../words/quantities';
import { gramsWords } from '../grams';
import { NothingHere } from '../nothing-here';
import { FillFromWeighUp } from './fill-from-weigh-up';
import { NextPour } from './next-pour';
import { isOvertaken, type Typing } from './typing';

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
  const typing = useSignal<Typing | undefined>(undefined);
  return (
    <>
      <Overtaken weighUp={weighUp} typing={typing.value} />
      <Grown weighUp={weighUp} />
      {standing.next === undefined ? (
        <FillFromWeighUp weighUp={weighUp} name={name} totalKg={weighUp.totalKg} />
      ) : (
        <NextPour key={weighUp.pours.length} weighUp={weighUp} line={standing.next} typing={typing} />
      )}
      <Acts weighUp={weighUp} />
    </>
  );
}

/** Says that a line was poured elsewhere while its reading was being typed here. */
function Overtaken({ weighUp, typing }: { readonly weighUp: WeighUp; readonly typing: Typing | undefined }) {
  const { shop } = useShop();
  if (!typing || !isOvertaken(weighUp, typing)) return null;
  const name = shop.value.ingredients.get(weighUp.plan[typing.line]?.ingredient ?? '')?.name ?? '';
  return (
    <Notice kind="caution" title={WORDS.overtaken(name)} isNew>
      <p>{WORDS.notNoted(typing.text)}</p>
    </Notice>
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
            <dd class="digits">
              {WORDS.of(gramsWords(pouredKg), gramsWords(pouredKg + toPourKg))}
              <Corrections weighUp={weighUp} line={i} />
            </dd>
          </div>
        ))}
      </dl>
    </Section>
  );
}

/** The way to correct each pour of a line; a jar that was filled has its own facts. */
function Corrections({ weighUp, line }: { readonly weighUp: WeighUp; readonly line: number }) {
  const { shop } = useShop();
  const name = shop.value.ingredients.get(weighUp.plan[line]?.ingredient ?? '')?.name ?? '';
  if (weighUp.jar !== undefined) return null;
  return weighUp.pours
    .filter((pour) => pour.line === line)
    .map(({ entry, massKg }) => (
      <a
        key={entry}
        class="undo"
        href={linkTo('mix', 'correct', entry)}
        aria-label={CORRECT_WORDS.leadLine(`${name}, ${gramsWords(massKg)} g`)}
      >
        <Icon name="edit" />
      </a>
    ));
}

function Acts({ weighUp }: { readonly weighUp: WeighUp }) {
  const { needs, actions } = useShop();
  const last = weighUp.pours.at(-1);
  async function undo(): Promise<void> {
    const done = last && (await actions.undo(last.entry));
    if (done) sayOutcome(done, () => ({ text: WORDS.undone }));
  }
  async function drop(): Promise<void> {
    const goOn = fromHere();
    const done = await dropWeighUp(needs, weighUp.id);
    if (!done.ok) sayRefused(done.failure);
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
