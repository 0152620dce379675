import { useSignal } from '@preact/signals';
import { parseNumber, readTyped } from '../../../logbook/as-typed';
import { LIMITS } from '../../../logbook/limits';
import { NumberField } from '../../../parts/fields/number-field';
import { Section } from '../../../parts/frame/page';
import { asOfLacquer, thinnedOfLacquer } from '../../../science/film/thinning';
import type { Cup } from '../../../science/viscosity/cups';
import { thinnerToAdd, thinningForTime } from '../../../science/viscosity/thinner-to-target';
import { CUP_WORDS as WORDS } from '../../../words/mix/tools';
import { numberWords } from '../../../words/quantities';

const FIELDS = [
  ['first', '%'],
  ['firstSeconds', 's'],
  ['second', '%'],
  ['secondSeconds', 's'],
  ['wanted', 's'],
  ['have', 'mL'],
] as const;
type Field = (typeof FIELDS)[number][0];
type Texts = Readonly<Record<Field, string>>;
const START: Texts = { first: '0', firstSeconds: '', second: '', secondSeconds: '', wanted: '', have: '100' };

/** How far to thin so that the cup runs in a wanted time, learned from two readings. */
export function ThinnerToTime({ one }: { readonly one: Cup }) {
  const texts = useSignal(START);
  return (
    <Section title={WORDS.target}>
      <p>{WORDS.targetText}</p>
      <div class="pair">
        {FIELDS.map(([field, unit]) => (
          <NumberField
            key={field}
            label={WORDS[field]}
            text={texts.value[field]}
            onText={(text) => {
              texts.value = { ...texts.value, [field]: text };
            }}
            units={[{ value: unit, label: unit }]}
            problem={fieldProblem(texts.value[field], unit)}
          />
        ))}
      </div>
      <Answer one={one} texts={texts.value} />
    </Section>
  );
}

function fieldProblem(text: string, unit: '%' | 's' | 'mL'): string | undefined {
  if (text.trim() === '') return undefined;
  const limit = unit === '%' ? LIMITS.thinningOfLacquer : LIMITS.volume;
  if (unit === 's') return parseNumber(text) === undefined ? WORDS.notSeconds : undefined;
  const read = readTyped({ text, unit }, limit);
  return read.ok ? undefined : read.failure;
}

function Answer({ one, texts }: { readonly one: Cup; readonly texts: Texts }) {
  const filled = FIELDS.every(
    ([field, unit]) => texts[field].trim() !== '' && !fieldProblem(texts[field], unit),
  );
  if (!filled) return null;
  const number = (field: Field): number => parseNumber(texts[field]) ?? 0;
  const thinning = (field: Field) => thinnedOfLacquer(number(field) / 100);
  const answer = thinningForTime(
    one,
    [
      { thinning: thinning('first'), seconds: number('firstSeconds') },
      { thinning: thinning('second'), seconds: number('secondSeconds') },
    ],
    number('wanted'),
  );
  if (!answer.ok) return <p role="status">{WORDS.failures[answer.failure.kind]}</p>;
  const { thinning: wanted, isExtrapolated } = answer.value;
  const addMl = thinnerToAdd(number('have'), thinning('second'), wanted);
  const add = addMl >= 0 ? WORDS.add : WORDS.addLacquer;
  return (
    <div role="status">
      <p class="outcome-figure digits">
        {WORDS.answer(
          numberWords(asOfLacquer(wanted).fraction * 100, 0),
          numberWords(wanted.fraction * 100, 0),
        )}
      </p>
      <p class="digits">{add(numberWords(Math.abs(addMl), 1), texts.have)}</p>
      {isExtrapolated && <p>{WORDS.extrapolated}</p>}
    </div>
  );
}
