import type { EntryInSi, Lines } from '../in-si';

export type PiecePlan = EntryInSi<'piece-planned'>;
export type StepMark = EntryInSi<'step-marked'>;
export type WorkingHours = EntryInSi<'hours-set'>;
export type ShopClosure = EntryInSi<'closure-set'>;

/** The plans by piece as they were last set, what was promised (ms since 1970), what was marked, and when the shop is open. */
export function foldPlans(lines: Lines) {
  const promises = new Map<string, number>();
  for (const { piece, promised } of lines.of('piece-promised')) {
    if (promised === undefined) promises.delete(piece);
    else promises.set(piece, Date.parse(promised));
  }
  const lifted = new Set(lines.of('closure-lifted').map(({ closure }) => closure));
  return {
    plans: new Map(lines.of('piece-planned').map((plan) => [plan.piece, plan])) as ReadonlyMap<
      string,
      PiecePlan
    >,
    promises: promises as ReadonlyMap<string, number>,
    stepMarks: lines.of('step-marked'),
    hours: lines.of('hours-set').at(-1),
    closures: lines.of('closure-set').filter(({ closure }) => !lifted.has(closure)),
  };
}
