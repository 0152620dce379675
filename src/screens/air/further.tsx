import { Section } from '../../parts/page';
import { linkTo } from '../../parts/route';
import { Row } from '../../parts/row';
import { useShop } from '../../parts/shop-context';
import { FORECAST_WORDS, AIR_WORDS as WORDS } from '../../words/air';
import { unitWord } from '../../words/logbook';

/** The way to everything else of air, breath and fire. */
export function Further() {
  const { forecast } = useShop().shop.value;
  return (
    <Section title={WORDS.more}>
      <ul class="rows">
        <Row href={linkTo('air', 'forecast')} title={WORDS.forecast}>
          <p class="quiet">
            {forecast
              ? FORECAST_WORDS.line(
                  typedWords(forecast.dayTemperature.typed),
                  typedWords(forecast.nightTemperature.typed),
                )
              : WORDS.forecastNone}
          </p>
        </Row>
      </ul>
    </Section>
  );
}

const typedWords = ({ text, unit }: { readonly text: string; readonly unit: string }): string =>
  `${text} ${unitWord(unit)}`;
