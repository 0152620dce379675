/** How a cup's efflux time t becomes kinematic viscosity. */
type Law =
  /** ν = K (t - c). */
  | { readonly K: number; readonly c: number }
  /** ν = a t - b/t. */
  | { readonly a: number; readonly b: number };

/** A flow cup: its law in mm2/s and s, and the times between which its standard lets it be used. */
export interface Cup {
  readonly id: CupId;
  readonly standard: string;
  readonly law: Law;
  readonly shortestS: number;
  readonly longestS: number;
  /** The liquid's temperature that the standard asks for, C. */
  readonly temperatureC: number;
  /** Mean difference of the law from an independent published table, as a fraction, where there is one. */
  readonly tableSpread?: number;
}

const FORD = 'ASTM D1200';
const ZAHN = 'ASTM D4212';
const ISO = 'ISO 2431';

// Laws and times: the named standards, as quoted in public conversion code and instrument manuals. Zahn and Ford at 25 C, ISO and
// DIN at 23 C. tableSpread: against the Hydraulic Institute's conversion table; it shows how far generations of cups differ.
const ROWS = {
  'ford-1': [FORD, { K: 0.49, c: 35 }, 55, 100, 25],
  'ford-2': [FORD, { K: 1.44, c: 18 }, 40, 100, 25],
  'ford-3': [FORD, { K: 2.31, c: 6.58 }, 20, 100, 25, 0.11],
  'ford-4': [FORD, { K: 3.85, c: 4.49 }, 20, 100, 25, 0.025],
  'ford-5': [FORD, { K: 12.1, c: 2 }, 20, 100, 25],
  'zahn-1': [ZAHN, { K: 1.1, c: 29 }, 35, 80, 25, 0.37],
  'zahn-2': [ZAHN, { K: 3.5, c: 14 }, 20, 80, 25, 0.165],
  'zahn-3': [ZAHN, { K: 11.7, c: 7.5 }, 20, 80, 25, 0.157],
  'zahn-4': [ZAHN, { K: 14.8, c: 5 }, 20, 80, 25, 0.027],
  'zahn-5': [ZAHN, { K: 23, c: 0 }, 20, 80, 25, 0.149],
  'iso-3mm': [ISO, { a: 0.443, b: 200 }, 30, 100, 23],
  'iso-4mm': [ISO, { a: 1.37, b: 200 }, 30, 100, 23],
  'iso-5mm': [ISO, { a: 3.28, b: 220 }, 30, 100, 23],
  'iso-6mm': [ISO, { a: 6.9, b: 570 }, 30, 100, 23],
  'din-4mm': ['DIN 53211 (withdrawn 1996)', { a: 4.57, b: 452 }, 25, 150, 23],
} as const satisfies Record<string, readonly [string, Law, number, number, number, number?]>;

export type CupId = keyof typeof ROWS;

/** The flow cups that the app can read, by standard and size. */
export const CUPS: readonly Cup[] = (Object.keys(ROWS) as CupId[]).map((id) => {
  const [standard, law, shortestS, longestS, temperatureC, tableSpread] = ROWS[id] as readonly [
    string,
    Law,
    number,
    number,
    number,
    number?,
  ];
  return {
    id,
    standard,
    law,
    shortestS,
    longestS,
    temperatureC,
    ...(tableSpread === undefined ? {} : { tableSpread }),
  };
});

const BY_ID = new Map(CUPS.map((row) => [row.id, row]));

/** One cup of the table. */
export function cup(id: CupId): Cup {
  return BY_ID.get(id) as Cup; // every CupId is a row
}
