import { useSignal } from '@preact/signals';
import { mixSentence } from '../../../actions/mix/mix-refused';
import { putRecipeAway } from '../../../actions/mix/recipe';
import type { Recipe } from '../../../logbook/fold/mix/recipes';
import { Button, LinkButton } from '../../../parts/blocks/button';
import { Fold } from '../../../parts/blocks/fold';
import { Notice } from '../../../parts/blocks/notice';
import { Page, Section } from '../../../parts/blocks/page';
import { Row } from '../../../parts/blocks/row';
import { Choice } from '../../../parts/fields/choice';
import { linkTo } from '../../../parts/frame/route';
import { sayRefused } from '../../../parts/frame/say-refused';
import { useShop } from '../../../parts/frame/shop-context';
import { showToast } from '../../../parts/frame/toast';
import { batchOfLines, typedLines } from '../../../shop/recipe/batch';
import { UNDER_WORDS, USE_WORDS, RECIPE_WORDS as WORDS } from '../../../words/mix/recipe';
import { whenWords } from '../../../words/times';
import { NothingHere } from '../nothing-here';
import { CardPhotos } from './card-photos';
import { MadeOfIt } from './made-of-it';
import { SHOWN, type Shown, shownLine } from './shown-line';
import { newestOf, versionsOf } from './versions';
import { WhatItIs } from './what-it-is';

/** One version of a recipe: what goes in, what it makes, and what was made of it. */
export function RecipePage({ id }: { readonly id: string }) {
  const { shop } = useShop();
  const recipe = shop.value.recipes.get(id);
  if (!recipe) return <NothingHere title={WORDS.title} />;
  const batch = batchOfLines(typedLines(recipe), shop.value);
  return (
    <Page title={recipe.name} backTo={linkTo('mix')}>
      {recipe.next !== undefined && (
        <Notice kind="note" title={WORDS.newer}>
          <a href={linkTo('mix', 'recipe', newestOf(recipe, shop.value.recipes).id)}>{WORDS.toNewest}</a>
        </Notice>
      )}
      <UseLine recipe={recipe} />
      <div class="acts">
        <LinkButton kind="main" icon="mix" href={`${linkTo('mix', 'weigh', 'new')}?recipe=${id}`}>
          {WORDS.weigh}
        </LinkButton>
        <LinkButton href={`${linkTo('mix', 'amount')}?recipe=${id}`}>{WORDS.howMuch}</LinkButton>
      </div>
      {!batch.ok && <Notice kind="caution">{mixSentence(batch.failure, shop.value)}</Notice>}
      <Lines recipe={recipe} />
      <div class="folds">
        {batch.ok && <WhatItIs batch={batch.value} isToner={recipe.use.as === 'dye-toner'} />}
        <CardPhotos recipe={recipe} />
        <MadeOfIt id={id} />
        <Versions recipe={recipe} />
      </div>
      <Acts recipe={recipe} />
    </Page>
  );
}

function UseLine({ recipe: { use, version, writtenMs, note } }: { readonly recipe: Recipe }) {
  const { nowMs } = useShop();
  const more = [
    use.as === 'opaque' ? `${WORDS.over}: ${UNDER_WORDS[use.over]}` : undefined,
    use.as === 'shading' && use.where !== '' ? use.where : undefined,
    use.as === 'opaque' && use.coatsToHide !== undefined
      ? `${WORDS.coatsToHide}: ${use.coatsToHide}`
      : undefined,
  ].filter((text) => text !== undefined);
  return (
    <div>
      <p>{[USE_WORDS[use.as].label, ...more].join(' · ')}</p>
      <p class="quiet">
        {WORDS.version(version)}, {WORDS.written(whenWords(writtenMs, nowMs.value))}
      </p>
      {note && <p class="note-text">{note}</p>}
    </div>
  );
}

function Lines({ recipe }: { readonly recipe: Recipe }) {
  const { shop } = useShop();
  const shown = useSignal<Shown>('typed');
  return (
    <Section title={WORDS.lines}>
      <Choice
        label={WORDS.showIn}
        options={SHOWN.map(({ value, label }) => ({ value, label }))}
        value={shown.value}
        onChange={(value) => {
          shown.value = value;
        }}
      />
      <dl class="ledger">
        {[...typedLines(recipe).entries()].map(([i, line]) => (
          <div key={i}>
            <dt>
              <a href={linkTo('mix', 'ingredient', line.ingredient)}>
                {shop.value.ingredients.get(line.ingredient)?.name ?? ''}
              </a>
            </dt>
            <dd class="digits">{shownLine(typedLines(recipe), i, shown.value, shop.value)}</dd>
          </div>
        ))}
      </dl>
    </Section>
  );
}

function Versions({ recipe }: { readonly recipe: Recipe }) {
  const { shop, nowMs } = useShop();
  const versions = versionsOf(recipe, shop.value.recipes);
  if (versions.length < 2) return null;
  return (
    <Fold title={WORDS.versions} brief={String(versions.length)}>
      <ul class="rows">
        {versions.map((one) => (
          <Row key={one.id} href={linkTo('mix', 'recipe', one.id)} title={WORDS.version(one.version)}>
            <p class="quiet">{WORDS.written(whenWords(one.writtenMs, nowMs.value))}</p>
          </Row>
        ))}
      </ul>
    </Fold>
  );
}

function Acts({ recipe }: { readonly recipe: Recipe }) {
  const { needs, actions } = useShop();
  async function putAway(): Promise<void> {
    const done = await putRecipeAway(needs, recipe.id);
    if (!done.ok) sayRefused(done.failure);
    else showToast({ text: WORDS.putAwayDone(recipe.name), onUndo: () => void actions.undo(done.value.id) });
  }
  return (
    <div class="acts">
      <LinkButton icon="edit" href={linkTo('mix', 'recipe', recipe.id, 'change')}>
        {WORDS.change}
      </LinkButton>
      {recipe.putAwayMs === undefined && (
        <Button icon="remove" onClick={() => void putAway()}>
          {WORDS.putAway}
        </Button>
      )}
    </div>
  );
}
