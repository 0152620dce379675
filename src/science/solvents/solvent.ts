import type { How, SourceKey } from './sources';

/** log10(P/bar) = A - B/(T/K + C), fitted between the two temperatures. */
export interface Antoine {
  readonly A: number;
  readonly B: number;
  readonly C: number;
  readonly tMinK: number;
  readonly tMaxK: number;
}

/** What is known of a solvent, SI. A value that was not found, or does not apply, is left out. */
export interface SolventFacts {
  readonly molarMassKgMol: number;
  /** At 20 C. */
  readonly densityKgM3: number;
  readonly antoine: Antoine;
  /** By volume, n-butyl acetate 1. */
  readonly relativeEvaporationRate: number;
  /** Closed cup. */
  readonly flashPointC?: number;
  /** Lower explosive limit, volume fraction in air. */
  readonly lelFraction?: number;
  /** Of vaporisation, at 25 C. */
  readonly latentHeatJMol: number;
  /** At 25 C and 1 atm. */
  readonly airDiffusivityM2S: number;
  readonly glassTransitionK: number;
  /** Permissible 8-hour average in the United States. */
  readonly oshaTwaPpm?: number;
  /** Recommended 10-hour average. */
  readonly nioshTwaPpm?: number;
}

/** A value, how it was had, from where, and what else to know of it. */
export type Sourced<Value> = readonly [value: Value, how: How, source: SourceKey, note?: string];

/** A line of the table: every fact with its source beside it. */
export type SolventRow = { readonly id: string; readonly name: string; readonly cas: string } & {
  readonly [Fact in keyof SolventFacts]: Sourced<Exclude<SolventFacts[Fact], undefined>>;
};

export interface ValueSource {
  readonly source: string;
  readonly how: How;
  readonly note?: string;
}
