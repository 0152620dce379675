import type { MobilityLaw } from '../laws/law';
import type { Work } from './work';

/** Ratio of mobilities beyond which the way between two nodes is looked at in parts. */
const ALIKE = 4;
const PER_PART = 0.7;
const MOST_PARTS = 12;

/** Fills what every element passes per difference in wetness, m/s, at the predicted wetness. */
export function fillFaces(work: Work, law: MobilityLaw, temperatureK: number, solvent: number): void {
  const { predicted, mobility, faces } = work;
  const { nodes, dz, passage } = predicted;
  if (law.fill) law.fill(predicted, temperatureK, mobility);
  else for (let n = 0; n < nodes; n++) mobility[n] = law.at(predicted, n, temperatureK, solvent);
  for (let e = 0; e < nodes - 1; e++) {
    const a = mobility[e] as number;
    const b = mobility[e + 1] as number;
    const isAlike = a < ALIKE * b && b < ALIKE * a;
    // Simpson's rule in the logarithm: the logarithmic mean within 0.1 %.
    const mean = isAlike
      ? (a + b + 4 * Math.sqrt(a * b)) / 6
      : meanAcrossSkin(work, law, temperatureK, solvent, e);
    faces[e] = ((passage[e] as number) * mean) / (dz[e] as number);
  }
}

/**
 * Mean mobility over an element on the way from its lower to its upper wetness: the Kirchhoff integral.
 * Across a skin mobility falls by decades and is no exponential of wetness: a single mean would let a wetter surface pass
 * more, and the surface would swing.
 */
function meanAcrossSkin(
  work: Work,
  law: MobilityLaw,
  temperatureK: number,
  solvent: number,
  e: number,
): number {
  const { predicted, mobility } = work;
  const to = mobility[e + 1] as number;
  let from = mobility[e] as number;
  const parts = Math.min(MOST_PARTS, Math.ceil(Math.abs(Math.log(to / from)) / PER_PART));
  const scratch = predicted.dz.length - 1;
  let sum = 0;
  for (let part = 1; part <= parts; part++) {
    let next = to;
    if (part < parts) {
      for (const u of predicted.u) {
        u[scratch] = (u[e] as number) + (part / parts) * ((u[e + 1] as number) - (u[e] as number));
      }
      next = law.at(predicted, scratch, temperatureK, solvent);
    }
    sum += logarithmicMean(from, next);
    from = next;
  }
  return sum / parts;
}

/** (b - a)/ln(b/a): the Kirchhoff mean of a mobility that is exponential in wetness. */
function logarithmicMean(a: number, b: number): number {
  if (Math.abs(a - b) < 1e-6 * (a + b)) return 0.5 * (a + b);
  return a > 0 && b > 0 ? (b - a) / Math.log(b / a) : 0;
}
