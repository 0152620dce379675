import { parseNumber } from '../../logbook/as-typed';
import { COUNTS } from '../../logbook/limits';
import { NumberField } from '../../parts/fields/number-field';
import { TRACER_WORDS as WORDS } from '../../words/mix/ingredient';

/** The wavelength as it is logged, nm; undefined where none is said. */
export const tracerNmOf = (text: string): number | undefined =>
  text.trim() === '' ? undefined : parseNumber(text);

export function tracerProblem(text: string): string | undefined {
  const { lowest, highest } = COUNTS.tracerNm;
  const nm = tracerNmOf(text);
  const isWhole = nm !== undefined && Number.isInteger(nm) && nm >= lowest && nm <= highest;
  return text.trim() === '' || isWhole ? undefined : WORDS.problem(lowest, highest);
}

interface TracerFieldProps {
  readonly text: string;
  readonly onText: (text: string) => void;
  readonly isTried: boolean;
}

/** Whether it holds a tracer, by the light under which it fluoresces. */
export const TracerField = ({ text, onText, isTried }: TracerFieldProps) => (
  <NumberField
    label={WORDS.label}
    text={text}
    onText={onText}
    units={[{ value: 'nm', label: 'nm' }]}
    hint={WORDS.hint}
    problem={isTried ? tracerProblem(text) : undefined}
  />
);
