import type { Shop } from '../../../logbook/fold/fold';
import type { Jar } from '../../../logbook/fold/mix/jars';
import { Button, LinkButton } from '../../../parts/blocks/button';
import { Fold } from '../../../parts/blocks/fold';
import { Page } from '../../../parts/blocks/page';
import { typedWords } from '../../../parts/fields/typed-words';
import { linkTo } from '../../../parts/frame/route';
import { sayRefused } from '../../../parts/frame/say-refused';
import { useShop, useUnits } from '../../../parts/frame/shop-context';
import { showToast } from '../../../parts/frame/toast';
import { matchOfJar } from '../../../shop/colour/jars-of-match';
import { jarCode } from '../../../shop/jar/code';
import { jarFilm } from '../../../shop/jar/film';
import { tracerOf } from '../../../shop/record/materials';
import { INGREDIENT_WORDS, TRACER_WORDS } from '../../../words/mix/ingredient';
import { FINISH_NAMES, JAR_WORDS as WORDS } from '../../../words/mix/jar';
import { percentWords, type UnitSystem } from '../../../words/quantities';
import { whenWords } from '../../../words/times';
import { Facts } from '../facts';
import { NothingHere } from '../nothing-here';
import { BoxWith } from './box-with';
import { CoatsFrom, ExactRecipe } from './jar-links';
import { Left } from './left';
import { Life } from './life';

/** One jar: what is in it, how much, how long it keeps, and what to do with it. */
export function JarPage({ id }: { readonly id: string }) {
  const { shop, nowMs } = useShop();
  const units = useUnits();
  const jar = findJar(id, shop.value.jars);
  if (!jar) return <NothingHere title={WORDS.title} />;
  const piece = matchOfJar(jar, shop.value)?.piece;
  return (
    <Page title={jar.name} backTo={linkTo('mix')}>
      {jar.emptiedMs === undefined ? (
        <LinkButton
          kind="main"
          icon="coat"
          isWide
          href={`${linkTo('lay')}?jar=${jar.id}${piece === undefined ? '' : `&piece=${piece}`}`}
        >
          {WORDS.lay}
        </LinkButton>
      ) : (
        <p>{WORDS.isEmptied(whenWords(jar.emptiedMs, nowMs.value))}</p>
      )}
      <Left jar={jar} />
      <Life jar={jar} />
      <div class="folds">
        <Fold title={WORDS.inIt} brief={FINISH_NAMES[jar.product.finish].label}>
          <Facts rows={contentRows(jar, shop.value, nowMs.value, units)} />
          {jar.note && <p class="note-text">{jar.note}</p>}
        </Fold>
        <ExactRecipe jar={jar} />
        <CoatsFrom jar={jar} />
        {!isCan(jar) && <BoxWith jar={jar} />}
      </div>
      <Acts jar={jar} />
    </Page>
  );
}

/** A jar by its id, or by the code on its lid. */
function findJar(id: string, jars: ReadonlyMap<string, Jar>): Jar | undefined {
  return jars.get(id) ?? [...jars.values()].findLast((jar) => jarCode(jar.id) === id.toUpperCase());
}

/** A spray can: nothing is poured into it, or out of it. */
const isCan = ({ contains }: Jar): boolean => contains?.includes('aerosol') === true;

function contentRows(
  jar: Jar,
  shop: Shop,
  nowMs: number,
  units: UnitSystem,
): readonly (readonly [string, string])[] {
  const film = jarFilm(jar);
  const { thinning, retarder } = jar;
  const isThinned = thinning.percent.si > 0;
  const rows: [string, string][] = [
    [WORDS.finish, FINISH_NAMES[jar.product.finish].label],
    [WORDS.solids, percentWords(film.volumeSolids, 1)],
  ];
  if (jar.cut) rows.push([WORDS.cut, typedWords(jar.cut.typed, units)]);
  if (jar.mixedOn) rows.push([WORDS.mixedOn, jar.mixedOn]);
  if (isThinned)
    rows.push([
      WORDS.thinner,
      `${jar.thinner.name}, ${WORDS.thinnedOf(thinning.percent.typed.text, thinning.of)}`,
    ]);
  if (retarder) rows.push([WORDS.retarder, WORDS.thinnedOf(retarder.percent.typed.text, retarder.of)]);
  if (film.pigment > 0) rows.push([WORDS.pigment, percentWords(film.pigment, 1)]);
  for (const content of jar.contains ?? []) rows.push([WORDS.contains, INGREDIENT_WORDS.containsOf[content]]);
  const tracerNm = tracerOf(jar, shop);
  if (tracerNm) rows.push([TRACER_WORDS.term, TRACER_WORDS.seenAt(tracerNm)]);
  rows.push(
    [WORDS.filled, whenWords(jar.filledMs, nowMs)],
    [isCan(jar) ? WORDS.canLid : WORDS.code, jarCode(jar.id)],
  );
  return rows;
}

function Acts({ jar }: { readonly jar: Jar }) {
  const { actions } = useShop();
  async function empty(): Promise<void> {
    const done = await actions.emptyJar(jar.id);
    if (!done.ok) sayRefused(done.failure);
    else showToast({ text: WORDS.emptied, onUndo: () => void actions.undo(done.value.id) });
  }
  return (
    <div class="acts">
      <LinkButton icon="add" href={`${linkTo('mix', 'jar', 'new')}?like=${jar.id}`}>
        {isCan(jar) ? WORDS.anotherCan : WORDS.refill}
      </LinkButton>
      <LinkButton icon="note" href={`${linkTo('mix', 'amount')}?jar=${jar.id}`}>
        {WORDS.howMuch}
      </LinkButton>
      <LinkButton icon="print" href={linkTo('mix', 'jar', jar.id, 'label')}>
        {WORDS.label}
      </LinkButton>
      {jar.emptiedMs === undefined && (
        <Button icon="remove" onClick={() => void empty()}>
          {WORDS.empty}
        </Button>
      )}
    </div>
  );
}
