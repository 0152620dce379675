import type { Film } from '../film';

/** How fast solvent moves inside the film. A parameter of the solver, so that published cases run through the same code. */
export interface MobilityLaw {
  /** Mobility of each solvent relative to what `at` gives. Absent where each solvent has a law of its own. */
  readonly ratio?: readonly number[];
  /** The same at every node. Absent where it is no quicker than node by node. */
  fill?(film: Film, temperatureK: number, mobility: Float64Array): void;
  /**
   * phi_p^2 D at a node for the film's wetness there, m2/s.
   * @param solvent which solvent; means something only where there is no `ratio`
   */
  at(film: Film, node: number, temperatureK: number, solvent: number): number;
}

/** What the air is like, as far as the film feels it. */
export interface AirState {
  readonly temperatureK: number;
  /** Mass transfer coefficient of n-butyl acetate, m/s. */
  readonly transferMS: number;
}

/** How fast solvent leaves through the top. */
export interface SurfaceLaw {
  /**
   * Fills the conductance of each solvent, m/s: volume flux = conductance x u at the surface.
   * Gives the temperature of the film, K.
   * @param sinceWetS seconds since the last coat: the panel beneath gives heat, less and less of it
   */
  fill(film: Film, air: AirState, sinceWetS: number, conductance: Float64Array): number;
  /** Forgets what it found at the last step; called when the film was changed from outside. */
  forget?(): void;
}
