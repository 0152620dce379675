import { assertWithin } from '../assert-within';

/** Dry shellac, kg/m3 (from memory: 1,140 to 1,200 in handbooks). */
const SHELLAC_KG_M3 = 1150;

/**
 * Volume solids of shellac by its cut: the flakes to a volume of alcohol. A 2-pound cut is 2 lb to a US gallon, 240 g/L.
 *
 * Source: by the definition of the cut; ideal volumes. Left out: wax, water in the alcohol, the small change on dissolving.
 * @param cutKgM3 flakes per alcohol, kg/m3 (g/L)
 */
export function volumeSolidsOfCut(cutKgM3: number): number {
  assertWithin('Cut', cutKgM3, 0, 1000, 'g/L');
  const flakes = cutKgM3 / SHELLAC_KG_M3;
  return flakes / (1 + flakes);
}
