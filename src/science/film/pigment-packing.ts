import { assertWithin } from '../assert-within';

/**
 * Factor by which pigment slows solvent on its way through the dry film.
 *
 * Source: Maxwell (1873) for grains, aspect 1: (1 - p)/(1 + p/2); L. E. Nielsen, J. Macromol. Sci. A1 (1967) 929 for flakes of
 * aspect a lying flat: (1 - p)/(1 + a p/2). Valid: below the critical concentration.
 * @param pigment volume fraction of the dry film
 */
export function obstructionFactor(pigment: number, aspect = 1): number {
  assertWithin('Pigment', pigment, 0, 1, 'of the dry film by volume');
  return (1 - pigment) / (1 + (aspect * pigment) / 2);
}
