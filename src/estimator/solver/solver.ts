import { type Film, heldSolvent } from '../film';
import type { AirState, MobilityLaw, SurfaceLaw } from '../laws/law';
import { FIRST_ORDER, type Weights, weightsFor } from './backward-differences';
import { fillFaces } from './conductances';
import { settleWetness } from './settle';
import { createWork, type Work } from './work';

/** Tuning of the time steps. */
export interface Accuracy {
  /** Aimed-at difference between the predicted and the solved wetness of a step, relative to wetness. */
  readonly tolerance: number;
  /**
   * A solvent of which less than this is left, by volume of binder, stays as it is until more of it comes. It is not lost:
   * a hundred-thousandth moves Tg by less than a hundredth of a kelvin.
   */
  readonly negligible: number;
  /** First step after a change from outside, and the shortest one, s. */
  readonly firstStepS: number;
}

export const DEFAULT_ACCURACY: Accuracy = { tolerance: 0.1, negligible: 1e-5, firstStepS: 1 };

const MOST_GROWTH = 1.9;
/** A step is taken again where its error is so many times what was aimed at. */
const TOO_MUCH = 4;
/** Wetness below which an error matters no more: 0.01 moves Tg by about 5 K. */
const FLOOR = 0.01;
const MOST_PASSES = 4;
/** Coefficients agree with the solution when they are nearer to it than this share of the tolerance. */
const AGREED = 0.6;
const MOST_CARE = 4;
const CAREFUL_FROM_S = 600;
/** Steps between looks at which solvents still matter. */
const LOOK_EVERY = 8;

/** Where a solver stands between two steps. */
export interface SolverState {
  readonly past: readonly Float64Array[];
  readonly evaporated: Float64Array;
  readonly evaporatedBefore: Float64Array;
  readonly isActive: Uint8Array;
  readonly temperatureK: number;
  readonly wishS: number;
  readonly lastStepS: number;
  readonly tolerance: number;
}

/** Marches a film through time. */
export interface Solver {
  readonly film: Film;
  /** Solvent that left through the top so far, m3 per m2, by solvent. */
  readonly evaporated: Float64Array;
  /** Temperature of the film at the last step, K. */
  readonly temperatureK: number;
  /** Seconds that the next step would like to take. */
  readonly stepS: number;
  /** Node by node, how much was solved so far: what the work of a march is counted in. */
  readonly nodesSolved: number;
  /** What a march needs to go on from here, but for the film; given to `resume`. */
  state(): SolverState;
  resume(state: SolverState): void;
  /** Forgets the past steps after the film or its mesh was changed from outside; the steps to come are steered by `tolerance`. */
  restart(tolerance?: number): void;
  /** One step, of at most `mostS`; gives the seconds it took. */
  step(air: AirState, sinceWetS: number, mostS: number): number;
}

/**
 * Implicit finite volumes for du_i/dt = d/dz(phi_p^2 D_i du_i/dz): sealed base, evaporation at the top.
 *
 * Time: second-order backward differences on changing steps. The wetness that the past steps predict is settled by a Newton
 * step on the sum of all solvents; mobility and evaporation are taken there, and each solvent costs one tridiagonal solution.
 * The difference between prediction and solution steers the step. What leaves is integrated by the same formula, so that
 * solvent is conserved to rounding. Space: the conductance of an element is the Kirchhoff mean of its mobility.
 */
