import { mixSentence } from '../../../actions/mix/mix-refused';
import { Button } from '../../../parts/blocks/button';
import { Line } from '../../../parts/fields/line';
import { NumberField } from '../../../parts/fields/number-field';
import { SelectField } from '../../../parts/fields/select-field';
import { useShop, useUnits } from '../../../parts/frame/shop-context';
import { type Batch, batchMassKg } from '../../../science/mixing/ingredient';
import { batchVolumeM3 } from '../../../science/mixing/weigh/scaling';
import { batchOfLines } from '../../../shop/recipe/batch';
import { mixIngredients } from '../../../shop/recipe/ingredients';
import { MEASURE_WORDS, RECIPE_WORDS as WORDS } from '../../../words/mix/recipe';
import { percentWords } from '../../../words/quantities';
import { volumeWords } from '../../../words/volumes';
import { gramsWords } from '../grams';
import { MEASURE_KEYS } from './measures';
import { type LineDraft, lineProblem, linesOf, type RecipeDraft } from './recipe-draft';

const MEASURES = MEASURE_KEYS.map((value) => ({ value, label: MEASURE_WORDS[value] }));

interface LineRowsProps {
  readonly draft: RecipeDraft;
  readonly onLines: (lines: readonly LineDraft[]) => void;
  readonly isTried: boolean;
  /** So many lines were in it before: they stand as one line each, until they are to be changed. */
  readonly before: number;
}

/** The lines of a recipe, each with what it comes to. */
export function LineRows({ draft, onLines, isTried, before }: LineRowsProps) {
  const batch = useBatch(draft);
  const change = (index: number, line: Partial<LineDraft>) =>
    onLines(draft.lines.map((old, i) => (i === index ? { ...old, ...line } : old)));
  return (
    <>
      {[...draft.lines.entries()].map(([i, line]) => (
        <LineRow
          key={i}
          number={i + 1}
          isFolded={i < before}
          line={line}
          comesTo={batch.ok ? comesTo(batch.value, i) : undefined}
          isTried={isTried}
          onChange={(some) => change(i, some)}
          onTakeOut={
            draft.lines.length > 1 ? () => onLines(draft.lines.filter((_, k) => k !== i)) : undefined
          }
        />
      ))}
      <Total draft={draft} />
    </>
  );
}

function useBatch(draft: RecipeDraft) {
  const { shop } = useShop();
  return batchOfLines(linesOf(draft), shop.value);
}

function comesTo(batch: Batch, line: number): string | undefined {
  const part = batch[line];
  return part && WORDS.isGrams(gramsWords(part.massKg), percentWords(part.massKg / batchMassKg(batch), 1));
}

interface LineRowProps {
  readonly number: number;
  readonly isFolded: boolean;
  readonly line: LineDraft;
  readonly comesTo: string | undefined;
  readonly isTried: boolean;
  readonly onChange: (line: Partial<LineDraft>) => void;
  readonly onTakeOut: (() => void) | undefined;
}

function LineRow({ number, isFolded, line, comesTo: hint, isTried, onChange, onTakeOut }: LineRowProps) {
  const { shop } = useShop();
  const offered = [...shop.value.ingredients.values()].filter(
    ({ id, putAwayMs }) => putAwayMs === undefined || id === line.ingredient,
  );
  const problem = isTried ? lineProblem(line) : undefined;
  const name = line.ingredient === undefined ? '' : (shop.value.ingredients.get(line.ingredient)?.name ?? '');
  const fields = (
    <fieldset class="recipe-line">
      <legend class="heard">{WORDS.ingredient(number)}</legend>
      <SelectField
        label={WORDS.ingredient(number)}
        prompt={WORDS.choose}
        options={offered.map((one) => ({ value: one.id, label: one.name }))}
        value={line.ingredient}
        onChange={(ingredient) => onChange({ ingredient })}
        problem={line.ingredient === undefined ? problem : undefined}
      />
      <div class="amount-line">
        <NumberField
          label={WORDS.amount}
          text={line.text}
          onText={(text) => onChange({ text })}
          problem={line.ingredient === undefined ? undefined : problem}
        />
        <SelectField
          label={WORDS.measure}
          options={MEASURES}
          value={line.measure}
          onChange={(measure) => onChange({ measure })}
        />
      </div>
      {hint && <p class="quiet small digits">{hint}</p>}
      {onTakeOut && (
        <Button kind="plain" icon="remove" onClick={onTakeOut}>
          {WORDS.takeOut(name || WORDS.ingredient(number).toLowerCase())}
        </Button>
      )}
    </fieldset>
  );
  if (!isFolded) return fields;
  return (
    <Line label={name} says={`${line.text} ${MEASURE_WORDS[line.measure]}`} isOpen={problem !== undefined}>
      {fields}
    </Line>
  );
}

function Total({ draft }: { readonly draft: RecipeDraft }) {
  const { shop } = useShop();
  const units = useUnits();
  const batch = useBatch(draft);
  const isStarted = draft.lines.every((line) => lineProblem(line) === undefined);
  if (!isStarted) return null;
  if (!batch.ok)
    return (
      <p class="problem" role="status">
        {mixSentence(batch.failure, shop.value)}
      </p>
    );
  const volume = batchVolumeM3(batch.value, mixIngredients(shop.value.ingredients));
  return (
    <p class="digits total" role="status">
      {WORDS.total(
        gramsWords(batchMassKg(batch.value)),
        volume.ok ? volumeWords(volume.value, units) : undefined,
      )}
    </p>
  );
}
