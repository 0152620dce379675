import { Choice } from '../../../parts/fields/choice';
import { NumberField } from '../../../parts/fields/number-field';
import { named, SelectField } from '../../../parts/fields/select-field';
import { TextField } from '../../../parts/fields/text-field';
import { useShop } from '../../../parts/frame/shop-context';
import { INGREDIENT_WORDS } from '../../../words/mix/ingredient';
import { numberWords } from '../../../words/quantities';
import { TracerField } from '../tracer-field';
import type { IngredientPartProps } from './fact-fields';
import { dayProblem, dropG, dropProblem, dropsCountProblem, isBase } from './ingredient-draft';

const DROP_BY = ['weighed', 'known'] as const;
const DROP_UNITS = ['g', 'mL'] as const;

/** What a drop of this bottle is: by weighing some, or as it is known. */
export function DropFields({ draft, patch, isTried }: IngredientPartProps) {
  return (
    <>
      <Choice
        label={INGREDIENT_WORDS.dropBy}
        options={DROP_BY.map((value) => ({ value, ...INGREDIENT_WORDS.dropBys[value] }))}
        value={draft.dropBy}
        onChange={(dropBy) => patch({ dropBy })}
      />
      {draft.dropBy === 'known' ? (
        <OneDrop {...{ draft, patch, isTried }} />
      ) : (
        <Twenty {...{ draft, patch, isTried }} />
      )}
    </>
  );
}

/** One drop as a data sheet or another weighing has it. */
function OneDrop({ draft, patch, isTried }: IngredientPartProps) {
  const { oneDrop } = draft;
  return (
    <NumberField
      label={INGREDIENT_WORDS.oneDrop}
      text={oneDrop.text}
      onText={(text, unit = oneDrop.unit) => patch({ oneDrop: { text, unit } })}
      units={DROP_UNITS.map((unit) => ({ value: unit, label: unit }))}
      unit={oneDrop.unit}
      onUnit={(unit) => patch({ oneDrop: { ...oneDrop, unit } })}
      hint={INGREDIENT_WORDS.oneDropHint}
      problem={isTried ? dropProblem(draft) : undefined}
    />
  );
}

function Twenty({ draft, patch, isTried }: IngredientPartProps) {
  const one = dropG(draft);
  return (
    <>
      <p>{INGREDIENT_WORDS.dropsText}</p>
      <div class="pair">
        <NumberField
          label={INGREDIENT_WORDS.dropsCount}
          text={draft.dropsCount}
          onText={(dropsCount) => patch({ dropsCount })}
          problem={isTried ? dropsCountProblem(draft) : undefined}
        />
        <NumberField
          label={INGREDIENT_WORDS.dropsWeight}
          text={draft.dropsG}
          onText={(dropsG) => patch({ dropsG })}
          units={[{ value: 'g', label: 'g' }]}
          hint={one === undefined ? undefined : INGREDIENT_WORDS.dropIs(numberWords(one, 4))}
          problem={isTried ? dropProblem(draft) : undefined}
        />
      </div>
    </>
  );
}

/** Of what a let-down is made: so much of one ingredient in a clear. */
export function LetDownFields({ draft, patch, isTried }: IngredientPartProps) {
  const { shop } = useShop();
  const offered = [...shop.value.ingredients.values()].filter(({ putAwayMs }) => putAwayMs === undefined);
  const options = (some: typeof offered) => named(some);
  return (
    <>
      <SelectField
        label={INGREDIENT_WORDS.letDownOf}
        prompt={INGREDIENT_WORDS.chooseOf}
        options={options(offered.filter(({ is }) => !isBase(is)))}
        value={draft.letDownOf}
        onChange={(letDownOf) => patch({ letDownOf })}
        problem={isTried && draft.letDownOf === undefined ? INGREDIENT_WORDS.chooseOf : undefined}
      />
      <SelectField
        label={INGREDIENT_WORDS.letDownIn}
        prompt={INGREDIENT_WORDS.chooseIn}
        options={options(offered.filter(({ is }) => isBase(is)))}
        value={draft.letDownIn}
        onChange={(letDownIn) => patch({ letDownIn })}
        problem={isTried && draft.letDownIn === undefined ? INGREDIENT_WORDS.chooseIn : undefined}
      />
      <Choice
        label={INGREDIENT_WORDS.letDownStrength}
        options={[
          { value: '0.1', ...INGREDIENT_WORDS.tenth },
          { value: '0.01', ...INGREDIENT_WORDS.hundredth },
        ]}
        value={draft.letDownStrength}
        onChange={(letDownStrength) => patch({ letDownStrength })}
      />
    </>
  );
}

/** Where it was bought, its lot, its days, and what it contains. */
export function OriginFields({ draft, patch, isTried }: IngredientPartProps) {
  const contents = ['none', 'isocyanate', 'acid', 'oil', 'aerosol'] as const;
  const day = (key: 'opened' | 'useBy') => (
    <TextField
      label={INGREDIENT_WORDS[key]}
      text={draft[key]}
      onText={(text) => patch({ [key]: text.trim() })}
      hint={INGREDIENT_WORDS.dayHint}
      problem={isTried ? dayProblem(draft[key]) : undefined}
    />
  );
  return (
    <>
      <div class="wide-tiles">
        <Choice
          label={INGREDIENT_WORDS.contains}
          options={contents.map((value) => ({
            value,
            label: value === 'none' ? INGREDIENT_WORDS.containsNothing : INGREDIENT_WORDS.containsOf[value],
          }))}
          value={draft.contains}
          onChange={(contains) => patch({ contains })}
        />
      </div>
      <TracerField text={draft.tracer} onText={(tracer) => patch({ tracer })} isTried={isTried} />
      <div class="pair">
        <TextField
          label={INGREDIENT_WORDS.source}
          text={draft.source}
          onText={(source) => patch({ source })}
        />
        <TextField label={INGREDIENT_WORDS.lot} text={draft.lot} onText={(lot) => patch({ lot })} />
        {day('opened')}
        {day('useBy')}
      </div>
      <TextField label={INGREDIENT_WORDS.note} text={draft.note} onText={(note) => patch({ note })} isLong />
    </>
  );
}
