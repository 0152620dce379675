import type { Film } from '../film';
import type { Weights } from './backward-differences';
import type { Work } from './work';

/**
 * Moves the predicted wetness to where the whole of the solvent will be at the end of the step: one Newton step on the sum
 * of the equations. Mobility changes by decades across a skin thinner than an element; taken from the past steps alone it
 * would swing. The derivative of a Kirchhoff flux is the mobility of its node, so the system stays tridiagonal.
 * @param ratios mobility of each solvent relative to the filled one
 */
export function settleWetness(film: Film, work: Work, stepS: number, ratios: readonly number[]): void {
  sumUp(film, work, ratios);
  solveChange(film, work, stepS);
  const { wet, change, predicted, isActive } = work;
  for (let n = 0; n < film.nodes; n++) {
    const here = wet[n] as number;
    const factor = here > 0 ? 1 + (change[n] as number) / here : 1;
    change[n] = Math.min(4, Math.max(0.05, factor));
  }
  for (let i = 0; i < film.solvents; i++) {
    if (!isActive[i]) continue;
    const u = predicted.u[i] as Float64Array;
    for (let n = 0; n < film.nodes; n++) u[n] = (u[n] as number) * (change[n] as number);
  }
  settleSurface(film, work, ratios);
}

function sumUp(film: Film, work: Work, ratios: readonly number[]): void {
  const { wet, moving, leading, history } = work;
  leading.fill(0, 0, film.nodes);
  wet.fill(0, 0, film.nodes);
  moving.fill(0, 0, film.nodes);
  history.fill(0, 0, film.nodes);
  for (let i = 0; i < film.solvents; i++) {
    if (!work.isActive[i]) continue;
    const u = work.predicted.u[i] as Float64Array;
    const now = film.u[i] as Float64Array;
    const past = work.past[i] as Float64Array;
    const ratio = ratios[i] as number;
    const { lead, fromNow, fromPast } = work.weights[i] as Weights;
    for (let n = 0; n < film.nodes; n++) {
      const value = u[n] as number;
      leading[n] = (leading[n] as number) + lead * value;
      wet[n] = (wet[n] as number) + value;
      moving[n] = (moving[n] as number) + ratio * value;
      history[n] = (history[n] as number) + fromNow * (now[n] as number) - fromPast * (past[n] as number);
    }
  }
}

/** Thomas algorithm for the change of wetness at every node. */
function solveChange(film: Film, work: Work, stepS: number): void {
  const { nodes, binder, dz, passage } = film;
  const { wet, moving, leading, history, mobility, faces, upper, change, speed } = work;
  const top = nodes - 1;
  // How much a change of wetness at a node moves what flows through a metre of film beside it.
  for (let n = 0; n < nodes; n++) {
    const here = wet[n] as number;
    speed[n] = here > 0 ? (stepS * (mobility[n] as number) * (moving[n] as number)) / here : 0;
  }
  const leaving = leavingTop(film, work);
  const out = (wet[top] as number) > 0 ? (stepS * leaving) / (wet[top] as number) : 0;
  let fluxBelow = 0;
  let perBelow = 0;
  let fromLower = 0;
  let carry = 0;
  let right = 0;
  for (let n = 0; n < nodes; n++) {
    const isTop = n === top;
    const perAbove = isTop ? 0 : (passage[n] as number) / (dz[n] as number);
    const fluxAbove = isTop
      ? -leaving
      : (faces[n] as number) * ((moving[n + 1] as number) - (moving[n] as number));
    const volume = binder[n] as number;
    const residual =
      volume * ((history[n] as number) - (leading[n] as number)) + stepS * (fluxAbove - fluxBelow);
    const lead = (wet[n] as number) > 0 ? (leading[n] as number) / (wet[n] as number) : 1;
    const diagonal = volume * lead + (speed[n] as number) * (perAbove + perBelow) + (isTop ? out : 0);
    const pivot = 1 / (diagonal - fromLower * carry);
    right = (residual + fromLower * right) * pivot;
    carry = isTop ? 0 : (speed[n + 1] as number) * perAbove * pivot;
    upper[n] = carry;
    change[n] = right;
    fromLower = (speed[n] as number) * perAbove;
    perBelow = perAbove;
    fluxBelow = fluxAbove;
  }
  for (let n = top - 1; n >= 0; n--)
    change[n] = (change[n] as number) + (upper[n] as number) * (change[n + 1] as number);
}

function leavingTop(film: Film, { predicted, conductance, isActive }: Work): number {
  let leaving = 0;
  for (let i = 0; i < film.solvents; i++) {
    if (isActive[i])
      leaving += (conductance[i] as number) * ((predicted.u[i] as Float64Array)[film.nodes - 1] as number);
  }
  return leaving;
}

/** Mixes the surface anew in the wetness found: of each solvent what comes from below is what leaves, at once. */
function settleSurface(
  film: Film,
  { predicted, conductance, faces, isActive }: Work,
  ratios: readonly number[],
): void {
  const top = film.nodes - 1;
  if (top < 1) return;
  let found = 0;
  let mixed = 0;
  for (let i = 0; i < film.solvents; i++) {
    if (!isActive[i]) continue;
    const u = predicted.u[i] as Float64Array;
    const arriving = (faces[top - 1] as number) * (ratios[i] as number);
    found += u[top] as number;
    u[top] = ((u[top - 1] as number) * arriving) / (arriving + (conductance[i] as number));
    mixed += u[top] as number;
  }
  if (!(mixed > 0)) return;
  for (let i = 0; i < film.solvents; i++) {
    if (!isActive[i]) continue;
    const u = predicted.u[i] as Float64Array;
    u[top] = ((u[top] as number) * found) / mixed;
  }
}
