import { fail, type Result, succeed } from '../../result';
import { type Absolute, type Amount, type Measure, quantity, unitMassKg } from './amount';
import { andThen, find, type MixFailure, sumOver } from './failure';
import { type Batch, type Ingredients, isLacquer, type Part } from './ingredient';

/**
 * The amount of one line of a batch in another measure, or which fact is missing.
 *
 * Parts are counted in the batch's first line: it is one part.
 */
export function expressed(
  batch: Batch,
  line: number,
  measure: Measure,
  ingredients: Ingredients,
): Result<Amount, MixFailure> {
  const part = batch[line];
  if (!part) return fail({ kind: 'empty' });
  const value =
    measure.unit === 'parts' || measure.unit === 'share'
      ? relative(batch, part, measure, ingredients)
      : andThen(find(ingredients, part.ingredient), (ingredient) =>
          andThen(unitMassKg(measure as Absolute, ingredient), (unitKg) => succeed(part.massKg / unitKg)),
        );
  return andThen(value, (found) => succeed({ ...measure, value: found }));
}

function relative(
  batch: Batch,
  part: Part,
  measure: Extract<Measure, { unit: 'parts' | 'share' }>,
  ingredients: Ingredients,
): Result<number, MixFailure> {
  const amount = (of: Part) =>
    andThen(find(ingredients, of.ingredient), (ingredient) => quantity(of.massKg, measure.by, ingredient));
  const whole = andThen(reference(batch, measure, ingredients), (parts) => sumOver(parts, amount));
  return andThen(whole, (wholeAmount) => andThen(amount(part), (own) => succeed(own / wholeAmount)));
}

/** What a part or share is reckoned against. */
function reference(
  batch: Batch,
  measure: Extract<Measure, { unit: 'parts' | 'share' }>,
  ingredients: Ingredients,
): Result<Batch, MixFailure> {
  if (measure.unit === 'parts') return succeed(batch.slice(0, 1));
  if (measure.of === 'mix') return succeed(batch);
  const lacquer = batch.filter(({ ingredient }) => {
    const found = ingredients.get(ingredient);
    return found !== undefined && isLacquer(found);
  });
  return lacquer.length > 0 ? succeed(lacquer) : fail({ kind: 'no-lacquer' });
}
