import { Fold } from '../../../parts/blocks/fold';
import { Row } from '../../../parts/blocks/row';
import { linkTo } from '../../../parts/frame/route';
import { useShop } from '../../../parts/frame/shop-context';
import { matchOfRecipe } from '../../../shop/colour/jars-of-match';
import { coatedFrom, jarsOfRecipe } from '../../../shop/recipe/what-it-made';
import { RECIPE_WORDS as WORDS } from '../../../words/mix/recipe';
import { whenWords } from '../../../words/times';

/** The jars that a recipe became, and the pieces that they were laid on. */
export function MadeOfIt({ id }: { readonly id: string }) {
  const { shop, nowMs } = useShop();
  const jars = jarsOfRecipe(id, shop.value);
  const coated = coatedFrom(jars, shop.value);
  const match = matchOfRecipe(id, shop.value);
  return (
    <>
      {match && (
        <Fold title={WORDS.match} brief={match.name}>
          <ul class="rows">
            <Row href={linkTo('match', match.id)} title={match.name} />
          </ul>
        </Fold>
      )}
      <Fold title={WORDS.jars} brief={jars.at(-1)?.name ?? WORDS.noneYet}>
        {jars.length === 0 && <p class="quiet">{WORDS.noJars}</p>}
        <ul class="rows">
          {jars.map((jar) => (
            <Row key={jar.id} href={linkTo('mix', 'jar', jar.id)} title={jar.name} />
          ))}
        </ul>
      </Fold>
      {coated.length > 0 && (
        <Fold title={WORDS.usedOn} brief={coated[0]?.piece.name}>
          <ul class="rows">
            {coated.map(({ piece, coats, lastMs }) => (
              <Row key={piece.id} href={linkTo('piece', piece.id)} title={piece.name}>
                <p class="quiet digits">{WORDS.coatsOfIt(coats, whenWords(lastMs, nowMs.value))}</p>
              </Row>
            ))}
          </ul>
        </Fold>
      )}
    </>
  );
}
