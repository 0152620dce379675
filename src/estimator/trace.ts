import { type Film, heldSolvent } from './film';
import type { TgOf } from './laws/lacquer';

/** Dry depth over which sandpaper and the next coat feel the film, m. */
export const BITE_M = 20e-6;

/** How a stack dried, step by step. All columns are of one length. */
export interface Trace {
  readonly timeS: number[];
  /** Glass transition of the surface, of the newest 20 um on average, and of the base, K. */
  readonly surfaceTgK: number[];
  readonly biteTgK: number[];
  readonly baseTgK: number[];
  /** Solvent held, m3 per m2. */
  readonly heldM: number[];
  readonly airK: number[];
  /** Temperature of the film, K: below the air's while solvent cools it. */
  readonly filmK: number[];
}

/** A trace with nothing in it yet. */
export const emptyTrace = (): Trace => ({
  timeS: [],
  surfaceTgK: [],
  biteTgK: [],
  baseTgK: [],
  heldM: [],
  airK: [],
  filmK: [],
});

/** Writes one step down. */
export function record(
  trace: Trace,
  film: Film,
  mean: Film,
  tg: TgOf,
  timeS: number,
  airK: number,
  filmK: number,
): void {
  trace.timeS.push(timeS);
  trace.surfaceTgK.push(tg(film, film.nodes - 1));
  blendTop(film, BITE_M, mean);
  trace.biteTgK.push(tg(mean, 0));
  trace.baseTgK.push(tg(film, 0));
  let held = 0;
  for (let i = 0; i < film.solvents; i++) held += heldSolvent(film, i);
  trace.heldM.push(held);
  trace.airK.push(airK);
  trace.filmK.push(filmK);
}

/** Puts the mean composition of the top of the film into a node of `mean`, over a dry depth or the whole film where that is thinner. */
function blendTop(film: Film, depthM: number, mean: Film): void {
  for (const u of mean.u) u[0] = 0;
  let left = depthM;
  for (let e = film.nodes - 2; e >= 0 && left > 0; e--) {
    const size = film.dz[e] as number;
    const share = Math.min(1, left / size);
    for (let i = 0; i < film.solvents; i++) {
      const u = film.u[i] as Float64Array;
      const total = mean.u[i] as Float64Array;
      const upper = u[e + 1] as number;
      const atCut = upper + ((u[e] as number) - upper) * share;
      total[0] = (total[0] as number) + 0.5 * (upper + atCut) * share * size;
    }
    left -= size * share;
  }
  const depth = depthM - left;
  if (depth > 0) for (const u of mean.u) u[0] = (u[0] as number) / depth;
}
