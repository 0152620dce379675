import { useSignal } from '@preact/signals';
import { parseNumber, readTyped } from '../../../logbook/as-typed';
import { LIMITS } from '../../../logbook/limits';
import { Section } from '../../../parts/blocks/page';
import { NumberField } from '../../../parts/fields/number-field';
import { type Draft, TypedField } from '../../../parts/fields/typed-field';
import { useUnits } from '../../../parts/frame/shop-context';
import { asOfLacquer, thinnedOfLacquer } from '../../../science/film/thinning';
import type { Cup } from '../../../science/viscosity/cups';
import { thinnerToAdd, thinningForTime } from '../../../science/viscosity/thinner-to-target';
import { CUP_WORDS as WORDS } from '../../../words/mix/tools';
import { numberWords } from '../../../words/quantities';
import { volumeWords } from '../../../words/volumes';

const FIELDS = [
  ['first', '%'],
  ['firstSeconds', 's'],
  ['second', '%'],
  ['secondSeconds', 's'],
  ['wanted', 's'],
] as const;
type Have = Draft<'mL' | 'L' | 'fl-oz-us' | 'fl-oz-imperial'>;
type Field = (typeof FIELDS)[number][0];
type Texts = Readonly<Record<Field, string>>;
const START: Texts = { first: '0', firstSeconds: '', second: '', secondSeconds: '', wanted: '' };

/** How far to thin so that the cup runs in a wanted time, learned from two readings. */
export function ThinnerToTime({ one }: { readonly one: Cup }) {
  const texts = useSignal(START);
  const have = useSignal<Have>(
    useUnits() === 'us' ? { text: '4', unit: 'fl-oz-us' } : { text: '100', unit: 'mL' },
  );
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
        <TypedField
          label={WORDS.have}
          limit={LIMITS.volume}
          draft={have.value}
          onDraft={(draft) => {
            have.value = draft;
          }}
        />
      </div>
      <Answer one={one} texts={texts.value} have={have.value} />
    </Section>
  );
}

function fieldProblem(text: string, unit: '%' | 's'): string | undefined {
  if (text.trim() === '') return undefined;
  if (unit === 's') return parseNumber(text) === undefined ? WORDS.notSeconds : undefined;
  const read = readTyped({ text, unit }, LIMITS.thinningOfLacquer);
  return read.ok ? undefined : read.failure;
}

function Answer({ one, texts, have }: { readonly one: Cup; readonly texts: Texts; readonly have: Have }) {
  const units = useUnits();
  const volume = readTyped(have, LIMITS.volume);
  const filled = FIELDS.every(
    ([field, unit]) => texts[field].trim() !== '' && !fieldProblem(texts[field], unit),
  );
  if (!filled || !volume.ok) return null;
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
  const addM3 = thinnerToAdd(volume.value, thinning('second'), wanted);
  const add = addM3 >= 0 ? WORDS.add : WORDS.addLacquer;
  return (
    <div role="status">
      <p class="outcome-figure digits">
        {WORDS.answer(
          numberWords(asOfLacquer(wanted).fraction * 100, 0),
          numberWords(wanted.fraction * 100, 0),
        )}
      </p>
      <p class="digits">{add(volumeWords(Math.abs(addM3), units), volumeWords(volume.value, units))}</p>
      {isExtrapolated && <p>{WORDS.extrapolated}</p>}
    </div>
  );
}
