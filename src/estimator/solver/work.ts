import type { Film } from '../film';
import { FIRST_ORDER, type Weights } from './backward-differences';

/** The room in which a step is solved: made once for a film, so that nothing is allocated on the way. */
export interface Work {
  /** Wetness one step ago, as the past steps predict it, and as solved; by solvent and node. */
  readonly past: readonly Float64Array[];
  readonly extrapolated: readonly Float64Array[];
  readonly solved: readonly Float64Array[];
  /** The film that the laws are asked about: the same mesh, the wetness at which coefficients are taken. */
  readonly predicted: Film;
  /** phi_p^2 D at the nodes, m2/s, and what an element passes per difference in wetness, m/s. */
  readonly mobility: Float64Array;
  readonly faces: Float64Array;
  /** What leaves the surface per wetness, m/s, by solvent. */
  readonly conductance: Float64Array;
  /** Backward differences of this step, by solvent. */
  readonly weights: Weights[];
  /** Sums over the active solvents at the nodes: wetness, wetness x mobility ratio, wetness x lead, weighted past. */
  readonly wet: Float64Array;
  readonly moving: Float64Array;
  readonly leading: Float64Array;
  readonly history: Float64Array;
  /** For the tridiagonal solutions. */
  readonly upper: Float64Array;
  readonly change: Float64Array;
  readonly speed: Float64Array;
  /** 1 where a solvent still matters. */
  readonly isActive: Uint8Array;
}

export function createWork(film: Film): Work {
  const length = film.dz.length;
  const column = () => new Float64Array(length);
  const columns = () => Array.from({ length: film.solvents }, column);
  return {
    past: columns(),
    extrapolated: columns(),
    solved: columns(),
    predicted: { ...film, u: columns() },
    mobility: column(),
    faces: column(),
    conductance: new Float64Array(film.solvents),
    wet: column(),
    moving: column(),
    leading: column(),
    weights: Array.from({ length: film.solvents }, () => FIRST_ORDER),
    history: column(),
    upper: column(),
    change: column(),
    speed: column(),
    isActive: new Uint8Array(film.solvents),
  };
}
