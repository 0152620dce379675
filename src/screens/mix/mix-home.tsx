import { LinkButton } from '../../parts/button';
import { EmptyState } from '../../parts/empty-state';
import { Page, Section } from '../../parts/page';
import { linkTo } from '../../parts/route';
import { useShop } from '../../parts/shop-context';
import { MIX_WORDS } from '../../words/mix';
import { JarRow } from './jar/jar-row';

/** Jars and recipes, and what can be worked out of them. */
export function MixHome() {
  const { shop } = useShop();
  const jars = [...shop.value.jars.values()].reverse();
  const full = jars.filter(({ emptiedMs }) => emptiedMs === undefined);
  return (
    <Page title={MIX_WORDS.title}>
      {jars.length === 0 ? (
        <EmptyState title={MIX_WORDS.empty} text={MIX_WORDS.emptyText}>
          <LinkButton kind="main" icon="add" href={linkTo('mix', 'jar', 'new')}>
            {MIX_WORDS.newJar}
          </LinkButton>
        </EmptyState>
      ) : (
        <Section title={MIX_WORDS.jars}>
          <ul class="rows">
            {full.map((jar) => (
              <JarRow key={jar.id} jar={jar} />
            ))}
          </ul>
          <div class="acts">
            <LinkButton icon="add" href={linkTo('mix', 'jar', 'new')}>
              {MIX_WORDS.newJar}
            </LinkButton>
          </div>
        </Section>
      )}
    </Page>
  );
}
