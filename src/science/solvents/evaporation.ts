import type { SolventFacts } from './solvent';
import { solvent } from './solvents';

/**
 * Mass transfer coefficient relative to that of n-butyl acetate.
 *
 * Source: Chilton and Colburn, Ind. Eng. Chem. 26 (1934) 1183: k goes with D^(2/3).
 */
export function transferRatio({ airDiffusivityM2S }: Pick<SolventFacts, 'airDiffusivityM2S'>): number {
  return (airDiffusivityM2S / solvent('n-butyl-acetate').airDiffusivityM2S) ** (2 / 3);
}
