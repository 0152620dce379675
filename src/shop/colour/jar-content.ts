import type { Match } from '../../logbook/fold/piece/matches';
import { FORM_SHARE } from '../../science/mixing/weigh/weighing';

/** What has gone into the jar of a match, in grams. */
export interface MatchJar {
  readonly whiteGrams: number;
  /** Neat tinter by ingredient. */
  readonly tinterGrams: ReadonlyMap<string, number>;
  /** Clear that came in with let-downs. */
  readonly clearGrams: number;
  readonly totalGrams: number;
}

/** The jar as it was at a trial, the newest when left out. */
export function matchJar({ trials, base }: Match, upTo = trials.length): MatchJar {
  const tinterGrams = new Map<string, number>();
  let [whiteGrams, clearGrams, totalGrams] = [0, 0, 0];
  for (const { ingredient, form, mass } of trials.slice(0, upTo).flatMap(({ added }) => added)) {
    const grams = mass.si * 1000;
    const neat = grams * FORM_SHARE[form];
    totalGrams += grams;
    clearGrams += grams - neat;
    if (ingredient === base) whiteGrams += neat;
    else tinterGrams.set(ingredient, (tinterGrams.get(ingredient) ?? 0) + neat);
  }
  return { whiteGrams, tinterGrams, clearGrams, totalGrams };
}

/** What a recipe of the jar at a trial holds, in grams: white, tinters as they came in, and the let-downs' clear where it is known. */
export function partsOf(match: Match, upTo: number): (readonly [ingredient: string, grams: number])[] {
  const { whiteGrams, tinterGrams, clearGrams } = matchJar(match, upTo);
  const clear = match.clear === undefined ? [] : ([[match.clear, clearGrams]] as const);
  return [[match.base, whiteGrams] as const, ...tinterGrams, ...clear].filter(([, grams]) => grams > 0);
}
