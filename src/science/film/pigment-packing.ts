import { assertWithin } from '../assert-within';

/** Linseed oil, kg/m3, the oil of the oil absorption test (ISO 787-5). */
const LINSEED_OIL_KG_M3 = 935;

/**
 * Critical pigment volume concentration: above it the binder no longer fills the gaps and the film is open.
 *
 * Source: CPVC = 1/(1 + OA rho/93.5), OA in g oil per 100 g pigment, rho in g/cm3 (Asbeck and Van Loo 1949; coatings tutorial).
 * Accuracy: a rough upper bound; dispersed pigment packs a little differently from oil paste.
 * @param oilAbsorption kg oil per kg pigment
 */
export function criticalPigmentConcentration(oilAbsorption: number, pigmentDensityKgM3: number): number {
  return 1 / (1 + (oilAbsorption * pigmentDensityKgM3) / LINSEED_OIL_KG_M3);
}

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
