import { parseNumber } from '../../logbook/as-typed';
import { COUNTS } from '../../logbook/limits';
import { LOGBOOK_WORDS } from '../../words/frame/logbook';
import { LAY_WORDS } from '../../words/piece/coat/lay';
import { NumberField } from './number-field';

/** What is wrong with a count of passes; halves are counted. */
export function passesProblem(text: string): string | undefined {
  const amount = parseNumber(text);
  const { highest } = COUNTS.passes;
  const isCount = amount !== undefined && Number.isInteger(amount * 2) && amount > 0 && amount <= highest;
  return isCount ? undefined : LOGBOOK_WORDS.notHalves(highest);
}

interface PassesFieldProps {
  readonly text: string;
  readonly onText: (text: string) => void;
  readonly isTried: boolean;
  /** What the logbook said of it. */
  readonly refused?: string | undefined;
}

/** How many passes of the gun a coat was. */
export const PassesField = ({ text, onText, isTried, refused }: PassesFieldProps) => (
  <NumberField
    label={LAY_WORDS.passes}
    text={text}
    onText={onText}
    problem={(isTried ? passesProblem(text) : undefined) ?? refused}
  />
);
