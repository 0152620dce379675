import { dryThickness, type Film, heldSolvent, shareBinder } from '../film';

/** A layer to be laid on top of a film. */
export interface Layer {
  /** Dry thickness, pigment included, m. */
  readonly dryM: number;
  /** Volume of each solvent per volume of binder. */
  readonly wetness: readonly number[];
  /** Volume fraction of pigment in the dry film. */
  readonly pigment: number;
  /** Flux factor of that pigment. */
  readonly passage: number;
}

/** The mesh was tried: halving it everywhere moves no moment by 1 %. */
const FINEST_M = 0.08e-6;
/** What was the skin of a coat is of no interest once the next coat has wetted it. */
const JOINT_M = 0.8e-6;
const GROWTH = 1.4;
/** A coat's elements grow from the air downwards, and are never thicker than this share of it. */
const COARSEST_SHARE = 1 / 9;
/** An element may grow to this share of its depth below the air, once a later coat has covered it. */
const DEPTH_SHARE = 0.22;

/** Element sizes of a fresh layer from its base to the air, m: finest at the air. */
function gradedSizes(dryM: number): number[] {
  const coarsest = dryM * COARSEST_SHARE;
  const sizes: number[] = [];
  let left = dryM;
  let size = Math.min(FINEST_M, coarsest);
  while (left > 0) {
    const next = left < 1.5 * size ? left : size;
    sizes.push(next);
    left -= next;
    size = Math.min(size * GROWTH, coarsest);
  }
  return sizes.reverse();
}

/** Lays a layer on the film. The node at the joint takes a mean of both sides, weighed by binder, so nothing is lost. */
export function layOn(film: Film, layer: Layer): void {
  const joint = film.nodes - 1;
  const binderBelow = film.binder[joint] as number;
  const sizes = gradedSizes(layer.dryM);
  for (const [k, size] of sizes.entries()) {
    film.dz[joint + k] = size;
    film.pigment[joint + k] = layer.pigment;
    film.passage[joint + k] = layer.passage;
    for (let i = 0; i < film.solvents; i++) {
      (film.u[i] as Float64Array)[joint + k + 1] = layer.wetness[i] ?? 0;
    }
  }
  film.nodes += sizes.length;
  shareBinder(film);
  const binderBoth = film.binder[joint] as number;
  const newShare = (binderBoth - binderBelow) / binderBoth;
  for (let i = 0; i < film.solvents; i++) {
    const u = film.u[i] as Float64Array;
    u[joint] = (u[joint] as number) * (1 - newShare) + (layer.wetness[i] ?? 0) * newShare;
  }
}

/** Mixes pure solvent into the top of the film, to the depth that `dilution` (solvent per binder) asks for. */
export function soakIn(film: Film, solventM: readonly number[], dilution: number): void {
  const total = solventM.reduce((sum, v) => sum + v, 0);
  const top = film.nodes - 1;
  let first = top;
  let binder = film.binder[top] as number;
  while (first > 0 && binder * dilution < total) binder += film.binder[--first] as number;
  for (let i = 0; i < film.solvents; i++) {
    const u = film.u[i] as Float64Array;
    for (let n = first; n <= top; n++) u[n] = (u[n] as number) + (solventM[i] ?? 0) / binder;
  }
}

/** Less than this of an element is what rounding left of it, m: it is gone, for steps across it would take for ever. */
const SLIVER_M = 1e-13;

/** Takes dry thickness off the top. Gives the volume of each solvent that went with it, m3 per m2. */
export function sandOff(film: Film, removedM: number): number[] {
  const before = film.u.map((_, i) => heldSolvent(film, i));
  let left = Math.min(removedM, dryThickness(film));
  while (left > 0 && film.nodes > 1) {
    const e = film.nodes - 2;
    const size = film.dz[e] as number;
    if (size - left < SLIVER_M) {
      film.nodes--;
      left -= size;
    } else {
      for (const u of film.u) {
        u[e + 1] = (u[e + 1] as number) + (((u[e] as number) - (u[e + 1] as number)) * left) / size;
      }
      film.dz[e] = size - left;
      left = 0;
    }
  }
  shareBinder(film);
  return film.u.map((_, i) => (before[i] as number) - heldSolvent(film, i));
}

/**
 * Merges elements that have become needlessly fine for their depth, so that the cost of a coat stays bounded.
 * The solvent of a node that goes is shared by its neighbours: nothing is lost. Joints between unlike pigments stay.
 */
export function coarsen(film: Film): void {
  const { dz, pigment, binder } = film;
  let depth = 0;
  for (let n = film.nodes - 2; n > 0; n--) {
    const above = dz[n] as number;
    const below = dz[n - 1] as number;
    depth += above;
    const allowed = Math.max(JOINT_M, DEPTH_SHARE * depth);
    if (above + below > allowed || pigment[n] !== pigment[n - 1]) continue;
    const clear = 1 - (pigment[n] as number);
    for (const u of film.u) {
      const toUpper = 0.5 * below * clear;
      const toLower = 0.5 * above * clear;
      u[n + 1] = mixed(u[n + 1] as number, binder[n + 1] as number, u[n] as number, toUpper);
      u[n - 1] = mixed(u[n - 1] as number, binder[n - 1] as number, u[n] as number, toLower);
    }
    dropNode(film, n);
    depth -= above;
    shareBinder(film);
  }
}

const mixed = (a: number, weightA: number, b: number, weightB: number): number =>
  (a * weightA + b * weightB) / (weightA + weightB);

function dropNode(film: Film, n: number): void {
  film.dz[n - 1] = (film.dz[n - 1] as number) + (film.dz[n] as number);
  film.dz.copyWithin(n, n + 1, film.nodes - 1);
  film.pigment.copyWithin(n, n + 1, film.nodes - 1);
  film.passage.copyWithin(n, n + 1, film.nodes - 1);
  for (const u of film.u) u.copyWithin(n, n + 1, film.nodes);
  film.nodes--;
}
