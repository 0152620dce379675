import { type Film, heldSolvent } from './film';
import type { AirState, MobilityLaw, SurfaceLaw } from './laws/law';

/** Tuning of the time steps. */
export interface Accuracy {
  /** Aimed-at difference between the predicted and the solved wetness, relative to 1 + wetness scale. */
  readonly tolerance: number;
}

export const DEFAULT_ACCURACY: Accuracy = { tolerance: 0.02 };

export const PASSES = { n: 0 };
const MOST_PASSES = Number(process.env.PASS ?? 3);
const AGREED = Number(process.env.AGREED ?? 0.25);
const FIRST_STEP_S = 0.1;
const MOST_GROWTH = 1.9;
/** Wetness below which an error does not matter to Tg: 0.002 moves it by about a kelvin. */
const FLOOR = 0.01;
/** A solvent that holds less than this share of the binder volume is left as it is until more of it comes. */
const NEGLIGIBLE = 1e-7;

/** Marches a film through time. Holds the work space: one for each film, made once. */
export interface Solver {
  readonly film: Film;
  /** Solvent that left through the top so far, m3 per m2, by solvent. */
  readonly evaporated: Float64Array;
  /** Temperature of the film at the last step, K. */
  temperatureK: number;
  /** Seconds that the next step would like to take. */
  stepS: number;
  /** Forgets the past steps after the film or its mesh was changed from outside. */
  restart(): void;
  /** One step, of at most `mostS`; gives the seconds it took. */
  step(air: AirState, sinceWetS: number, mostS: number): number;
}

/**
 * Implicit finite volumes for du_i/dt = d/dz(phi_p^2 D_i du_i/dz): sealed base, evaporation at the top.
 *
 * Time: second-order backward differences on changing steps; mobility and evaporation are taken at the wetness that the
 * last two steps predict, so that a step costs one tridiagonal solution for each solvent. The difference between prediction
 * and solution is the error that steers the step. What leaves is integrated by the same formula: solvent is conserved to rounding.
 * Space: face conductance is the logarithmic mean of its nodes, which is the Kirchhoff mean for an exponential mobility.
 */
