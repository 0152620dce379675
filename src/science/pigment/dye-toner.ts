import { assertWithin } from '../assert-within';
import { bandsToXyz, xyzToBands } from '../colour/bradford';
import { colourDifference, deltaE00 } from '../colour/delta-e-00';
import { type Lab, labToXyz, xyzToLab } from '../colour/lab';
import type { Triple } from '../colour/linear';
import type { White } from '../colour/white-points';

/** What one full pass of a transparent toner takes from the light in three bands (natural logarithm). */
export type PassDensity = Triple;

export type TonerPlan<W extends White = White> =
  | {
      readonly kind: 'passes';
      readonly fullPasses: number;
      /** A last pass at half strength brings it nearer than a full one or none. */
      readonly endsWithHalfPass: boolean;
      readonly predicted: Lab<W>;
      readonly dE00: number;
    }
  /** Dye only takes light away. */
  | { readonly kind: 'cannot-be-made-lighter' }
  | { readonly kind: 'already-there'; readonly dE00: number }
  /** Every pass of this one leads away from the target. */
  | { readonly kind: 'another-toner'; readonly dE00: number };

const bands = (lab: Lab): Triple => xyzToBands(labToXyz(lab));
/** Nobody sprays more (judgement, no source). */
const MOST_PASSES = 40;

/**
 * The density of one pass, from a card read before and after a number of them.
 *
 * Source: Beer-Lambert in three broad bands: density = ln(before / after) / passes.
 * Valid: transparent dye, even passes. Accuracy: a broad band saturates, so measure near the depth that is wanted.
 * Left out: pigment in the toner, dye that bleeds.
 */
export function passDensity<W extends White>(
  before: Lab<W>,
  after: NoInfer<Lab<W>>,
  passes: number,
): PassDensity {
  assertWithin('Number of passes', passes, 0.5, MOST_PASSES, '');
  const then = bands(after);
  const [l, m, s] = bands(before).map((band, i) => Math.log(band / Math.max(then[i] ?? 1, 1e-4)) / passes);
  return [l ?? 0, m ?? 0, s ?? 0];
}

/** The colour after a number of passes (halves allowed) of a toner. Source: Beer-Lambert, as {@link passDensity}. */
export function afterPasses<W extends White>(before: Lab<W>, density: PassDensity, passes: number): Lab<W> {
  const [l, m, s] = bands(before);
  const left = (band: number, i: 0 | 1 | 2): number => band * Math.exp(-density[i] * passes);
  return xyzToLab(bandsToXyz([left(l, 0), left(m, 1), left(s, 2)], before.white));
}

/**
 * How many passes bring a colour nearest to its target, in half passes of which only the last is half.
 * What is left when the toner's hue is wrong stands in dE00: it is then another toner that is wanted.
 */
export function planToner<W extends White>(
  before: Lab<W>,
  target: NoInfer<Lab<W>>,
  density: PassDensity,
  toleranceE00: number,
): TonerPlan<W> {
  const { dE00: now, dL } = colourDifference<White>(before, target);
  if (now <= toleranceE00) return { kind: 'already-there', dE00: now };
  if (-dL > toleranceE00) return { kind: 'cannot-be-made-lighter' };
  let best = { halves: 0, dE00: now };
  for (let halves = 1; halves <= 2 * MOST_PASSES; halves++) {
    const dE00 = deltaE00<White>(afterPasses(before, density, halves / 2), target);
    if (dE00 < best.dE00) best = { halves, dE00 };
  }
  if (best.halves === 0) return { kind: 'another-toner', dE00: now };
  return {
    kind: 'passes',
    fullPasses: Math.floor(best.halves / 2),
    endsWithHalfPass: best.halves % 2 === 1,
    predicted: afterPasses(before, density, best.halves / 2),
    dE00: best.dE00,
  };
}
