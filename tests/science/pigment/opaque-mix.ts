import { rInfinity } from '../../../src/science/pigment/kubelka-munk';
import { measuredFrom, type Surface } from '../../../src/science/pigment/saunderson';
import { mixture, type Share } from './mixture';

/** Measured reflectances of an opaque mix. */
export function opaqueMix(shares: readonly Share[], surface: Surface): number[] {
  return mixture(shares).map(({ K, S }) => measuredFrom(S > 0 ? rInfinity(K / S) : 0, surface));
}
