import type { Film } from './film';
import type { Profile } from './profile';
import type { SolverState } from './solver/solver';
import type { Trace } from './trace';

/** Where a march stood between two steps: all it takes to go on from there. */
export interface Mark {
  readonly nowS: number;
  /** When it was last wetted, s. */
  readonly wetAtS: number;
  /** How many events were behind it. */
  readonly eventsDone: number;
  readonly film: Film;
  readonly solver: SolverState;
  readonly layers: readonly number[];
  readonly laid: readonly number[];
  readonly sanded: readonly number[];
  readonly profiles: readonly Profile[];
  /** What was written down, of which the first `length` steps lay behind it. */
  readonly trace: Trace;
  readonly length: number;
}

/** A trace of one's own that begins with what lay behind a mark. */
export function readsOn({ trace, length }: Mark): Trace {
  const cut = (column: ArrayLike<number>) => Array.from({ length }, (_, k) => column[k] as number);
  return {
    timeS: cut(trace.timeS),
    surfaceTgK: cut(trace.surfaceTgK),
    biteTgK: cut(trace.biteTgK),
    baseTgK: cut(trace.baseTgK),
    heldM: cut(trace.heldM),
    airK: cut(trace.airK),
    filmK: cut(trace.filmK),
  };
}