export function createSolver(
  film: Film,
  mobilityLaw: MobilityLaw,
  surfaceLaw: SurfaceLaw,
  accuracy: Accuracy = DEFAULT_ACCURACY,
): Solver {
  const length = film.dz.length;
  const scratch = length - 1;
  const columns = () => Array.from({ length: film.solvents }, () => new Float64Array(length));
  const before = columns();
  const solved = columns();
  const mobility = new Float64Array(length);
  const faces = new Float64Array(length);
  const upper = new Float64Array(length);
  const wet = new Float64Array(length);
  const speeds = new Float64Array(length);
  const change = new Float64Array(length);
  const extrapolated = columns();
  const conductance = new Float64Array(film.solvents);
  const evaporated = new Float64Array(film.solvents);
  const evaporatedBefore = new Float64Array(film.solvents);
  const evaporatedSolved = new Float64Array(film.solvents);
  const isActive = new Uint8Array(film.solvents);
  // The film handed to the laws: the same mesh, the predicted wetness.
  const predictedU = columns();
  const predicted: Film = { ...film, u: predictedU };
  let lastStepS = 0;

  const solver: Solver = {
    film,
    evaporated,
    temperatureK: 0,
    stepS: FIRST_STEP_S,
    restart() {
      lastStepS = 0;
      solver.stepS = FIRST_STEP_S;
      let binder = 0;
      for (let n = 0; n < film.nodes; n++) binder += film.binder[n] as number;
      for (let i = 0; i < film.solvents; i++)
        isActive[i] = heldSolvent(film, i) > NEGLIGIBLE * binder ? 1 : 0;
    },
    step(air, sinceWetS, mostS) {
      let stepS = Math.min(solver.stepS, mostS);
      for (;;) {
        const error = attempt(air, sinceWetS + stepS, stepS);
        if (!(error >= 0)) throw new Error(`nan ${stepS} ${faces.slice(0, film.nodes)} m ${mobility.slice(0, film.nodes)} c ${conductance} T ${solver.temperatureK} u ${predictedU[0]?.slice(0, film.nodes)}`);
        if (error <= 4 || stepS <= FIRST_STEP_S) {
          accept(stepS);
          const growth = Math.min(MOST_GROWTH, 0.9 / Math.sqrt(Math.max(error, 1e-6)));
          // A step cut short to land on an event does not forget how long it wanted to be.
          solver.stepS =
            stepS < solver.stepS && growth >= 1 ? Math.max(solver.stepS, stepS * growth) : stepS * growth;
          return stepS;
        }
        stepS = Math.max(Math.min(FIRST_STEP_S, mostS), stepS * Math.max(0.2, 0.9 / Math.sqrt(error)));
        solver.stepS = stepS;
      }
    },
  };

  /** Solves one step into `solved`; gives the largest error, 1 being what was aimed at. */
  function attempt(air: AirState, sinceWetS: number, stepS: number): number {
    const ratio = lastStepS > 0 ? stepS / lastStepS : 0;
    predict(ratio);
    const shared = mobilityLaw.ratio;
    for (let pass = 1; ; pass++) {
      PASSES.n++;
      solver.temperatureK = surfaceLaw.fill(predicted, air, sinceWetS, conductance);
      if (shared) {
        fillFaces(0);
        settleWetness(ratio, stepS, shared);
        settleSurfaceMixture(shared);
        solver.temperatureK = surfaceLaw.fill(predicted, air, sinceWetS, conductance);
        fillFaces(0);
      }
      for (let i = 0; i < film.solvents; i++) {
        if (!isActive[i]) continue;
        if (!shared) fillFaces(i);
        solveSolvent(i, ratio, stepS, shared ? (shared[i] as number) : 1);
      }
      if (!shared || pass === MOST_PASSES || mismatch() < AGREED * accuracy.tolerance) break;
      for (let i = 0; i < film.solvents; i++) {
        if (!isActive[i]) continue;
        for (let n = 0; n < film.nodes; n++) (predictedU[i] as Float64Array)[n] = Math.max(0, (solved[i] as Float64Array)[n] as number);
      }
    }
    return largestError();
  }

  /** Largest difference between the wetness that the coefficients were taken at and the solved one. */
  function mismatch(): number {
    let largest = 0;
    for (let n = 0; n < film.nodes; n++) {
      let difference = 0;
      let wetness = 0;
      for (let i = 0; i < film.solvents; i++) {
        if (!isActive[i]) continue;
        const value = (solved[i] as Float64Array)[n] as number;
        difference += Math.abs(value - ((predictedU[i] as Float64Array)[n] as number));
        wetness += value;
      }
      largest = Math.max(largest, difference / (FLOOR + wetness));
    }
    return largest;
  }

  function predict(ratio: number): void {
    const { nodes, solvents, u } = film;
    predicted.nodes = nodes;
    for (let i = 0; i < solvents; i++) {
      const now = u[i] as Float64Array;
      const past = before[i] as Float64Array;
      const next = predictedU[i] as Float64Array;
      if (ratio === 0 || !isActive[i]) for (let n = 0; n < nodes; n++) next[n] = now[n] as number;
      else {
        for (let n = 0; n < nodes; n++) {
          const value = (now[n] as number) + ratio * ((now[n] as number) - (past[n] as number));
          next[n] = value > 0 ? value : 0;
        }
      }
      const kept = extrapolated[i] as Float64Array;
      for (let n = 0; n < nodes; n++) kept[n] = next[n] as number;
    }
  }

  function fillFaces(solvent: number): void {
    const { nodes, dz, passage } = film;
    const temperatureK = solver.temperatureK;
    for (let n = 0; n < nodes; n++) mobility[n] = mobilityLaw.at(predicted, n, temperatureK, solvent);
    for (let e = 0; e < nodes - 1; e++) {
      faces[e] = ((passage[e] as number) * kirchhoffMean(e, solvent)) / (dz[e] as number);
    }
  }

  /** Mean mobility over an element along the way from its lower to its upper wetness: the Kirchhoff integral. */
  function kirchhoffMean(e: number, solvent: number): number {
    let from = mobility[e] as number;
    const to = mobility[e + 1] as number;
    const ratio = from > to ? from / to : to / from;
    if (ratio < 4) return logarithmicMean(from, to);
    // Across a skin mobility is no exponential of wetness: one mean would let a wetter surface pass more, and swing.
    const parts = Math.min(12, Math.ceil(Math.log(ratio) / 0.7));
    let sum = 0;
    for (let part = 1; part <= parts; part++) {
      const next = part === parts ? to : mobilityBetween(e, part / parts, solvent);
      sum += logarithmicMean(from, next);
      from = next;
    }
    return sum / parts;
  }

  function mobilityBetween(e: number, share: number, solvent: number): number {
    for (let i = 0; i < film.solvents; i++) {
      const u = predictedU[i] as Float64Array;
      u[scratch] = (u[e] as number) + share * ((u[e + 1] as number) - (u[e] as number));
    }
    return mobilityLaw.at(predicted, scratch, solver.temperatureK, solvent);
  }

  /**
   * Moves the predicted wetness to where the whole of the solvent will be at the end of the step: one Newton step on the
   * sum of the equations, from the prediction. Mobility changes by decades across a skin thinner than an element, and taken
   * from the past steps alone it would swing; the derivative of a Kirchhoff flux is the mobility of its node.
   */
  function settleWetness(ratio: number, stepS: number, ratios: readonly number[]): void {
    const { nodes, solvents, binder, dz, passage, u } = film;
    const lead = ratio > 0 ? (1 + 2 * ratio) / (1 + ratio) : 1;
    const fromNow = ratio > 0 ? 1 + ratio : 1;
    const fromPast = ratio > 0 ? (ratio * ratio) / (1 + ratio) : 0;
    let fluxBelow = 0;
    let below = 0; // mobility of this node into the element below
    let belowFromLower = 0; // mobility of the lower node into the same element
    let carry = 0;
    let carryRight = 0;
    for (let n = 0; n < nodes; n++) {
      let wetness = 0;
      let weighted = 0;
      let history = 0;
      let leaving = 0;
      let fluxAbove = 0;
      const isTop = n === nodes - 1;
      for (let i = 0; i < solvents; i++) {
        if (!isActive[i]) continue;
        const here = (predictedU[i] as Float64Array)[n] as number;
        const speed = ratios[i] as number;
        wetness += here;
        weighted += speed * here;
        history += fromNow * ((u[i] as Float64Array)[n] as number) - fromPast * ((before[i] as Float64Array)[n] as number);
        if (isTop) leaving += (conductance[i] as number) * here;
        else fluxAbove += speed * (((predictedU[i] as Float64Array)[n + 1] as number) - here);
      }
      const speed = wetness > 0 ? weighted / wetness : 1;
      wet[n] = wetness;
      speeds[n] = speed;
      const moving = stepS * speed * (mobility[n] as number);
      let above = 0;
      if (isTop) {
        fluxAbove = -leaving;
        above = wetness > 0 ? (stepS * leaving) / wetness : 0;
      } else {
        fluxAbove *= faces[n] as number;
        above = (moving * (passage[n] as number)) / (dz[n] as number);
      }
      below = n > 0 ? (moving * (passage[n - 1] as number)) / (dz[n - 1] as number) : 0;
      const volume = binder[n] as number;
      const residual = volume * (history - lead * wetness) + stepS * (fluxAbove - fluxBelow);
      const right = residual + belowFromLower * carryRight;
      const pivot = 1 / (volume * lead + above + below - belowFromLower * carry);
      // What node n + 1 gives to node n, per change of its wetness; filled in on the next round.
      const aboveFromUpper = isTop ? 0 : (stepS * nextSpeed(n + 1, ratios) * (mobility[n + 1] as number) * (passage[n] as number)) / (dz[n] as number);
      carry = aboveFromUpper * pivot;
      carryRight = right * pivot;
      upper[n] = carry;
      change[n] = carryRight;
      belowFromLower = above;
      fluxBelow = fluxAbove;
    }
    for (let n = nodes - 2; n >= 0; n--) change[n] = (change[n] as number) + (upper[n] as number) * (change[n + 1] as number);
    for (let n = 0; n < nodes; n++) {
      const wetness = wet[n] as number;
      if (wetness <= 0) continue;
      const factor = Math.min(4, Math.max(0.05, 1 + (change[n] as number) / wetness));
      for (let i = 0; i < solvents; i++) {
        if (isActive[i]) (predictedU[i] as Float64Array)[n] = ((predictedU[i] as Float64Array)[n] as number) * factor;
      }
    }
  }

  /** The surface follows the node below it at once: what comes of each solvent is what leaves, in the wetness found. */
  function settleSurfaceMixture(ratios: readonly number[]): void {
    const top = film.nodes - 1;
    if (top < 1) return;
    const through = faces[top - 1] as number;
    let before = 0;
    let after = 0;
    for (let i = 0; i < film.solvents; i++) {
      if (!isActive[i]) continue;
      const u = predictedU[i] as Float64Array;
      before += u[top] as number;
      const arriving = through * (ratios[i] as number);
      u[top] = ((u[top - 1] as number) * arriving) / (arriving + (conductance[i] as number));
      after += u[top] as number;
    }
    if (!(after > 0)) return;
    for (let i = 0; i < film.solvents; i++) {
      if (isActive[i]) (predictedU[i] as Float64Array)[top] = (((predictedU[i] as Float64Array)[top] as number) * before) / after;
    }
  }

  function nextSpeed(n: number, ratios: readonly number[]): number {
    let wetness = 0;
    let weighted = 0;
    for (let i = 0; i < film.solvents; i++) {
      if (!isActive[i]) continue;
      const here = (predictedU[i] as Float64Array)[n] as number;
      wetness += here;
      weighted += (ratios[i] as number) * here;
    }
    return wetness > 0 ? weighted / wetness : 1;
  }

  /** Thomas algorithm from the base upwards, then back down. */
  function solveSolvent(i: number, ratio: number, stepS: number, speed: number): void {
    const { nodes, binder } = film;
    const now = film.u[i] as Float64Array;
    const past = before[i] as Float64Array;
    const next = solved[i] as Float64Array;
    const isSecondOrder = ratio > 0;
    const lead = isSecondOrder ? (1 + 2 * ratio) / (1 + ratio) : 1;
    const fromNow = isSecondOrder ? 1 + ratio : 1;
    const fromPast = isSecondOrder ? (ratio * ratio) / (1 + ratio) : 0;
    const scale = stepS * speed;
    const out = stepS * (conductance[i] as number);
    const top = nodes - 1;
    let below = 0;
    let carry = 0;
    let carryRight = 0;
    for (let n = 0; n < nodes; n++) {
      const volume = binder[n] as number;
      const above = n < top ? scale * (faces[n] as number) : 0;
      const right =
        volume * (fromNow * (now[n] as number) - fromPast * (past[n] as number)) + below * carryRight;
      const pivot = 1 / (volume * lead + above + below * (1 - carry) + (n === top ? out : 0));
      carry = above * pivot;
      carryRight = right * pivot;
      upper[n] = carry;
      next[n] = carryRight;
      below = above;
    }
    for (let n = top - 1; n >= 0; n--)
      next[n] = (next[n] as number) + (upper[n] as number) * (next[n + 1] as number);
    evaporatedSolved[i] =
      (fromNow * (evaporated[i] as number) -
        fromPast * (evaporatedBefore[i] as number) +
        out * (next[top] as number)) /
      lead;
  }

  function largestError(): number {
    const { nodes, solvents } = film;
    let largest = 0;
    for (let n = 0; n < nodes; n++) {
      let difference = 0;
      let wetness = 0;
      for (let i = 0; i < solvents; i++) {
        if (!isActive[i]) continue;
        const value = (solved[i] as Float64Array)[n] as number;
        difference += Math.abs(value - ((extrapolated[i] as Float64Array)[n] as number));
        wetness += value;
      }
      const error = difference / (FLOOR + wetness);
      if (error > largest) largest = error;
    }
    return largest / accuracy.tolerance;
  }

  function accept(stepS: number): void {
    const { nodes, solvents } = film;
    for (let i = 0; i < solvents; i++) {
      if (!isActive[i]) continue;
      const u = film.u[i] as Float64Array;
      const past = before[i] as Float64Array;
      const next = solved[i] as Float64Array;
      for (let n = 0; n < nodes; n++) {
        past[n] = u[n] as number;
        u[n] = next[n] as number;
      }
      evaporatedBefore[i] = evaporated[i] as number;
      evaporated[i] = evaporatedSolved[i] as number;
    }
    lastStepS = stepS;
  }

  solver.restart();
  return solver;
}

/** (b - a)/ln(b/a); by Simpson's rule in ln where the two are near each other (within 0.5 % to a ratio of 8). */
function logarithmicMean(a: number, b: number): number {
  const low = a < b ? a : b;
  const high = a < b ? b : a;
  if (high < 8 * low) return (a + b + 4 * Math.sqrt(a * b)) / 6;
  return low > 0 ? (high - low) / Math.log(high / low) : 0;
}
