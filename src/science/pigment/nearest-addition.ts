import { colourDifference } from '../colour/delta-e-00';
import type { Lab } from '../colour/lab';
import { solve } from '../colour/linear';
import { type ColourModel, type JarContent, mixColour } from './colour-model';

/** Grams of each neat tinter (in the model's order) and of white base to add. */
export interface Addition {
  readonly tinterGrams: readonly number[];
  readonly whiteGrams: number;
}

/** The jar once an addition is stirred in. */
export function added(jar: JarContent, { tinterGrams, whiteGrams }: Addition): JarContent {
  return {
    whiteGrams: jar.whiteGrams + whiteGrams,
    tinterGrams: jar.tinterGrams.map((grams, t) => grams + (tinterGrams[t] ?? 0)),
  };
}

const ROUNDS = 12;
// Tried on the simulated finisher: kept small against the tinters' own effect: it only decides between additions that come equally near.
const RIDGE = 1e-5;

/**
 * The addition of these tinters (and white, when allowed) that comes nearest to a target: never less than nothing of any.
 *
 * Source: Gauss-Newton on the three parts of deltaE00, held at zero by an active set. Valid: up to three tinters at once.
 * Accuracy: 0.01 deltaE00 of the nearest.
 */
export function nearestAddition(
  model: ColourModel,
  jar: JarContent,
  target: Lab,
  tinters: readonly number[],
  withWhite: boolean,
): Addition {
  const count = tinters.length + (withWhite ? 1 : 0);
  const toAddition = (x: readonly number[]): Addition => {
    const tinterGrams = jar.tinterGrams.map(() => 0);
    tinters.forEach((tinter, i) => {
      tinterGrams[tinter] = x[i] ?? 0;
    });
    return { tinterGrams, whiteGrams: withWhite ? (x[count - 1] ?? 0) : 0 };
  };
  const off = (x: readonly number[]): number[] => {
    const { dL, redward, yellowward } = colourDifference(mixColour(model, added(jar, toAddition(x))), target);
    return [dL, redward, yellowward];
  };
  let x = new Array<number>(count).fill(0);
  let now = off(x);
  const step = 1e-5 * jar.whiteGrams;
  for (let round = 0; round < ROUNDS; round++) {
    const next = newtonStep(x, now, step, off, jar.whiteGrams);
    const moved = Math.max(...next.map((value, i) => Math.abs(value - (x[i] ?? 0))));
    x = next;
    now = off(x);
    if (moved < step) break;
  }
  return toAddition(x);
}

function newtonStep(
  x: readonly number[],
  now: readonly number[],
  step: number,
  off: (x: readonly number[]) => number[],
  most: number,
): number[] {
  const columns = x.map((_, i) =>
    off(x.map((value, k) => (i === k ? value + step : value))).map(
      (value, p) => (value - (now[p] ?? 0)) / step,
    ),
  );
  const slope = columns.map((column) => dot(column, now));
  // What is at nothing and would go below it stays there.
  const free = x.flatMap((value, i) => (value > 0 || (slope[i] ?? 0) < 0 ? [i] : []));
  const normal = free.map((i) =>
    free.map((k) => dot(columns[i] ?? [], columns[k] ?? []) * (i === k ? 1 + RIDGE : 1)),
  );
  const move =
    solve(
      normal,
      free.map((i) => -(slope[i] ?? 0)),
    ) ?? free.map(() => 0);
  const next = [...x];
  free.forEach((i, f) => {
    next[i] = Math.min(Math.max((x[i] ?? 0) + (move[f] ?? 0), 0), most);
  });
  return next;
}

const dot = (one: readonly number[], other: readonly number[]): number =>
  one.reduce((sum, value, i) => sum + value * (other[i] ?? 0), 0);
