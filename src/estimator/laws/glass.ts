import { GAS_CONSTANT } from '../../science/air/atmosphere';

/** Universal WLF constants (Williams, Landel and Ferry 1955). */
export const WLF = { c1: 17.44, c2K: 51.6 } as const;

/** How much faster a reaction runs at the second temperature than at the first: Arrhenius. */
export function arrheniusFactor(activationJMol: number, fromK: number, toK: number): number {
  return Math.exp((activationJMol / GAS_CONSTANT) * (1 / fromK - 1 / toK));
}
