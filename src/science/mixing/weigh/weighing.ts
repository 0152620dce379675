/** Above this a weighing is worth a warning (common practice, no source). */
export const COARSE_UNCERTAINTY = 0.05;
/** The usual strengths of a let-down: so much tinter by mass in the same clear (common practice, no source). */
const LET_DOWN_STRENGTHS = [0.1, 0.01] as const;

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
  return LET_DOWN_STRENGTHS.map((strength) => letDown(tinterKg, strength)).find(
    ({ letDownKg, clearToLeaveOutKg }) =>
      weighing(letDownKg, divisionKg) === 'fine' && clearToLeaveOutKg <= clearKg,
  );
}
