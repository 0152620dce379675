import type { Jar } from '../../../logbook/fold/mix/jars';
import { Button } from '../../../parts/blocks/button';
import { Page } from '../../../parts/blocks/page';
import { QrCode } from '../../../parts/blocks/qr-code';
import { addressOf, linkTo } from '../../../parts/frame/route';
import { useShop } from '../../../parts/frame/shop-context';
import { jarCode } from '../../../shop/jar/code';
import { jarFilm } from '../../../shop/jar/film';
import { jarHazards } from '../../../shop/jar/hazards';
import { jarLife } from '../../../shop/jar/life';
import { FINISH_NAMES, JAR_WORDS, LABEL_WORDS as WORDS } from '../../../words/mix/jar';
import { numberWords } from '../../../words/quantities';
import { NothingHere } from '../nothing-here';

const DAY = new Intl.DateTimeFormat('en-GB', { dateStyle: 'medium' });
const DAY_AND_TIME = new Intl.DateTimeFormat('en-GB', { dateStyle: 'medium', timeStyle: 'short' });

/** The label of a jar, to print: its code, what it is, what to mind, and the way back to it. */
export function LabelPage({ id }: { readonly id: string }) {
  const { shop } = useShop();
  const jar = shop.value.jars.get(id);
  if (!jar) return <NothingHere title={JAR_WORDS.title} />;
  return (
    <Page title={WORDS.title} backTo={linkTo('mix', 'jar', id)}>
      <p class="not-printed">{WORDS.lead}</p>
      <Label jar={jar} />
      <div class="acts">
        <Button kind="main" icon="print" onClick={() => print()}>
          {WORDS.print}
        </Button>
      </div>
    </Page>
  );
}

function Label({ jar }: { readonly jar: Jar }) {
  const { shop } = useShop();
  const code = jarCode(jar.id);
  const hazards = jarHazards(jar, shop.value);
  const life = jarLife(jar, shop.value);
  return (
    <article class="label" aria-label={WORDS.title}>
      <header>
        <h2>{jar.name}</h2>
        <p class="label-code digits">{code}</p>
      </header>
      <QrCode text={addressOf('mix', 'jar', jar.id)} describe={WORDS.qr(code)} />
      <ul class="label-lines">
        <li>
          {FINISH_NAMES[jar.product.finish].label}, {DAY.format(jar.filledMs)}
        </li>
        <li>{ratioOf(jar, shop.value.weighUps.get(jar.weighUp ?? '')?.plan.length)}</li>
        <li>{WORDS.solids(numberWords(jarFilm(jar).volumeSolids * 100, 1))}</li>
        {life && <li>{WORDS.use((life.as === 'pot' ? DAY_AND_TIME : DAY).format(life.endMs))}</li>}
      </ul>
      <p class="label-hazards">
        <strong>{hazards.length > 0 ? WORDS.danger : WORDS.mind}</strong>{' '}
        {hazards.map((hazard) => `${WORDS.hazards[hazard]}. `)}
        {WORDS.sheet}
      </p>
    </article>
  );
}

/** How it was thinned, or of how many ingredients it was mixed. */
const ratioOf = ({ thinning }: Jar, ingredients: number | undefined): string =>
  ingredients === undefined
    ? WORDS.ratio(thinning.percent.typed.text, thinning.of)
    : WORDS.mixed(ingredients);
