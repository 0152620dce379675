import { pouredBatch } from '../../../actions/mix/fill-from-weigh-up';
import type { ShopIngredient } from '../../../logbook/fold/mix/ingredients';
import type { Jar } from '../../../logbook/fold/mix/jars';
import { Fold } from '../../../parts/blocks/fold';
import { Row } from '../../../parts/blocks/row';
import { linkTo } from '../../../parts/frame/route';
import { useShop } from '../../../parts/frame/shop-context';
import { batchMassKg } from '../../../science/mixing/ingredient';
import { matchOfJar } from '../../../shop/colour/jars-of-match';
import { JAR_WORDS as WORDS } from '../../../words/mix/jar';
import { percentWords } from '../../../words/quantities';
import { whenWords } from '../../../words/times';
import { Facts } from '../facts';
import { gramsWords } from '../grams';

/** What was really poured into the jar, and the recipe or the jars it came from. */
export function ExactRecipe({ jar }: { readonly jar: Jar }) {
  const { shop } = useShop();
  const { jars, recipes, weighUps, ingredients } = shop.value;
  const weighUp = jar.weighUp === undefined ? undefined : weighUps.get(jar.weighUp);
  if (!weighUp && !jar.boxedFrom) return null;
  const batch = weighUp ? pouredBatch(weighUp) : [];
  const recipe = weighUp && recipes.get(weighUp.recipe);
  const match = matchOfJar(jar, shop.value);
  const assumed = batch.flatMap(({ ingredient: id }) => usualOf(ingredients.get(id)));
  return (
    <Fold title={weighUp ? WORDS.recipe : WORDS.boxedFrom} brief={recipe?.name}>
      {weighUp && (
        <Facts
          rows={batch.map(({ ingredient, massKg }) => [
            ingredients.get(ingredient)?.name ?? ingredient,
            WORDS.pouredOf(gramsWords(massKg), percentWords(massKg / batchMassKg(batch), 2)),
          ])}
        />
      )}
      {assumed.length > 0 && (
        <p class="quiet">
          {WORDS.usualFor(assumed.join(', '))} <a href={linkTo('mix', 'ingredient')}>{WORDS.toIngredients}</a>
        </p>
      )}
      <ul class="rows">
        {recipe && <Row href={linkTo('mix', 'recipe', recipe.id)} title={WORDS.toRecipe(recipe.name)} />}
        {match && <Row href={linkTo('match', match.id)} title={WORDS.toMatch(match.name)} />}
        {(jar.boxedFrom ?? []).map(({ jar: from }) => (
          <Row key={from} href={linkTo('mix', 'jar', from)} title={jars.get(from)?.name ?? from} />
        ))}
      </ul>
    </Fold>
  );
}

/** The name of an ingredient of which something was never measured nor read off a sheet. */
const usualOf = (one: ShopIngredient | undefined): string[] =>
  one && [one.density, one.volumeSolids, one.pigmentOfSolids].some((fact) => fact?.from === 'usual')
    ? [one.name]
    : [];

/** Every coat that was laid from the jar. */
export function CoatsFrom({ jar }: { readonly jar: Jar }) {
  const { shop, nowMs } = useShop();
  const coats = [...shop.value.pieces.values()].flatMap((piece) =>
    piece.coats.filter((coat) => coat.jar === jar.id).map((coat) => ({ piece, coat })),
  );
  return (
    <Fold title={WORDS.coats} brief={WORDS.coatCount(coats.length)}>
      {coats.length === 0 ? (
        <p class="quiet">{WORDS.noCoats}</p>
      ) : (
        <ul class="rows">
          {coats.map(({ piece, coat }) => (
            <Row key={coat.id} href={linkTo('piece', piece.id)} title={WORDS.coatOn(piece.name)}>
              <p class="quiet digits">{whenWords(coat.atMs, nowMs.value)}</p>
            </Row>
          ))}
        </ul>
      )}
    </Fold>
  );
}
