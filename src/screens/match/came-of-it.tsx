import { Section } from '../../parts/blocks/page';
import { Row } from '../../parts/blocks/row';
import { linkTo } from '../../parts/frame/route';
import { useShop } from '../../parts/frame/shop-context';
import { jarsOfMatch } from '../../shop/colour/jars-of-match';
import { coatedFrom } from '../../shop/recipe/use';
import { MATCH_WORDS as WORDS } from '../../words/match/match';
import type { OfMatch } from './use-match';

/** The recipe that a match became, its jars, and the pieces they are on. */
export function CameOfIt({ match }: OfMatch) {
  const shop = useShop().shop.value;
  const recipe = shop.recipes.get(match.accepted?.recipe ?? '');
  if (!recipe) return null;
  const jars = jarsOfMatch(match, shop);
  return (
    <Section title={WORDS.cameOfIt}>
      <ul class="rows">
        <Row href={linkTo('mix', 'recipe', recipe.id)} title={WORDS.recipe(recipe.name, recipe.version)} />
        {jars.map(({ id, name }) => (
          <Row key={id} href={linkTo('mix', 'jar', id)} title={WORDS.jar(name)} />
        ))}
        {coatedFrom(jars, shop).map(({ piece, coats }) => (
          <Row key={piece.id} href={linkTo('piece', piece.id)} title={WORDS.coatsOn(piece.name, coats)} />
        ))}
      </ul>
    </Section>
  );
}
