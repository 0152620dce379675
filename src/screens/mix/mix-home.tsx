import { standingOf } from '../../actions/mix/weigh-up';
import { LinkButton } from '../../parts/blocks/button';
import { EmptyState } from '../../parts/blocks/empty-state';
import { Fold } from '../../parts/blocks/fold';
import { Page, Section } from '../../parts/blocks/page';
import { Row } from '../../parts/blocks/row';
import { linkTo } from '../../parts/frame/route';
import { useShop } from '../../parts/frame/shop-context';
import { MIX_WORDS as WORDS } from '../../words/mix/mix';
import { WEIGH_WORDS } from '../../words/mix/weigh';
import { JarRow } from './jar/jar-row';
import { RecipeList } from './recipe/recipe-list';

/** Jars and recipes, and what can be worked out of them. */
export function MixHome() {
  return (
    <Page title={WORDS.title}>
      <OpenWeighUps />
      <Jars />
      <RecipeList />
      <Tools />
    </Page>
  );
}

/** Weigh-ups that were interrupted, first of all. */
function OpenWeighUps() {
  const { shop } = useShop();
  const open = [...shop.value.weighUps.values()].filter(
    ({ jar, droppedMs }) => jar === undefined && droppedMs === undefined,
  );
  if (open.length === 0) return null;
  return (
    <Section title={WEIGH_WORDS.open}>
      <ul class="rows">
        {open.map((weighUp) => {
          const { lines } = standingOf(weighUp);
          const done = lines.filter(({ toPourKg }) => toPourKg === 0).length;
          return (
            <Row
              key={weighUp.id}
              href={linkTo('mix', 'weigh', weighUp.id)}
              title={shop.value.recipes.get(weighUp.recipe)?.name ?? ''}
              state={{ icon: 'waiting', kind: 'wait', word: WORDS.goOn(done, lines.length) }}
            />
          );
        })}
      </ul>
    </Section>
  );
}

function Jars() {
  const { shop } = useShop();
  const jars = [...shop.value.jars.values()].reverse();
  const full = jars.filter(({ emptiedMs }) => emptiedMs === undefined);
  const usedUp = jars.filter(({ emptiedMs }) => emptiedMs !== undefined);
  const fill = (
    <LinkButton kind={full.length === 0 ? 'main' : 'usual'} icon="add" href={linkTo('mix', 'jar', 'new')}>
      {WORDS.newJar}
    </LinkButton>
  );
  if (jars.length === 0)
    return (
      <EmptyState title={WORDS.empty} text={WORDS.emptyText}>
        {fill}
      </EmptyState>
    );
  return (
    <Section title={WORDS.jars}>
      <ul class="rows">
        {full.map((jar) => (
          <JarRow key={jar.id} jar={jar} />
        ))}
      </ul>
      {usedUp.length > 0 && (
        <details class="more">
          <summary>{WORDS.usedUpJars(usedUp.length)}</summary>
          <ul class="rows">
            {usedUp.map((jar) => (
              <JarRow key={jar.id} jar={jar} />
            ))}
          </ul>
        </details>
      )}
      <div class="acts">{fill}</div>
    </Section>
  );
}

const TOOLS = [
  ['amount', WORDS.amount, WORDS.amountText],
  ['cup', WORDS.cup, WORDS.cupText],
  ['fill', WORDS.fill, WORDS.fillText],
  ['find', WORDS.find, WORDS.findText],
  ['ingredient', WORDS.ingredients, WORDS.ingredientsText],
] as const;

const Tools = () => (
  <Fold title={WORDS.tools} brief={WORDS.toolsBrief}>
    <ul class="rows">
      {TOOLS.map(([where, title, text]) => (
        <Row key={where} href={linkTo('mix', where)} title={title}>
          <p class="quiet">{text}</p>
        </Row>
      ))}
    </ul>
  </Fold>
);
