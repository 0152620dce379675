import { fail, type Result, succeed } from '../../result';
import { andThen, find, forEach, type MixFailure } from './failure';
import type { Batch, Ingredients, Part } from './ingredient';

/** A batch with the lines of each ingredient added up, in order of first appearance. */
export function gathered(batch: Batch): Batch {
  const masses = new Map<string, number>();
  for (const { ingredient, massKg } of batch) masses.set(ingredient, (masses.get(ingredient) ?? 0) + massKg);
  return [...masses].map(([ingredient, massKg]) => ({ ingredient, massKg }));
}

/** What a batch holds in the end: let-downs, and mixes used as ingredients, opened down to what they were made of. */
export function contents(batch: Batch, ingredients: Ingredients): Result<Batch, MixFailure> {
  return andThen(
    forEach(batch, (part) => opened(part, ingredients, [])),
    (parts) => succeed(gathered(parts.flat())),
  );
}

function opened(part: Part, ingredients: Ingredients, above: readonly string[]): Result<Batch, MixFailure> {
  const path = [...above, part.ingredient];
  if (above.includes(part.ingredient)) {
    return fail({ kind: 'contains-itself', path: path.slice(path.indexOf(part.ingredient)) });
  }
  return andThen(find(ingredients, part.ingredient), ({ madeOf }) => {
    if (!madeOf) return succeed([part]);
    const inner = madeOf.map(({ ingredient, massFraction }) => ({
      ingredient,
      massKg: part.massKg * massFraction,
    }));
    return andThen(
      forEach(inner, (each) => opened(each, ingredients, path)),
      (parts) => succeed(parts.flat()),
    );
  });
}

/** How much to mix, so that a share of it can be kept back for repairs; in the unit of what is needed. */
export const withKeepBack = (needed: number, share: number): number => needed / (1 - share);
