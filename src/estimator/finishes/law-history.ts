import type { Band, Estimate, FilmCheck } from '../estimate';
import type { CuringFinish } from './finish-law';
import type { LawBelief, LawLearned } from './law-belief';

/** The air from a moment on, as a finish feels it that dries by water or cures. */
export interface LawAir {
  readonly fromS: number;
  readonly temperatureK: number;
  /** A fraction. */
  readonly relativeHumidity: number;
}

export interface LawCoat {
  readonly atS: number;
  /** Dry thickness, m. */
  readonly dryM: number;
  /** What it gives to the air, m3 per m2. */
  readonly volatileM: number;
}

/** What a product's own data sheet gives, at the conditions that it gives it for; seconds. */
export interface SheetTimes {
  readonly temperatureK: number;
  readonly relativeHumidity: number;
  /** Dry film of the coat for which the times hold, m; that of a usual coat where the sheet does not say. */
  readonly filmDryM?: number;
  readonly touchS?: number;
  readonly recoatFromS?: number;
  readonly recoatUntilS?: number;
  readonly sandS?: number;
  readonly curedS?: number;
}

/** Everything that decides how a stack of such a finish hardens. Events and air in time order. */
export interface LawHistory {
  readonly coats: readonly LawCoat[];
  readonly sandings: readonly { readonly atS: number; readonly removedM: number }[];
  readonly air: readonly LawAir[];
  readonly sandingK: number;
  readonly sheet?: SheetTimes;
}

export interface LawRequest {
  readonly history: LawHistory;
  readonly nowS: number;
  readonly checks?: readonly FilmCheck[];
  /** What other pieces with this product have taught. */
  readonly belief?: LawBelief;
  readonly nextCoat?: LawCoat;
  readonly whatIf?: readonly { readonly name: string; readonly history: LawHistory }[];
}

/** An estimate by law, with what only these finishes have. */
export interface LawEstimate extends Estimate, OfLaw {}

/** What only these finishes have. */
export interface OfLaw {
  readonly law: {
    readonly finish: CuringFinish;
    /** What the checks of this piece say of its product; `learned` is of a diffusivity that these laws do not have. */
    readonly learned: LawLearned;
    /** When the recoat window closes; absent where it has no upper end. */
    readonly recoatUntil?: Band;
    /** When it may be used with care; `settled` is its full cure. */
    readonly lightUse: Band;
    readonly isScaledToSheet: boolean;
    /** Dry film of all coats less what was sanded away, m. */
    readonly totalDryM: number;
    /** A coat was too cold to form a film since it was laid. */
    readonly wasTooCold: boolean;
  };
}

/** What only a finish with a law has of an estimate; undefined where it dries by losing solvent alone. */
export const lawOf = (estimate: Estimate): LawEstimate['law'] | undefined =>
  'law' in estimate ? (estimate as LawEstimate).law : undefined;
