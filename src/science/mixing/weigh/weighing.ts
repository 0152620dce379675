/** Above this a weighing is worth a warning (common practice, no source). */
export const COARSE_UNCERTAINTY = 0.05;
/** Share of the tinter, by mass, in the forms in which it is weighed: neat, or let down in the same clear as is usual (common practice, no source). */
export const FORM_SHARE = { neat: 1, 'let-down-10': 0.1, 'let-down-1': 0.01 } as const;
const LET_DOWNS = [FORM_SHARE['let-down-10'], FORM_SHARE['let-down-1']];

export type Weighing = 'fine' | 'coarse' | 'not-weighable';

/** What half a division of the scale is of the mass, as a fraction; both in the same unit, whichever that is. */
export const weighingUncertainty = (mass: number, division: number): number => division / 2 / mass;

/** Whether a scale can weigh a mass well, badly, or not at all: less than its own division. */
export function weighing(massKg: number, divisionKg: number): Weighing {
  if (massKg < divisionKg * (1 - 1e-9)) return 'not-weighable';
  return weighingUncertainty(massKg, divisionKg) > COARSE_UNCERTAINTY ? 'coarse' : 'fine';
}

/** A tinter weighed as a let-down instead. */
export interface LetDown {
  readonly strength: number;
  /** Of the let-down to weigh, kg. */
  readonly letDownKg: number;
  /** Clear that comes with it, to leave out of the recipe, kg. */
  readonly clearToLeaveOutKg: number;
}

/** A mass of tinter weighed as a let-down of a strength by mass. */
export const letDown = (tinterKg: number, strength: number): LetDown => ({
  strength,
  letDownKg: tinterKg / strength,
  clearToLeaveOutKg: tinterKg / strength - tinterKg,
});

/** The strongest usual let-down that the scale weighs well, or undefined where none does or it brings more clear than there is. */
export function usefulLetDown(tinterKg: number, divisionKg: number, clearKg: number): LetDown | undefined {
  return LET_DOWNS.map((strength) => letDown(tinterKg, strength)).find(
    ({ letDownKg, clearToLeaveOutKg }) =>
      weighing(letDownKg, divisionKg) === 'fine' && clearToLeaveOutKg <= clearKg,
  );
}
