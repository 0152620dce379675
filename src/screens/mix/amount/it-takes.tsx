import { useSignal } from '@preact/signals';
import { mixFacts } from '../../../actions/mix/mix-facts';
import { readTyped } from '../../../logbook/as-typed';
import { LIMITS } from '../../../logbook/limits';
import { SelectField } from '../../../parts/fields/select-field';
import { type Draft, TypedField } from '../../../parts/fields/typed-field';
import { LinkButton } from '../../../parts/frame/button';
import { Section } from '../../../parts/frame/page';
import { linkTo } from '../../../parts/frame/route';
import { Row } from '../../../parts/frame/row';
import { useShop, useUnits } from '../../../parts/frame/shop-context';
import { lacquerAndThinner } from '../../../science/film/material';
import { dryFilm } from '../../../science/film/thickness';
import { thinnedOfLacquer } from '../../../science/film/thinning';
import { jarAmount } from '../../../shop/jar/amount';
import { batchOfLines, typedLines } from '../../../shop/recipe/batch';
import { searchRecipes } from '../../../shop/recipe/search';
import { AMOUNT_WORDS as WORDS } from '../../../words/mix/tools';
import { filmWords, numberWords } from '../../../words/quantities';
import { type JobDraft, type Need, needOf } from './draft';

const ml = (m3: number): string => numberWords(m3 * 1e6, m3 < 1e-5 ? 1 : 0);

/** What the job takes, in litres and grams, against what is in the jars. */
export function ItTakes({
  draft,
  recipe,
}: {
  readonly draft: JobDraft;
  readonly recipe: string | undefined;
}) {
  const chosen = useSignal(recipe);
  const need = needOf(draft);
  if (!need) return null;
  return (
    <>
      <Section title={WORDS.takes}>
        <p class="outcome-figure digits" role="status">
          {WORDS.mixed(ml(need.wholeM3))}
        </p>
        <p class="digits">
          {WORDS.perCoat(ml(need.perCoatM3))}
          {WORDS.sprayed(ml(need.sprayedM3))}
          {need.keptM3 > 0 && ` · ${WORDS.kept(ml(need.keptM3))}`}
        </p>
        <RecipeChoice
          chosen={chosen.value}
          onChosen={(id) => {
            chosen.value = id;
          }}
        />
        {chosen.value === undefined ? <Thinned need={need} /> : <ByRecipe id={chosen.value} need={need} />}
      </Section>
      <InJars need={need} />
    </>
  );
}

const NONE = 'none';
/** A phone's list grows slow with thousands; the others are reached from their own page. */
const MOST_OFFERED = 100;

function RecipeChoice({
  chosen,
  onChosen,
}: {
  readonly chosen: string | undefined;
  readonly onChosen: (id: string | undefined) => void;
}) {
  const { shop } = useShop();
  const all = searchRecipes('', shop.value);
  const own = all.filter(({ id }) => id === chosen);
  const recipes = [...new Set([...own, ...all.slice(0, MOST_OFFERED)])];
  if (recipes.length === 0) return null;
  return (
    <SelectField
      label={WORDS.chooseRecipe}
      options={[
        { value: NONE, label: WORDS.noRecipe },
        ...recipes.map(({ id, name }) => ({ value: id, label: name })),
      ]}
      value={chosen ?? NONE}
      onChange={(id) => onChosen(id === NONE ? undefined : id)}
    />
  );
}

/** Without a recipe: so much lacquer and so much thinner. */
function Thinned({ need }: { readonly need: Need }) {
  const units = useUnits();
  const thinned = useSignal<Draft<'%'>>({ text: '50', unit: '%' });
  const solids = useSignal<Draft<'%'>>({ text: '22', unit: '%' });
  const of = readTyped(thinned.value, LIMITS.thinningOfLacquer);
  const lacquerSolids = readTyped(solids.value, LIMITS.volumeSolids);
  const parts = of.ok ? lacquerAndThinner(need.wholeM3, thinnedOfLacquer(of.value)) : undefined;
  return (
    <>
      <div class="pair">
        <TypedField
          label={WORDS.thinned}
          limit={LIMITS.thinningOfLacquer}
          draft={thinned.value}
          onDraft={(draft) => {
            thinned.value = draft;
          }}
        />
        <TypedField
          label={WORDS.lacquerSolids}
          limit={LIMITS.volumeSolids}
          draft={solids.value}
          onDraft={(draft) => {
            solids.value = draft;
          }}
        />
      </div>
      {parts && <p class="digits">{WORDS.parts(ml(parts.lacquerM3), ml(parts.thinnerM3))}</p>}
      {of.ok && lacquerSolids.ok && (
        <Film need={need} solids={lacquerSolids.value / (1 + of.value)} units={units} />
      )}
    </>
  );
}

function Film({ need, solids, units }: { need: Need; solids: number; units: ReturnType<typeof useUnits> }) {
  const dryM = dryFilm(need.wetFilmM, solids);
  return <p class="digits">{WORDS.film(filmWords(dryM, units), filmWords(dryM * need.coats, units))}</p>;
}

/** By a recipe: its grams, its film, and the way to its weigh-up. */
function ByRecipe({ id, need }: { readonly id: string; readonly need: Need }) {
  const { shop } = useShop();
  const units = useUnits();
  const recipe = shop.value.recipes.get(id);
  if (!recipe) return null;
  const batch = batchOfLines(typedLines(recipe), shop.value);
  const facts = batch.ok ? mixFacts(batch.value, shop.value) : batch;
  const needMl = Math.ceil(need.wholeM3 * 1e6);
  return (
    <>
      {facts.ok && facts.value.densityKgM3.ok && (
        <p class="digits">
          {WORDS.weighs(numberWords(need.wholeM3 * facts.value.densityKgM3.value * 1000, 0))}
        </p>
      )}
      {facts.ok && facts.value.volumeSolids.ok && (
        <Film need={need} solids={facts.value.volumeSolids.value} units={units} />
      )}
      <LinkButton
        kind="main"
        icon="mix"
        href={`${linkTo('mix', 'weigh', 'new')}?recipe=${id}&mL=${needMl}&need=${needMl}`}
      >
        {WORDS.weigh}
      </LinkButton>
    </>
  );
}

/** Each jar that holds something, and whether it is enough: before anything is mixed. */
function InJars({ need }: { readonly need: Need }) {
  const { shop } = useShop();
  const jars = [...shop.value.jars.values()].filter(({ emptiedMs }) => emptiedMs === undefined);
  return (
    <Section title={WORDS.inJars}>
      {jars.length === 0 ? (
        <p class="quiet">{WORDS.noJars}</p>
      ) : (
        <ul class="rows">
          {jars.map((jar) => (
            <Row
              key={jar.id}
              href={linkTo('mix', 'jar', jar.id)}
              title={jar.name}
              {...standing(jarAmount(jar, shop.value), need)}
            />
          ))}
        </ul>
      )}
    </Section>
  );
}

function standing({ leftM3 }: ReturnType<typeof jarAmount>, { mixedM3 }: Need) {
  if (leftM3 === undefined)
    return { state: { icon: 'note', kind: 'quiet', word: WORDS.jarUnknown } } as const;
  if (leftM3 >= mixedM3)
    return { state: { icon: 'ready', kind: 'ready', word: WORDS.jarEnough(ml(leftM3)) } } as const;
  return {
    state: { icon: 'stop', kind: 'stop', word: WORDS.jarShort(ml(leftM3), ml(mixedM3 - leftM3)) },
  } as const;
}
