import { COARSE_UNCERTAINTY, FORM_SHARE, weighingUncertainty } from '../mixing/weigh/weighing';

/** In which form an amount is best weighed: neat, or let down in the same clear. */
export type Form = keyof typeof FORM_SHARE;

/** An amount to put on the scale. */
export interface Weighed {
  readonly form: Form;
  /** What the scale shall show, a whole number of divisions. */
  readonly grams: number;
  /** The tinter in it, in grams. */
  readonly neatGrams: number;
  /** A fraction. */
  readonly error: number;
}

/**
 * The strongest form in which an amount of neat tinter can be weighed well enough, rounded to the scale; the weakest form
 * offered when none is good enough; undefined when even that is under half a division.
 * @param mostNeatGrams what rounding up must not pass by more than a weighing may be off
 */
export function toWeigh(
  neatGrams: number,
  divisionG: number,
  forms: readonly Form[],
  mostNeatGrams = Number.POSITIVE_INFINITY,
): Weighed | undefined {
  const most = mostNeatGrams * (1 + COARSE_UNCERTAINTY);
  const order = [...forms].sort((one, other) => FORM_SHARE[other] - FORM_SHARE[one]);
  let last: Weighed | undefined;
  for (const form of order) {
    const unit = divisionG * FORM_SHARE[form];
    const nearest = Math.round(neatGrams / unit);
    const divisions = nearest * unit > most ? nearest - 1 : nearest;
    if (divisions < 1) continue;
    const grams = divisions * divisionG;
    last = { form, grams, neatGrams: grams * FORM_SHARE[form], error: weighingUncertainty(grams, divisionG) };
    if (last.error <= COARSE_UNCERTAINTY) return last;
  }
  return last;
}
