import { createFilm, type Film, heldSolvent } from './film';
import type { StackEvent, StackHistory } from './history';
import { evaporation } from './laws/evaporation';
import { createTgOf, lacquerMobility, type TgOf } from './laws/lacquer';
import type { AirState } from './laws/law';
import { coarsen, layOn, sandOff, soakIn } from './solver/mesh';
import { type Accuracy, createSolver, DEFAULT_ACCURACY, type Solver } from './solver/solver';
import { createWeather, overSpells } from './weather';

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

/** What is in each layer at a moment: the old finish first (where it is in play), then coat by coat. */
export interface Profile {
  readonly timeS: number;
  readonly layers: readonly { readonly dryM: number; readonly solventM: number }[];
}

export interface Simulation {
  readonly trace: Trace;
  readonly profiles: readonly Profile[];
  /** Solvent laid, evaporated, sanded away and held at the end, m3 per m2 by solvent. */
  readonly balance: {
    readonly laid: number[];
    readonly evaporated: number[];
    readonly sanded: number[];
    readonly held: number[];
  };
  readonly steps: number;
}

export interface SimulateOptions {
  readonly untilS: number;
  /** Moments at which the layers are looked at, in time order. */
  readonly profileAtS?: readonly number[];
  readonly accuracy?: Accuracy;
  /** Ends the run early; asked after the last event, once for each step. */
  readonly isDone?: (trace: Trace) => boolean;
}

/** Wetness to which a flash coat dilutes what it soaks into: that of a sprayed coat. */
const FLASH_WETNESS = 4;

/** Marches a stack through its coats and its air. */
export function simulate(history: StackHistory, options: SimulateOptions): Simulation {
  const { solvents, binder, events } = history;
  const film = createFilm(solvents.length);
  const mean = createFilm(solvents.length);
  const layers: number[] = [];
  const laid = solvents.map(() => 0);
  const sanded = solvents.map(() => 0);
  const mobility = overSpells(lacquerMobility(binder, solvents));
  const weather = createWeather(history.air);
  const solver = createSolver(
    film,
    mobility,
    evaporation(solvents, binder.chi, { panelEffusivity: history.panelEffusivity }),
    options.accuracy ?? DEFAULT_ACCURACY,
  );
  const trace: Trace = {
    timeS: [],
    surfaceTgK: [],
    biteTgK: [],
    baseTgK: [],
    heldM: [],
    airK: [],
    filmK: [],
  };
  const profiles: Profile[] = [];
  const tg = createTgOf(binder, solvents);
  const wanted = options.profileAtS ?? [];
  let steps = 0;
  let nextProfile = 0;
  let wetAtS = events[0]?.atS ?? 0;
  let now = wetAtS;

  if (history.openBaseM > 0) {
    layOn(film, { dryM: history.openBaseM, wetness: solvents.map(() => 0), pigment: 0, passage: 1 });
    layers.push(history.openBaseM);
  }

  function apply(event: StackEvent): void {
    const before = solvents.map((_, i) => heldSolvent(film, i));
    coarsen(film);
    if (event.kind === 'coat') {
      layOn(film, event);
      layers.push(event.dryM);
      wetAtS = event.atS;
    } else if (event.kind === 'flash') {
      soakIn(film, event.solventM, FLASH_WETNESS);
      wetAtS = event.atS;
    } else {
      for (const [i, gone] of sandOff(film, event.removedM).entries())
        sanded[i] = (sanded[i] as number) + gone;
      takeOff(layers, event.removedM);
      solver.restart();
      return;
    }
    for (const [i, held] of before.entries()) laid[i] = (laid[i] as number) + heldSolvent(film, i) - held;
    solver.restart();
  }

  function march(untilS: number, isLast: boolean): boolean {
    while (now < untilS) {
      while (nextProfile < wanted.length && (wanted[nextProfile] as number) <= now) {
        profiles.push(profileOf(film, layers, now));
        nextProfile++;
      }
      const limit = Math.min(untilS, wanted[nextProfile] ?? Number.POSITIVE_INFINITY);
      const span = weather(now, Math.min(solver.stepS, limit - now));
      mobility.spells = span.spells;
      const stop = Math.min(limit, span.endS);
      now = advance(solver, span, now - wetAtS, now, stop);
      steps++;
      record(trace, film, mean, tg, now, span.temperatureK, solver.temperatureK);
      if (isLast && options.isDone?.(trace)) return true;
    }
    return false;
  }

  for (const [k, event] of events.entries()) {
    now = Math.max(now, event.atS);
    apply(event);
    const next = events[k + 1];
    const end = Math.min(next?.atS ?? options.untilS, options.untilS);
    if (march(end, next === undefined) || end === options.untilS) break;
  }
  return {
    trace,
    profiles,
    balance: {
      laid,
      evaporated: [...solver.evaporated],
      sanded,
      held: solvents.map((_, i) => heldSolvent(film, i)),
    },
    steps,
  };
}

/** One step that lands exactly on `stopS` where it comes near it. */
function advance(solver: Solver, air: AirState, sinceWetS: number, now: number, stopS: number): number {
  const left = stopS - now;
  // Two even steps rather than a long one and a sliver.
  const most = solver.stepS < left && solver.stepS > left / 2 ? left / 2 : left;
  const took = solver.step(air, sinceWetS, most);
  return took >= left ? stopS : now + took;
}

function takeOff(layers: number[], removedM: number): void {
  let left = removedM;
  for (let k = layers.length - 1; k >= 0 && left > 0; k--) {
    const gone = Math.min(left, layers[k] as number);
    layers[k] = (layers[k] as number) - gone;
    left -= gone;
  }
}

function record(
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

/** Splits what the film holds among its layers, by dry depth. */
function profileOf(film: Film, layers: readonly number[], timeS: number): Profile {
  let e = 0;
  let inElement = 0;
  const rows = layers.map((dryM) => {
    let left = dryM;
    let solventM = 0;
    while (left > 1e-12 && e < film.nodes - 1) {
      const size = film.dz[e] as number;
      const take = Math.min(left, size - inElement);
      const middle = (inElement + take / 2) / size;
      for (const u of film.u) {
        const here = (u[e] as number) + ((u[e + 1] as number) - (u[e] as number)) * middle;
        solventM += here * take * (1 - (film.pigment[e] as number));
      }
      left -= take;
      inElement += take;
      if (inElement >= size - 1e-15) {
        e++;
        inElement = 0;
      }
    }
    return { dryM, solventM };
  });
  return { timeS, layers: rows };
}
