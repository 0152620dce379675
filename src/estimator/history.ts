import type { Volatile } from './laws/evaporation';
import type { Binder, Diluent } from './laws/lacquer';

/** A solvent, as film and surface see it. */
export type FilmSolvent = Volatile & Diluent;

/** What was done to the stack, at seconds from the start of the history. */
export type StackEvent =
  | {
      readonly kind: 'coat';
      readonly atS: number;
      /** Dry thickness, pigment included, m. */
      readonly dryM: number;
      /** Volume of each solvent per volume of binder, in the order of the history's solvents. */
      readonly wetness: readonly number[];
      /** Volume fraction of pigment in the dry film. */
      readonly pigment: number;
      /** Flux factor of that pigment, 1 for a clear. */
      readonly passage: number;
    }
  /** Thinner alone, m3 per m2 by solvent. */
  | { readonly kind: 'flash'; readonly atS: number; readonly solventM: readonly number[] }
  /** Dry thickness taken off the top, m. */
  | { readonly kind: 'sand'; readonly atS: number; readonly removedM: number };

/** The air from a moment on, until the next one. */
export interface AirSpan {
  readonly fromS: number;
  readonly temperatureK: number;
  /** Mass transfer coefficient of n-butyl acetate, m/s. */
  readonly transferMS: number;
}

/** Everything that decides how a stack dries. Seconds from any zero; events and air in time order. */
export interface StackHistory {
  readonly binder: Binder;
  readonly solvents: readonly FilmSolvent[];
  readonly events: readonly StackEvent[];
  readonly air: readonly AirSpan[];
  /** Old finish under the first coat that re-dissolves, m; 0 where the base is closed. */
  readonly openBaseM: number;
  /** Temperature of the room in which it will be sanded, K. */
  readonly sandingK: number;
  /** Thermal effusivity of the panel, W s^0.5/(m2 K). */
  readonly panelEffusivity: number;
}
