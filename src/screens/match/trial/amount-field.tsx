import { parseNumber } from '../../../logbook/as-typed';
import type { Match } from '../../../logbook/fold/piece/matches';
import { LIMITS } from '../../../logbook/limits';
import { Choice } from '../../../parts/fields/choice';
import { NumberField } from '../../../parts/fields/number-field';
import { draftProblem } from '../../../parts/fields/typed-field';
import { COARSE_UNCERTAINTY, FORM_SHARE, weighingUncertainty } from '../../../science/mixing/weigh/weighing';
import { type Form, toWeigh } from '../../../science/pigment/weighing';
import { formsOf } from '../../../shop/colour/advice';
import { NEXT_WORDS } from '../../../words/match/next';
import { MIX_WORDS as WORDS } from '../../../words/match/trial';
import { percentWords } from '../../../words/quantities';
import { gramsText } from '../colour-text';

/** What the scale showed of one thing, and in which form it was weighed. */
export interface AmountDraft {
  readonly form: Form;
  readonly text: string;
}

interface AmountFieldProps {
  readonly name: string;
  readonly match: Match;
  readonly isTinter: boolean;
  readonly amount: AmountDraft;
  readonly onAmount: (amount: AmountDraft) => void;
}

/** Grams of one thing; a tinter may be weighed as a let-down, and an amount too small for the scale says so. */
export function AmountField({ name, match, isTinter, amount, onAmount }: AmountFieldProps) {
  const isEmpty = amount.text.trim() === '';
  const problem = isEmpty ? undefined : draftProblem({ text: amount.text, unit: 'g' }, LIMITS.mass);
  return (
    <div class="amount-field">
      <NumberField
        label={WORDS.grams(name)}
        text={amount.text}
        onText={(text) => onAmount({ ...amount, text })}
        hint={problem || isEmpty ? undefined : errorHint(amount, match, isTinter)}
        problem={problem}
      />
      {isTinter && match.letDowns.length > 0 && !isEmpty && (
        <Choice
          label={WORDS.form}
          options={formsOf(match).map((value) => ({ value, label: WORDS.forms[value] }))}
          value={amount.form}
          onChange={(form) => onAmount({ ...amount, form })}
        />
      )}
    </div>
  );
}

/** How far off the scale may be, and the let-down that would be surer. */
function errorHint({ text, form }: AmountDraft, { division }: Match, isTinter: boolean): string | undefined {
  const grams = parseNumber(text) ?? Number.NaN;
  const divisionG = division.si * 1000;
  const error = weighingUncertainty(grams, divisionG);
  if (!(error >= SEEN)) return undefined;
  const said = error >= 1 ? WORDS.unweighable : WORDS.error(percentWords(error, error < 0.1 ? 1 : 0));
  if (error <= COARSE_UNCERTAINTY || !isTinter) return said;
  const better = toWeigh(grams * FORM_SHARE[form], divisionG, LET_DOWNS);
  return better && better.error < error
    ? `${said} ${WORDS.better(gramsText(better.grams, divisionG), NEXT_WORDS.form[better.form])}`
    : said;
}

/** What would be written as 0 % of it is not worth a word. */
const SEEN = 0.0005;
const LET_DOWNS: readonly Form[] = ['let-down-10', 'let-down-1'];
