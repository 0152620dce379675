import { useSignal } from '@preact/signals';
import type { Recipe } from '../../../logbook/fold/mix/recipes';
import { Button, LinkButton } from '../../../parts/blocks/button';
import { Section } from '../../../parts/blocks/page';
import { Row } from '../../../parts/blocks/row';
import { TextField } from '../../../parts/fields/text-field';
import { linkTo } from '../../../parts/frame/route';
import { useShop } from '../../../parts/frame/shop-context';
import { searchRecipes } from '../../../shop/recipe/search';
import { USE_WORDS, RECIPE_WORDS as WORDS } from '../../../words/mix/recipe';

const A_PAGE = 20;
const WORTH_SEARCHING = 4;

/** The recipes, and a search through them. */
export function RecipeList() {
  const { shop } = useShop();
  const query = useSignal('');
  const most = useSignal(A_PAGE);
  const all = searchRecipes('', shop.value);
  const found = searchRecipes(query.value, shop.value);
  return (
    <Section title={WORDS.recipes}>
      {all.length === 0 && <p>{WORDS.noneText}</p>}
      {all.length >= WORTH_SEARCHING && (
        <>
          <TextField
            label={WORDS.search}
            text={query.value}
            onText={(text) => {
              query.value = text;
              most.value = A_PAGE;
            }}
            hint={WORDS.searchHint}
          />
          <p class="quiet small" role="status">
            {found.length === 0 ? WORDS.noMatch : WORDS.found(found.length, all.length)}
          </p>
        </>
      )}
      <ul class="rows">
        {found.slice(0, most.value).map((recipe) => (
          <RecipeRow key={recipe.id} recipe={recipe} />
        ))}
      </ul>
      <div class="acts">
        {found.length > most.value && (
          <Button
            onClick={() => {
              most.value += A_PAGE;
            }}
          >
            {WORDS.showMore}
          </Button>
        )}
        <LinkButton icon="add" href={linkTo('mix', 'recipe', 'new')}>
          {WORDS.write}
        </LinkButton>
      </div>
    </Section>
  );
}

function RecipeRow({ recipe: { id, name, use, version, lines } }: { readonly recipe: Recipe }) {
  const { shop } = useShop();
  const names = lines.map(({ ingredient }) => shop.value.ingredients.get(ingredient)?.name ?? '');
  return (
    <Row href={linkTo('mix', 'recipe', id)} title={name}>
      <p class="quiet">
        {USE_WORDS[use.as].label}
        {version > 1 && ` · ${WORDS.version(version).toLowerCase()}`}
      </p>
      <p class="quiet small">{names.join(', ')}</p>
    </Row>
  );
}
