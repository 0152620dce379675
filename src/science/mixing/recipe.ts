import { fail, type Result, succeed } from '../../result';
import { type Absolute, type Amount, massOfQuantity, quantity, unitMassKg } from './amount';
import { andThen, find, forEach, type MixFailure, sumOver } from './failure';
import { type Batch, type Ingredients, isLacquer } from './ingredient';
import type { Line, OpenLine, Recipe } from './line';
import { sharesOfMix } from './shares-of-mix';

/** Where a recipe is all parts, one part is taken as a gram or a millilitre: scale the batch to the size that is wanted. */
const PART = { mass: 1e-3, volume: 1e-6 } as const;
/** Percentages are typed rounded. */
const WHOLE_TOLERANCE = 0.005;

/**
 * The masses that a recipe stands for, in its order, or why they cannot be known.
 *
 * Amounts convert through density and drop mass; a share of the lacquer refers to the clear and white base, a share of the mix to
 * everything, itself included. Volumes are taken to add.
 */
export function batchOf(recipe: Recipe, ingredients: Ingredients): Result<Batch, MixFailure> {
  if (recipe.length === 0) return fail({ kind: 'empty' });
  const opened = forEach(recipe, ({ ingredient, amount }, line) =>
    amount.value > 0 && Number.isFinite(amount.value)
      ? andThen(find(ingredients, ingredient), (found) => succeed<OpenLine>({ ingredient: found, amount }))
      : fail<MixFailure>({ kind: 'not-positive', line }),
  );
  const fixed = andThen(andThen(opened, sharesAsParts), weighFixed);
  const masses = andThen(andThen(fixed, weighSharesOfLacquer), sharesOfMix);
  return andThen(masses, (values) =>
    succeed(values.map((massKg, i) => ({ ingredient: (recipe[i] as Line).ingredient, massKg }))),
  );
}

/** A recipe all in shares of the mix has only ratios: the same as parts. */
function sharesAsParts(lines: readonly OpenLine[]): Result<readonly OpenLine[], MixFailure> {
  const shares = lines.flatMap(({ amount }) =>
    amount.unit === 'share' && amount.of === 'mix' ? [amount] : [],
  );
  if (shares.length < lines.length) return succeed(lines);
  if (new Set(shares.map(({ by }) => by)).size > 1) return fail({ kind: 'parts-of-two-kinds' });
  const sum = shares.reduce((total, { value }) => total + value, 0);
  if (Math.abs(sum - 1) > WHOLE_TOLERANCE) return fail({ kind: 'shares-do-not-add-up', sum });
  const parts = shares.map(({ by, value }): Amount => ({ unit: 'parts', by, value }));
  return succeed(lines.map((line, i) => ({ ...line, amount: parts[i] as Amount })));
}

function weighFixed(lines: readonly OpenLine[]): Result<OpenLine[], MixFailure> {
  const measures = lines.map(({ amount }) => amount).filter(({ unit }) => unit !== 'share');
  const parts = measures.filter((amount) => amount.unit === 'parts');
  if (parts.length > 0 && parts.length < measures.length) return fail({ kind: 'parts-with-amounts' });
  if (new Set(parts.map(({ by }) => by)).size > 1) return fail({ kind: 'parts-of-two-kinds' });
  return forEach(lines, (line) => {
    const { amount, ingredient } = line;
    if (amount.unit === 'share') return succeed(line);
    const mass =
      amount.unit === 'parts'
        ? massOfQuantity(amount.value * PART[amount.by], amount.by, ingredient)
        : andThen(unitMassKg(amount as Absolute, ingredient), (unitKg) => succeed(amount.value * unitKg));
    return andThen(mass, (massKg) => succeed({ ...line, massKg }));
  });
}

function weighSharesOfLacquer(lines: readonly OpenLine[]): Result<OpenLine[], MixFailure> {
  const lacquer = lines.filter(({ ingredient, massKg }) => massKg !== undefined && isLacquer(ingredient));
  return forEach(lines, (line) => {
    const { amount, ingredient } = line;
    if (amount.unit !== 'share' || amount.of !== 'lacquer') return succeed(line);
    if (lacquer.length === 0) return fail({ kind: 'no-lacquer' });
    const base = sumOver(lacquer, (of) => quantity(of.massKg as number, amount.by, of.ingredient));
    const mass = andThen(base, (whole) => massOfQuantity(whole * amount.value, amount.by, ingredient));
    return andThen(mass, (massKg) => succeed({ ...line, massKg }));
  });
}
