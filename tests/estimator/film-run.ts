import { createFilm, type Film, heldSolvent } from '../../src/estimator/film';
import type { MobilityLaw, SurfaceLaw } from '../../src/estimator/laws/law';
import { layOn } from '../../src/estimator/solver/mesh';
import { createSolver } from '../../src/estimator/solver/solver';

interface FilmRun {
  readonly dryM: number;
  readonly wetness: readonly number[];
  readonly mobility: MobilityLaw;
  readonly surface: SurfaceLaw;
  readonly temperatureK?: number;
  readonly transferMS?: number;
  readonly tolerance?: number;
}

/** Runs one layer through the production solver; gives what `read` sees at every moment asked for. */
export function runFilm<Row>(
  run: FilmRun,
  timesS: readonly number[],
  read: (film: Film, evaporated: Float64Array) => Row,
): Row[] {
  const film = createFilm(run.wetness.length);
  layOn(film, { dryM: run.dryM, wetness: run.wetness, pigment: 0, passage: 1 });
  const solver = createSolver(film, run.mobility, run.surface, {
    tolerance: run.tolerance ?? 0.01,
    negligible: 1e-12,
    firstStepS: 1e-4,
  });
  const air = { temperatureK: run.temperatureK ?? 298.15, transferMS: run.transferMS ?? 1 };
  let now = 0;
  return timesS.map((untilS) => {
    while (now < untilS) {
      const left = untilS - now;
      const took = solver.step(air, now, left);
      now = took >= left ? untilS : now + took;
    }
    return read(film, solver.evaporated);
  });
}

/** Mean wetness of the film, by solvent. */
export const meanWetness = (film: Film, i = 0): number => {
  let binder = 0;
  for (let n = 0; n < film.nodes; n++) binder += film.binder[n] as number;
  return heldSolvent(film, i) / binder;
};

/** A surface that lets each solvent pass at a fixed rate, m/s. */
export const fixedSurface = (...conductanceMS: number[]): SurfaceLaw => ({
  fill(_film, air, _since, conductance) {
    conductance.set(conductanceMS);
    return air.temperatureK;
  },
});
