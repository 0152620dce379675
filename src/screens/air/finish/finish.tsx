import { FINISH_LAWS, type FinishLaw, isCuring, type Spread } from '../../../estimator/finishes/finish-law';
import { USUAL_SHOP } from '../../../estimator/usual-shop';
import { FINISHES } from '../../../logbook/kinds/mix/jar';
import { Page, Section } from '../../../parts/blocks/page';
import { linkTo, route } from '../../../parts/frame/route';
import { useUnits } from '../../../parts/frame/shop-context';
import { POT_LIFE_AT_K } from '../../../science/mixing/pot-life';
import { FINISH_WORDS as WORDS } from '../../../words/air/finishes';
import { FINISH_NAMES } from '../../../words/mix/jar';
import {
  filmWords,
  lowestWords,
  percentWords,
  temperatureWords,
  type UnitSystem,
} from '../../../words/quantities';
import { spanWords } from '../../../words/times';
import { type Fact, Facts } from '../facts';
import { Finishes } from './finishes';

/** What one kind of finish asks for, with only the lines that belong to it. */
export function FinishPage() {
  const units = useUnits();
  const finish = FINISHES.find((kind) => kind === route.value.rest[1]);
  if (!finish) return <Finishes />;
  const law = isCuring(finish) ? FINISH_LAWS[finish] : undefined;
  return (
    <Page title={FINISH_NAMES[finish].label} backTo={linkTo('air', 'finishes')} backLabel={WORDS.title}>
      <p>{WORDS.texts[finish]}</p>
      <Section title={WORDS.hardens}>
        <p>{isCuring(finish) ? WORDS.how[finish] : WORDS.how.release}</p>
        {!law && <p>{WORDS.byModel}</p>}
        {law && (
          <p class="quiet">
            {WORDS.at(
              temperatureWords(USUAL_SHOP.temperatureK, units),
              percentWords(USUAL_SHOP.relativeHumidity),
            )}
          </p>
        )}
        {law && <Facts rows={factsOf(law, units)} />}
        {law && <p class="quiet small">{WORDS.origin}</p>}
      </Section>
    </Page>
  );
}

function factsOf(law: FinishLaw, units: UnitSystem): readonly Fact[] {
  const { lowestK, highestHumidity } = law.shop;
  return [
    spreadFact(WORDS.touch, law.touch),
    spreadFact(WORDS.recoat, law.recoat),
    ...(law.recoatUntil ? [spreadFact(WORDS.recoatUntil, law.recoatUntil)] : []),
    spreadFact(WORDS.level, law.level),
    spreadFact(WORDS.rubOut, law.rubOut),
    spreadFact(WORDS.lightUse, law.lightUse),
    spreadFact(WORDS.settled, law.settled),
    ...(law.potLifeS
      ? [spreadFact(WORDS.potLife(temperatureWords(POT_LIFE_AT_K, units)), law.potLifeS)]
      : []),
    ...(law.totalLimitM
      ? [{ label: WORDS.totalFilm, value: WORDS.atMost(filmWords(law.totalLimitM, units)) }]
      : []),
    {
      label: WORDS.shop,
      value: WORDS.shopFrom(lowestWords(lowestK, units)),
      note: highestHumidity === undefined ? undefined : WORDS.shopDamp(percentWords(highestHumidity)),
    },
  ];
}

const spreadFact = (label: string, { low, typical, high }: Spread): Fact => ({
  label,
  value: spanWords(typical * 1000),
  note: WORDS.range(spanWords(low * 1000), spanWords(high * 1000)),
});