export function createSolver(
  film: Film,
  mobilityLaw: MobilityLaw,
  surfaceLaw: SurfaceLaw,
  accuracy: Accuracy = DEFAULT_ACCURACY,
): Solver {
  const work = createWork(film);
  const evaporated = new Float64Array(film.solvents);
  const evaporatedBefore = new Float64Array(film.solvents);
  const { negligible, firstStepS } = accuracy;
  let { tolerance } = accuracy;
  const ratios = mobilityLaw.ratio;
  let temperatureK = 0;
  let wishS = firstStepS;
  let lastStepS = 0;
  let sinceLook = 0;
  let nodesSolved = 0;

  /** Solves one step into `work.solved`; gives the largest error, 1 being what was aimed at. */
  function attempt(air: AirState, sinceWetS: number, stepS: number): number {
    const ratio = lastStepS > 0 ? stepS / lastStepS : 0;
    nodesSolved += film.nodes;
    extrapolate(film, work, ratio);
    chooseWeights(film, work, ratio);
    const evaporate = () => surfaceLaw.fill(work.predicted, air, sinceWetS, work.conductance);
    for (let pass = 1; ; pass++) {
      temperatureK = evaporate();
      if (ratios) {
        fillFaces(work, mobilityLaw, temperatureK, 0);
        settleWetness(film, work, stepS, ratios);
        temperatureK = evaporate();
        fillFaces(work, mobilityLaw, temperatureK, 0);
      }
      work.wet.fill(FLOOR, 0, film.nodes);
      work.change.fill(0, 0, film.nodes);
      work.speed.fill(0, 0, film.nodes);
      for (let i = 0; i < film.solvents; i++) {
        if (!work.isActive[i]) continue;
        if (!ratios) fillFaces(work, mobilityLaw, temperatureK, i);
        solveSolvent(film, work, i, stepS, ratios ? (ratios[i] as number) : 1);
      }
      if (pass === MOST_PASSES || largest(film, work.change, work.wet) < AGREED * tolerance)
        return largest(film, work.speed, work.wet) / toleranceFor(stepS);
      adopt(film, work);
    }
  }

  /** Steps of hours are few and decide the dates: there accuracy costs nothing. */
  function toleranceFor(stepS: number): number {
    return tolerance / (1 + Math.min(MOST_CARE, stepS / CAREFUL_FROM_S));
  }

  function accept(stepS: number): void {
    const top = film.nodes - 1;
    for (let i = 0; i < film.solvents; i++) {
      if (!work.isActive[i]) continue;
      const { lead, fromNow, fromPast } = work.weights[i] as Weights;
      const next = work.solved[i] as Float64Array;
      const left = stepS * (work.conductance[i] as number) * (next[top] as number);
      const gone = evaporated[i] as number;
      evaporated[i] = (fromNow * gone - fromPast * (evaporatedBefore[i] as number) + left) / lead;
      evaporatedBefore[i] = gone;
      const past = work.past[i] as Float64Array;
      const now = film.u[i] as Float64Array;
      for (let n = 0; n <= top; n++) {
        past[n] = now[n] as number;
        now[n] = next[n] as number;
      }
    }
    lastStepS = stepS;
    sinceLook++;
    if (sinceLook === LOOK_EVERY) leaveNegligible();
  }

  function leaveNegligible(): void {
    sinceLook = 0;
    let binder = 0;
    for (let n = 0; n < film.nodes; n++) binder += film.binder[n] as number;
    for (let i = 0; i < film.solvents; i++) {
      if (work.isActive[i] && heldSolvent(film, i) <= negligible * binder) work.isActive[i] = 0;
    }
  }

  const solver = {
    film,
    evaporated,
    get temperatureK() {
      return temperatureK;
    },
    get stepS() {
      return wishS;
    },
    get nodesSolved() {
      return nodesSolved;
    },
    state: () => ({
      past: work.past.map((column) => column.slice(0, film.nodes)),
      evaporated: evaporated.slice(),
      evaporatedBefore: evaporatedBefore.slice(),
      isActive: work.isActive.slice(),
      temperatureK,
      wishS,
      lastStepS,
      tolerance,
    }),
    resume(state: SolverState) {
      for (const [i, column] of state.past.entries()) work.past[i]?.set(column);
      evaporated.set(state.evaporated);
      evaporatedBefore.set(state.evaporatedBefore);
      work.isActive.set(state.isActive);
      ({ temperatureK, wishS, lastStepS, tolerance } = state);
      sinceLook = 0;
    },
    restart(toleranceFromNow = accuracy.tolerance) {
      tolerance = toleranceFromNow;
      lastStepS = 0;
      wishS = firstStepS;
      work.isActive.fill(1);
      surfaceLaw.forget?.();
      leaveNegligible();
    },
    step(air: AirState, sinceWetS: number, mostS: number) {
      for (let stepS = Math.min(wishS, mostS); ; ) {
        const error = attempt(air, sinceWetS + stepS, stepS);
        if (Number.isNaN(error))
          throw new RangeError('The film cannot be solved: a quantity of its history is not a number.');
        const growth = Math.min(MOST_GROWTH, 0.9 / Math.sqrt(Math.max(error, 1e-6)));
        if (error <= TOO_MUCH || stepS <= firstStepS) {
          accept(stepS);
          // A step cut short to land on an event does not forget how long it wanted to be.
          wishS = Math.max(
            firstStepS,
            stepS < wishS && growth >= 1 ? Math.max(wishS, stepS * growth) : stepS * growth,
          );
          return stepS;
        }
        stepS = Math.max(firstStepS, stepS * Math.max(0.2, growth));
        wishS = stepS;
      }
    },
  };
  solver.restart();
  return solver;
}

