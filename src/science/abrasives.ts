/** Median grain of each P grade, in um; for P240 and finer it is the ds50. Source: FEPA 43 / ISO 6344 grain table. */
const P_GRAIN_UM = {
  12: 1815,
  16: 1324,
  20: 1000,
  24: 764,
  30: 642,
  36: 538,
  40: 425,
  50: 336,
  60: 269,
  80: 201,
  100: 162,
  120: 125,
  150: 100,
  180: 82,
  220: 68,
  240: 58.5,
  280: 52.2,
  320: 46.2,
  360: 40.5,
  400: 35,
  500: 30.2,
  600: 25.8,
  800: 21.8,
  1000: 18.3,
  1200: 15.3,
  1500: 12.6,
  2000: 10.3,
  2500: 8.4,
} as const;

/** Average grain of each US grade, in um, for the grades that were found. Source: CAMI column of the same table. */
const CAMI_GRAIN_UM = {
  240: 53,
  320: 36,
  360: 28,
  400: 23,
  500: 20,
  600: 16,
  800: 12.6,
  1000: 10.3,
} as const;

/** A grade of the P scale: `320` is P320. */
export type PGrade = keyof typeof P_GRAIN_UM;
/** A grade of the US scale without a P, whose numbers mean a finer paper than the same P number. */
export type CamiGrade = keyof typeof CAMI_GRAIN_UM;
/** What is printed on the back of the paper: a number means nothing without its scale. */
export type Grit =
  | { readonly scale: 'P'; readonly grade: PGrade }
  | { readonly scale: 'CAMI'; readonly grade: CamiGrade };

/** All P grades with a known grain, from coarse to fine. P3000 and P5000 exist, but no grain size was found. */
export const P_GRADES: readonly PGrade[] = Object.keys(P_GRAIN_UM).map(Number) as PGrade[];
/** All US grades with a known grain, from coarse to fine. */
export const CAMI_GRADES: readonly CamiGrade[] = Object.keys(CAMI_GRAIN_UM).map(Number) as CamiGrade[];

/** Median grain size of a paper, in um. */
export function grainUm(grit: Grit): number {
  return grit.scale === 'P' ? P_GRAIN_UM[grit.grade] : CAMI_GRAIN_UM[grit.grade];
}

/** The P grade whose grain comes closest, as a ratio, to that of another paper. */
export function closestPGrade(grit: Grit): PGrade {
  const distance = (grade: PGrade) => Math.abs(Math.log(P_GRAIN_UM[grade] / grainUm(grit)));
  return P_GRADES.reduce((best, grade) => (distance(grade) < distance(best) ? grade : best));
}

/** The paper that a person means by `P800`, `p 800` or, on the US scale, `600`; undefined for one that the tables lack. */
export function gritOf(text: string): Grit | undefined {
  const [, p, digits] = /^\s*(p?)\s*(\d{2,4})\s*$/i.exec(text) ?? [];
  const grade = Number(digits);
  if (p) return P_GRADES.includes(grade as PGrade) ? { scale: 'P', grade: grade as PGrade } : undefined;
  return CAMI_GRADES.includes(grade as CamiGrade) ? { scale: 'CAMI', grade: grade as CamiGrade } : undefined;
}
