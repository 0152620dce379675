import { LinkButton } from '../../../parts/blocks/button';
import { Section } from '../../../parts/blocks/page';
import { Row } from '../../../parts/blocks/row';
import { linkTo } from '../../../parts/frame/route';
import { useShop, useUnits } from '../../../parts/frame/shop-context';
import { toBuy } from '../../../science/film/containers';
import { lacquerAndThinner } from '../../../science/film/material';
import { dryFilm } from '../../../science/film/thickness';
import { thinnedOfLacquer } from '../../../science/film/thinning';
import { jarAmount } from '../../../shop/jar/amount';
import { AMOUNT_WORDS as WORDS } from '../../../words/mix/tools';
import { filmWords, numberWords, type UnitSystem } from '../../../words/quantities';
import { volumeRangeWords, volumeWords } from '../../../words/volumes';
import { type JobDraft, type Need, needOf } from './amount-draft';
import type { Source, SourceFacts } from './source';

interface ItTakesProps {
  readonly draft: JobDraft;
  readonly source: Source;
  readonly facts: SourceFacts | undefined;
  readonly piece: string | undefined;
}

/** What the job takes, what to buy for it, and whether it is in the jars. */
export function ItTakes({ draft, source, facts, piece }: ItTakesProps) {
  const units = useUnits();
  const need = needOf(draft);
  if (!need) return null;
  const { flat, least, most, wholeM3, keptM3 } = need;
  const isRange = most.sprayedM3 > least.sprayedM3;
  return (
    <>
      <Section title={WORDS.takes}>
        <p class="outcome-figure digits" role="status">
          {facts?.isSprayCan
            ? WORDS.needed(volumeWords(wholeM3, units))
            : WORDS.mixed(volumeWords(wholeM3, units))}
        </p>
        <p class="digits">
          {WORDS.perCoat(volumeWords(flat.perCoatM3, units))}
          {WORDS.flat(volumeWords(flat.sprayedM3, units))}
        </p>
        {isRange && (
          <p class="digits">{WORDS.slimmed(volumeRangeWords(least.sprayedM3, most.sprayedM3, units))}</p>
        )}
        {wholeM3 > most.sprayedM3 && (
          <p class="quiet digits">
            {need.way === 'spray'
              ? WORDS.withGun(volumeWords(most.mixedM3 - most.sprayedM3, units), volumeWords(keptM3, units))
              : WORDS.kept(volumeWords(keptM3, units))}
          </p>
        )}
        {facts && <Parts {...{ need, facts, units }} />}
        {source.from === 'recipe' && <WeighUp id={source.id} {...{ need, facts, piece }} />}
      </Section>
      {facts && source.from !== 'recipe' && <ToBuy {...{ need, facts, units }} />}
      <InJars need={need} />
    </>
  );
}

interface PartsProps {
  readonly need: Need;
  readonly facts: SourceFacts;
  readonly units: UnitSystem;
}

const partsOf = ({ need, facts }: Omit<PartsProps, 'units'>) =>
  lacquerAndThinner(need.wholeM3, thinnedOfLacquer(facts.thinnerOfLacquer ?? 0));

/** Lacquer and thinner of the mix, and the film that it leaves. */
function Parts({ need, facts, units }: PartsProps) {
  const { lacquerM3, thinnerM3 } = partsOf({ need, facts });
  const solids = facts.volumeSolids === undefined ? undefined : mixSolids(facts, facts.volumeSolids);
  const dryM = solids === undefined ? undefined : dryFilm(need.wetFilmM, solids);
  return (
    <>
      {thinnerM3 > 0 && (
        <p class="digits">
          {WORDS.parts(facts.finish, volumeWords(lacquerM3, units), volumeWords(thinnerM3, units))}
        </p>
      )}
      {dryM !== undefined && (
        <p class="digits">{WORDS.film(filmWords(dryM, units), filmWords(dryM * need.coats, units))}</p>
      )}
    </>
  );
}

const mixSolids = ({ thinnerOfLacquer = 0 }: SourceFacts, solids: number): number =>
  solids / (1 + thinnerOfLacquer);

/** What to buy, in the sizes that are sold, with what is kept back. */
function ToBuy({ need, facts, units }: PartsProps) {
  const sold = facts.isSprayCan ? 'spray-can' : units;
  const { lacquerM3, thinnerM3 } = partsOf({ need, facts });
  return (
    <Section title={WORDS.buy}>
      <p class="outcome-figure digits">{WORDS.bought(toBuy(lacquerM3, sold))}</p>
      {thinnerM3 > 0 && facts.finish !== 'waterborne' && (
        <p class="digits">{WORDS.buyThinner(facts.finish, WORDS.bought(toBuy(thinnerM3, sold)))}</p>
      )}
      <p class="quiet">{facts.isSprayCan ? WORDS.sprayCanText : WORDS.buyText}</p>
    </Section>
  );
}

/** By a recipe: its grams, and the way to its weigh-up. */
function WeighUp({
  id,
  need,
  facts,
  piece,
}: Pick<ItTakesProps, 'facts' | 'piece'> & { readonly id: string; readonly need: Need }) {
  const needMl = Math.ceil(need.wholeM3 * 1e6);
  return (
    <>
      {facts?.densityKgM3 !== undefined && (
        <p class="digits">{WORDS.weighs(numberWords(need.wholeM3 * facts.densityKgM3 * 1000, 0))}</p>
      )}
      <LinkButton
        kind="main"
        icon="mix"
        href={`${linkTo('mix', 'weigh', 'new')}?recipe=${id}&mL=${needMl}${piece === undefined ? '' : `&piece=${piece}`}`}
      >
        {WORDS.weigh}
      </LinkButton>
    </>
  );
}

/** Each jar that holds something, and whether it is enough: before anything is mixed. */
function InJars({ need }: { readonly need: Need }) {
  const { shop } = useShop();
  const units = useUnits();
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
              {...standing(jarAmount(jar, shop.value), need, units)}
            />
          ))}
        </ul>
      )}
    </Section>
  );
}

function standing({ leftM3 }: ReturnType<typeof jarAmount>, { most }: Need, units: UnitSystem) {
  if (leftM3 === undefined)
    return { state: { icon: 'note', kind: 'quiet', word: WORDS.jarUnknown } } as const;
  const left = volumeWords(leftM3, units);
  if (leftM3 >= most.mixedM3)
    return { state: { icon: 'ready', kind: 'ready', word: WORDS.jarEnough(left) } } as const;
  const short = volumeWords(most.mixedM3 - leftM3, units);
  return { state: { icon: 'stop', kind: 'stop', word: WORDS.jarShort(left, short) } } as const;
}
