import { putIngredientAway } from '../../../actions/mix/ingredient';
import type { ShopIngredient } from '../../../logbook/fold/mix/ingredients';
import type { Typed } from '../../../logbook/typed';
import { Button, LinkButton } from '../../../parts/blocks/button';
import { EmptyState } from '../../../parts/blocks/empty-state';
import { Notice } from '../../../parts/blocks/notice';
import { Page, Section } from '../../../parts/blocks/page';
import { Row } from '../../../parts/blocks/row';
import { typedWords } from '../../../parts/fields/typed-words';
import { linkTo } from '../../../parts/frame/route';
import { sayRefused } from '../../../parts/frame/say-refused';
import { useShop, useUnits } from '../../../parts/frame/shop-context';
import { showToast } from '../../../parts/frame/toast';
import {
  FACT_FROM,
  SORT_WORDS,
  TRACER_WORDS,
  INGREDIENT_WORDS as WORDS,
} from '../../../words/mix/ingredient';
import { numberWords, percentWords, type UnitSystem } from '../../../words/quantities';
import { Facts } from '../facts';
import { NothingHere } from '../nothing-here';

/** Everything that recipes are made of. */
export function IngredientList() {
  const { shop } = useShop();
  const offered = [...shop.value.ingredients.values()].filter(({ putAwayMs }) => putAwayMs === undefined);
  const add = (
    <LinkButton
      kind={offered.length === 0 ? 'main' : 'usual'}
      icon="add"
      href={linkTo('mix', 'ingredient', 'new')}
    >
      {WORDS.add}
    </LinkButton>
  );
  return (
    <Page title={WORDS.title} backTo={linkTo('mix')}>
      {offered.length === 0 ? (
        <EmptyState title={WORDS.none} text={WORDS.noneText}>
          {add}
        </EmptyState>
      ) : (
        <>
          <h2 class="heard">{WORDS.title}</h2>
          <ul class="rows">
            {offered.map(({ id, name, is }) => (
              <Row key={id} href={linkTo('mix', 'ingredient', id)} title={name}>
                <p class="quiet">{SORT_WORDS[is].label}</p>
              </Row>
            ))}
          </ul>
          <div class="acts">{add}</div>
        </>
      )}
    </Page>
  );
}

/** One ingredient with its facts. */
export function IngredientPage({ id }: { readonly id: string }) {
  const { shop, nowMs } = useShop();
  const units = useUnits();
  const one = shop.value.ingredients.get(id);
  if (!one) return <NothingHere title={WORDS.one} />;
  const isOver = one.useBy !== undefined && Date.parse(one.useBy) < nowMs.value;
  return (
    <Page title={one.name} backTo={linkTo('mix', 'ingredient')}>
      {one.putAwayMs !== undefined && <Notice kind="note">{WORDS.isAway}</Notice>}
      {isOver && one.useBy && <Notice kind="caution">{WORDS.pastUseBy(one.useBy)}</Notice>}
      <Section title={WORDS.facts}>
        <Facts rows={factRows(one, units)} />
      </Section>
      {one.madeOf && <MadeOf one={one} />}
      <UsedIn id={id} />
      <Acts one={one} />
    </Page>
  );
}

type TypedFact =
  | {
      readonly value: { readonly typed: Typed };
      readonly from: keyof typeof FACT_FROM;
    }
  | undefined;

function factRows(one: ShopIngredient, units: UnitSystem): readonly (readonly [string, string])[] {
  const typedFact = (fact: TypedFact): string =>
    fact ? `${typedWords(fact.value.typed, units)}, ${FACT_FROM[fact.from]}` : WORDS.unknown;
  const rows: (readonly [string, string])[] = [
    [WORDS.sort, SORT_WORDS[one.is].label],
    [WORDS.density, typedFact(one.density)],
    [WORDS.drop, typedFact(one.dropMass ?? one.dropVolume)],
  ];
  if (one.volumeSolids) rows.push([WORDS.volumeSolids, typedFact(one.volumeSolids)]);
  if (one.weightSolids) rows.push([WORDS.weightSolids, typedFact(one.weightSolids)]);
  if (one.pigmentOfSolids) rows.push([WORDS.pigmentOfSolids, typedFact(one.pigmentOfSolids)]);
  if (one.criticalPigment) rows.push([WORDS.criticalPigment, typedFact(one.criticalPigment)]);
  if (one.tracerNm) rows.push([TRACER_WORDS.term, TRACER_WORDS.seenAt(one.tracerNm)]);
  for (const [label, text] of [
    [WORDS.source, one.source],
    [WORDS.lot, one.lot],
    [WORDS.opened, one.opened],
    [WORDS.useBy, one.useBy],
    [WORDS.note, one.note],
  ] as const)
    if (text) rows.push([label, text]);
  return rows;
}

function MadeOf({ one }: { readonly one: ShopIngredient }) {
  const { shop } = useShop();
  return (
    <Section title={WORDS.madeOf}>
      <ul>
        {one.madeOf?.map(({ ingredient, massFraction }) => (
          <li key={ingredient}>
            {WORDS.madeOfPart(
              shop.value.ingredients.get(ingredient)?.name ?? '',
              percentWords(massFraction, numberWords(massFraction * 100, 0) === '0' ? 2 : 1),
            )}
          </li>
        ))}
      </ul>
    </Section>
  );
}

function UsedIn({ id }: { readonly id: string }) {
  const { shop } = useShop();
  const recipes = [...shop.value.recipes.values()].filter(
    ({ lines, next }) => next === undefined && lines.some(({ ingredient }) => ingredient === id),
  );
  return (
    <Section title={WORDS.usedIn}>
      {recipes.length === 0 ? (
        <p class="quiet">{WORDS.usedNowhere}</p>
      ) : (
        <ul class="rows">
          {recipes.map((recipe) => (
            <Row key={recipe.id} href={linkTo('mix', 'recipe', recipe.id)} title={recipe.name} />
          ))}
        </ul>
      )}
    </Section>
  );
}

function Acts({ one }: { readonly one: ShopIngredient }) {
  const { needs, actions } = useShop();
  async function putAway(): Promise<void> {
    const done = await putIngredientAway(needs, one.id);
    if (!done.ok) sayRefused(done.failure);
    else showToast({ text: WORDS.putAwayDone(one.name), onUndo: () => void actions.undo(done.value.id) });
  }
  return (
    <>
      <div class="acts">
        <LinkButton icon="edit" href={linkTo('mix', 'ingredient', one.id, 'change')}>
          {WORDS.change}
        </LinkButton>
        {one.putAwayMs === undefined && (
          <Button icon="remove" onClick={() => void putAway()}>
            {WORDS.putAway}
          </Button>
        )}
      </div>
      <p class="quiet small">{WORDS.putAwayText}</p>
    </>
  );
}