function extrapolate(film: Film, work: Work, ratio: number): void {
  for (let i = 0; i < film.solvents; i++) {
    const now = film.u[i] as Float64Array;
    const past = work.past[i] as Float64Array;
    const next = work.extrapolated[i] as Float64Array;
    const predicted = work.predicted.u[i] as Float64Array;
    const lean = work.isActive[i] === 1 ? ratio : 0;
    for (let n = 0; n < film.nodes; n++) {
      const here = now[n] as number;
      const value = lean > 0 ? here + lean * (here - (past[n] as number)) : here;
      next[n] = predicted[n] = Math.max(0, value);
    }
  }
  work.predicted.nodes = film.nodes;
}

/**
 * Second order for every solvent but one that falls so fast that it would overshoot below nothing: there first order, which
 * cannot. With no negative past the system is an M-matrix, and wetness stays positive.
 */
function chooseWeights(film: Film, work: Work, ratio: number): void {
  const second = weightsFor(ratio);
  for (let i = 0; i < film.solvents; i++) {
    const now = film.u[i] as Float64Array;
    const past = work.past[i] as Float64Array;
    let isFalling = false;
    for (let n = film.nodes - 1; n >= 0 && !isFalling; n--)
      isFalling = second.fromNow * (now[n] as number) < second.fromPast * (past[n] as number);
    work.weights[i] = isFalling ? FIRST_ORDER : second;
  }
}

/**
 * Thomas algorithm for one solvent, from the base upwards and back down. On the way down it adds to `work.wet` the wetness found,
 * to `work.change` how far it lies from that at which the coefficients were taken, and to `work.speed` how far from the extrapolated one.
 */
function solveSolvent(film: Film, work: Work, i: number, stepS: number, ratio: number): void {
  const { nodes, binder } = film;
  const { lead, fromNow, fromPast } = work.weights[i] as Weights;
  const { faces, upper, wet, change, speed } = work;
  const now = film.u[i] as Float64Array;
  const past = work.past[i] as Float64Array;
  const next = work.solved[i] as Float64Array;
  const predicted = work.predicted.u[i] as Float64Array;
  const extrapolated = work.extrapolated[i] as Float64Array;
  const scale = stepS * ratio;
  const top = nodes - 1;
  let below = 0;
  let carry = 0;
  let right = 0;
  for (let n = 0; n < nodes; n++) {
    const volume = binder[n] as number;
    const above = n < top ? scale * (faces[n] as number) : stepS * (work.conductance[i] as number);
    const pivot = 1 / (volume * lead + above + below * (1 - carry));
    right =
      (volume * (fromNow * (now[n] as number) - fromPast * (past[n] as number)) + below * right) * pivot;
    carry = above * pivot;
    upper[n] = carry;
    next[n] = right;
    below = above;
  }
  let value = 0;
  for (let n = top; n >= 0; n--) {
    value = (next[n] as number) + (n < top ? (upper[n] as number) * value : 0);
    next[n] = value;
    wet[n] = (wet[n] as number) + value;
    change[n] = (change[n] as number) + Math.abs(value - (predicted[n] as number));
    speed[n] = (speed[n] as number) + Math.abs(value - (extrapolated[n] as number));
  }
}

/** The largest of a column's differences, relative to the wetness there. */
function largest({ nodes }: Film, differences: Float64Array, wet: Float64Array): number {
  let most = 0;
  for (let n = 0; n < nodes; n++) most = Math.max(most, (differences[n] as number) / (wet[n] as number));
  return most;
}

/** Takes coefficients at the solution itself, for another pass. */
function adopt(film: Film, work: Work): void {
  for (let i = 0; i < film.solvents; i++) {
    if (!work.isActive[i]) continue;
    const from = work.solved[i] as Float64Array;
    const to = work.predicted.u[i] as Float64Array;
    for (let n = 0; n < film.nodes; n++) to[n] = Math.max(0, from[n] as number);
  }
}
