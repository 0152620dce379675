import type { Signal } from '@preact/signals';
import { parseNumber } from '../../../logbook/as-typed';
import { COUNTS } from '../../../logbook/limits';
import { Choice } from '../../../parts/fields/choice';
import { NumberField } from '../../../parts/fields/number-field';
import { LOGBOOK_WORDS } from '../../../words/frame/logbook';
import { READ_WORDS as WORDS } from '../../../words/match/read';

/** Four coats are the usual clear over a repair of colour. Common practice, no source. */
const USUAL_CLEARS = '4';

interface ClearFieldsProps {
  readonly clearCoats: Signal<string | undefined>;
  readonly isTried: boolean;
}

/** Bare, or under so many coats of clear. */
export function ClearFields({ clearCoats, isTried }: ClearFieldsProps) {
  return (
    <>
      <Choice
        label={WORDS.under}
        options={[
          { value: 'bare', ...WORDS.bare },
          { value: 'clear', ...WORDS.clear },
        ]}
        value={clearCoats.value === undefined ? 'bare' : 'clear'}
        onChange={(under) => {
          clearCoats.value = under === 'bare' ? undefined : USUAL_CLEARS;
        }}
      />
      {clearCoats.value !== undefined && (
        <CountField label={WORDS.coats} of={clearCoats} isTried={isTried} limits={COUNTS.coats} />
      )}
    </>
  );
}

interface CountFieldProps {
  readonly label: string;
  readonly of: { value: string | undefined };
  readonly isTried: boolean;
  readonly limits: { readonly lowest: number; readonly highest: number };
}

/** A whole number of coats or passes. */
export function CountField({ label, of, isTried, limits }: CountFieldProps) {
  const text = of.value ?? '';
  const isWrong = !isCount(text, limits);
  return (
    <NumberField
      label={label}
      text={text}
      onText={(next) => {
        of.value = next;
      }}
      problem={isWrong && (isTried || text !== '') ? LOGBOOK_WORDS.notACount(limits) : undefined}
    />
  );
}

/** Whether a text is a whole number within limits. */
export const isCount = (
  text: string,
  { lowest, highest }: { readonly lowest: number; readonly highest: number },
): boolean => {
  const count = parseNumber(text) ?? Number.NaN;
  return Number.isInteger(count) && count >= lowest && count <= highest;
};
