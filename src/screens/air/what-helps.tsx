import type { Forecast } from '../../logbook/fold/shop/air';
import { Section } from '../../parts/blocks/page';
import { useShop, useUnits } from '../../parts/frame/shop-context';
import type { BlushLimits } from '../../science/air/blush';
import type { MeasuredAir } from '../../shop/air/measured-air';
import { type Help, whatHelps } from '../../shop/air/what-helps';
import { toKelvin } from '../../units';
import { OUTLOOK_WORDS, HELP_WORDS as WORDS } from '../../words/air/air';
import { differenceWords, percentWords, temperatureWords, type UnitSystem } from '../../words/quantities';
import { Retarder } from './jar/retarder';

export interface WhatHelpsProps {
  readonly air: MeasuredAir;
  readonly limits: BlushLimits;
}

/** What would bring the piece to an easy margin, and what each costs. */
export function WhatHelps({ air, limits }: WhatHelpsProps) {
  const { forecast } = useShop().shop.value;
  const units = useUnits();
  const helps = whatHelps(air, forecast, limits);
  if (helps.length === 0) return null;
  return (
    <Section title={WORDS.title}>
      <ul class="plain-list">
        {helps.map((help) => (
          <li key={help.by}>{sentence(help, forecast, units)}</li>
        ))}
      </ul>
      {!forecast?.humidity && <p class="quiet small">{WORDS.forecastMissing}</p>}
      <Retarder air={air} limits={limits} />
    </Section>
  );
}

function sentence(help: Help, forecast: Forecast | undefined, units: UnitSystem): string {
  switch (help.by) {
    case 'piece-to-room':
      return `${WORDS.room(differenceWords(help.marginK, units))} ${verdict(help)}`;
    case 'piece-to':
      return WORDS.piece(temperatureWords(toKelvin(help.pieceC), units));
    case 'drier-air':
      return WORDS.drier(percentWords(help.humidity));
    case 'forecast-day':
      return `${WORDS.day(forecast?.dayFrom ?? '', differenceWords(help.marginK, units))} ${verdict(help)}`;
    case 'forecast-night':
      return `${WORDS.night(forecast?.nightFrom ?? '', differenceWords(help.marginK, units))} ${verdict(help)}`;
  }
}

const verdict = ({ outlook }: { readonly outlook: keyof typeof OUTLOOK_WORDS }): string =>
  outlook === 'easy' ? '' : WORDS.still(OUTLOOK_WORDS[outlook].word);
