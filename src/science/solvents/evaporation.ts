import { assertWithin } from '../assert-within';
import type { SolventFacts } from './solvent';
import { solvent } from './solvents';

const KG_M2_S_PER_UG_M2_H = 1e-9 / 3600;
const WATER_MOLAR_MASS_KG_MOL = 0.018;

type Mass = Pick<SolventFacts, 'molarMassKgMol'>;

/**
 * Evaporation of a pure liquid from a quiet pool at 25 C, kg/(m2 s).
 *
 * Source: D. Mackay and I. van Wesenbeeck, Environ. Sci. Technol. 48 (2014) 10259: ER = 1464 P M, ug/(m2 h), P in Pa, M in g/mol.
 * Valid: about 25 C, indoors. Accuracy: a factor of about 2 over many substances.
 * Left out: air movement, cooling of the liquid.
 */
export function quietPoolEvaporation(vapourPressurePa: number, { molarMassKgMol }: Mass): number {
  return 1464 * vapourPressurePa * molarMassKgMol * 1000 * KG_M2_S_PER_UG_M2_H;
}

/**
 * Mass transfer coefficient from a pool in a draught, m/s.
 *
 * Source: US EPA screening equation k = 0.0025 u^0.78 (18/M)^(1/3) (from memory).
 * Valid: 0.1 to 10 m/s of air over a pool. Accuracy: screening, a factor of 2.
 * Left out: the size of the pool.
 */
export function draughtTransferMS(airSpeedMS: number, { molarMassKgMol }: Mass): number {
  assertWithin('Air speed', airSpeedMS, 0.1, 10, 'm/s');
  return 0.0025 * airSpeedMS ** 0.78 * (WATER_MOLAR_MASS_KG_MOL / molarMassKgMol) ** (1 / 3);
}

/** What the rule below needs of a liquid; its vapour pressure at 25 C. */
export interface Liquid extends Mass {
  readonly vapourPressurePa: number;
  readonly densityKgM3: number;
}

/**
 * Evaporation rate by volume relative to another liquid (n-butyl acetate, on the usual scale), expected from the vapour pressures.
 *
 * Source: (P M/(P M)_scale)^0.9 rho_scale/rho at 25 C, a rule of thumb (no source), checked against listed rates.
 * Accuracy: a factor of 1.35 for common solvents, 1.5 for acetone.
 */
export function expectedEvaporationRate(liquid: Liquid, scale: Liquid): number {
  const drive = (of: Liquid) => of.vapourPressurePa * of.molarMassKgMol;
  return ((drive(liquid) / drive(scale)) ** 0.9 * scale.densityKgM3) / liquid.densityKgM3;
}

/**
 * Mass transfer coefficient relative to that of n-butyl acetate.
 *
 * Source: Chilton and Colburn, Ind. Eng. Chem. 26 (1934) 1183: k goes with D^(2/3).
 */
export function transferRatio({ airDiffusivityM2S }: Pick<SolventFacts, 'airDiffusivityM2S'>): number {
  return (airDiffusivityM2S / solvent('n-butyl-acetate').airDiffusivityM2S) ** (2 / 3);
}
