import type { Advice } from '../../logbook/colour/advice';
import { NEXT_WORDS as WORDS } from '../../words/match';
import { numberWords, percentWords } from '../../words/quantities';

interface StrengthsProps {
  readonly advice: Extract<Advice, { kind: 'advice' }>;
  readonly name: (ingredient: string) => string;
}

/** What the tinters have turned out to be worth, and what the advice rests on. */
export function Strengths({ advice, name }: StrengthsProps) {
  const { strengths, trialsUsed, isSpectral } = advice;
  return (
    <details class="caution-more">
      <summary>{WORDS.strengths}</summary>
      <dl class="facts">
        {strengths.map(({ ingredient, factor, doubt, from }) => (
          <div key={ingredient}>
            <dt>{name(ingredient)}</dt>
            <dd class="digits">
              {WORDS.strength(numberWords(factor, 2), percentWords(doubt))}
              <small>{WORDS.strengthFrom[from]}</small>
            </dd>
          </div>
        ))}
      </dl>
      <p class="quiet small">{WORDS.learned(trialsUsed)}</p>
      <p class="quiet small">{isSpectral ? WORDS.model.spectral : WORDS.model.bands}</p>
    </details>
  );
}
