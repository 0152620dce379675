import { jarFilm } from '../../../logbook/jar-film';
import { Button, LinkButton } from '../../../parts/button';
import { Page, Section } from '../../../parts/page';
import { linkTo } from '../../../parts/route';
import { useShop } from '../../../parts/shop-context';
import { showToast } from '../../../parts/toast';
import { FINISH_NAMES, JAR_FORM, JAR_WORDS } from '../../../words/mix-jar';
import { numberWords } from '../../../words/quantities';
import { NothingHere } from '../nothing-here';

/** One jar: what is in it, and what to do with it. */
export function JarPage({ id }: { readonly id: string }) {
  const { shop, actions } = useShop();
  const jar = shop.value.jars.get(id);
  if (!jar) return <NothingHere title={JAR_WORDS.title} />;
  async function empty(): Promise<void> {
    const done = await actions.emptyJar(id);
    if (done.ok) showToast({ text: JAR_WORDS.emptied, onUndo: () => void actions.undo(done.value.id) });
    else showToast({ text: done.failure.sentence });
  }
  return (
    <Page title={jar.name} backTo={linkTo('mix')}>
      <Section title={JAR_WORDS.inIt}>
        <p>{FINISH_NAMES[jar.product.finish].label}</p>
        <p class="digits">{JAR_FORM.outcomeSolids(numberWords(jarFilm(jar).volumeSolids * 100, 1))}</p>
      </Section>
      <div class="acts">
        <LinkButton kind="main" icon="coat" href={`${linkTo('lay')}?jar=${id}`}>
          {JAR_WORDS.lay}
        </LinkButton>
        {jar.emptiedMs === undefined && (
          <Button icon="remove" onClick={() => void empty()}>
            {JAR_WORDS.empty}
          </Button>
        )}
      </div>
    </Page>
  );
}
