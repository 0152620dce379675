import { createFilm, heldSolvent, packed, unpack } from './film';
import type { StackEvent, StackHistory } from './history';
import { evaporation } from './laws/evaporation';
import { createTgOf, lacquerMobility } from './laws/lacquer';
import type { AirState } from './laws/law';
import { type Mark, readsOn } from './mark';
import { type Profile, profileOf, takeOff } from './profile';
import { coarsen, layOn, sandOff, soakIn } from './solver/mesh';
import { type Accuracy, createSolver, DEFAULT_ACCURACY, type Solver } from './solver/solver';
import { emptyTrace, record, type Trace } from './trace';
import { createWeather, overSpells } from './weather';

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
  /** Solvent held by solvent, m3 per m2, at each moment at which the layers were looked at. */
  readonly heldThen: readonly (readonly number[])[];
  readonly steps: number;
  /** Where it stood just before each of its last two events. */
  readonly marks: readonly Mark[];
}

/** How much may still be worked out, in nodes solved; what a march spends is taken off. */
export interface Budget {
  left: number;
}

/** The stack takes more work than there is a budget for. */
export class TooMuchWorkError extends RangeError {
  override name = 'TooMuchWorkError';
}

export interface SimulateOptions {
  readonly untilS: number;
  /** Moments at which the layers are looked at, in time order. */
  readonly profileAtS?: readonly number[];
  readonly accuracy?: Accuracy;
  /** Ends the run early; asked after the last event, once for each step. */
  readonly isDone?: (trace: Trace) => boolean;
  /** Where an earlier march of the same stack stood before anything was different: from there on it is marched anew. */
  readonly from?: Mark | undefined;
  readonly budget?: Budget | undefined;
}

/** Wetness to which a flash coat dilutes what it soaks into: that of a sprayed coat of 20 % solids (common practice, no source). */
const FLASH_WETNESS = 4;

/** What a coat did before the next one covered it is forgotten but for its solvent: its steps may be coarser (tried: level-sanding moves by under 1 %). */
const COVERED_TOLERANCE = 0.2;

/**
 * Marches a stack through its coats and its air.
 * @throws TooMuchWorkError where that takes more than its budget
 */
export function simulate(history: StackHistory, options: SimulateOptions): Simulation {
  const { solvents, binder, events } = history;
  const film = createFilm(solvents.length);
  const mean = createFilm(solvents.length);
  const layers: number[] = [...(options.from?.layers ?? [])];
  const laid = options.from ? [...options.from.laid] : solvents.map(() => 0);
  const sanded = options.from ? [...options.from.sanded] : solvents.map(() => 0);
  const mobility = overSpells(lacquerMobility(binder, solvents));
  const weather = createWeather(history.air);
  const solver = createSolver(
    film,
    mobility,
    evaporation(solvents, binder.chi, { panelEffusivity: history.panelEffusivity }),
    options.accuracy ?? DEFAULT_ACCURACY,
  );
  const { from, budget } = options;
  const trace = from ? readsOn(from) : emptyTrace();
  const profiles: Profile[] = [...(from?.profiles ?? [])];
  const tg = createTgOf(binder, solvents);
  const wanted = (options.profileAtS ?? []).filter((atS) => !from || atS > from.nowS);
  const marks: Mark[] = [];
  const heldThen: number[][] = [];
  let steps = 0;
  let spent = 0;
  let nextProfile = 0;
  let wetAtS = from?.wetAtS ?? events[0]?.atS ?? 0;
  let now = from?.nowS ?? wetAtS;

  if (from) {
    unpack(from.film, film);
    solver.resume(from.solver);
  } else if (history.openBaseM > 0) {
    layOn(film, { dryM: history.openBaseM, wetness: solvents.map(() => 0), pigment: 0, passage: 1 });
    layers.push(history.openBaseM);
  }

  function apply(event: StackEvent, tolerance: number | undefined): void {
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
      solver.restart(tolerance);
      return;
    }
    for (const [i, held] of before.entries()) laid[i] = (laid[i] as number) + heldSolvent(film, i) - held;
    solver.restart(tolerance);
  }

  const mark = (eventsDone: number): Mark => ({
    nowS: now,
    wetAtS,
    eventsDone,
    film: packed(film),
    solver: solver.state(),
    layers: [...layers],
    laid: [...laid],
    sanded: [...sanded],
    profiles: [...profiles],
    trace,
    length: trace.timeS.length,
  });

  function pay(): void {
    if (!budget) return;
    budget.left -= (solver.nodesSolved - spent) * (1 + mobility.spells.length);
    spent = solver.nodesSolved;
    if (budget.left < 0) throw new TooMuchWorkError('The stack takes too much work.');
  }

  function march(untilS: number, isLast: boolean): boolean {
    while (now < untilS) {
      while (nextProfile < wanted.length && (wanted[nextProfile] as number) <= now) {
        profiles.push(profileOf(film, layers, now));
        heldThen.push(solvents.map((_, i) => heldSolvent(film, i)));
        nextProfile++;
      }
      const limit = Math.min(untilS, wanted[nextProfile] ?? Number.POSITIVE_INFINITY);
      const span = weather(now, Math.min(solver.stepS, limit - now));
      mobility.spells = span.spells;
      const stop = Math.min(limit, span.endS);
      now = advance(solver, span, now - wetAtS, now, stop);
      steps++;
      pay();
      record(trace, film, mean, tg, now, span.temperatureK, solver.temperatureK);
      if (isLast && options.isDone?.(trace)) return true;
    }
    return false;
  }

  const endOf = (k: number) => Math.min(events[k]?.atS ?? options.untilS, options.untilS);
  let isOver = from ? march(endOf(from.eventsDone), from.eventsDone === events.length) : false;
  for (let k = from?.eventsDone ?? 0; k < events.length && !isOver; k++) {
    const event = events[k] as StackEvent;
    const isLast = k === events.length - 1;
    now = Math.max(now, event.atS);
    if (k > 0 && k >= events.length - 2) marks.push(mark(k));
    apply(event, isLast || options.accuracy ? undefined : COVERED_TOLERANCE);
    isOver = march(endOf(k + 1), isLast) || endOf(k + 1) === options.untilS;
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
    heldThen,
    steps,
    marks,
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
