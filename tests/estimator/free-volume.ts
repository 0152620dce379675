import type { MobilityLaw } from '../../src/estimator/laws/law';

/** Constants of the free-volume theory for one polymer and one solvent, in the units in which they are published (g, cm3, K). */
export interface FreeVolume {
  readonly d0Cm2S: number;
  /** Critical volumes of solvent and polymer, cm3/g. */
  readonly v1: number;
  readonly v2: number;
  readonly xi: number;
  /** K11/gamma and K12/gamma, cm3/(g K). */
  readonly k11: number;
  readonly k12: number;
  /** K21 - Tg1 and K22 - Tg2, K. */
  readonly k21MinusTg1K: number;
  readonly k22MinusTg2K: number;
  /** Below the polymer's glass transition: that transition, and the share of its hole growth that is left. */
  readonly glass?: { readonly tgK: number; readonly share: number };
  /** Activation energy over the gas constant, K; 0 where absent. */
  readonly activationK?: number;
  readonly chi: number;
}

/**
 * Self-diffusivity of a solvent in a polymer, m2/s.
 *
 * Source: Vrentas and Duda 1977; constants e.g. Zielinski and Duda 1992, table 4.
 * Valid: above the glass transition of the mixture; with `glass` also below that of the dry polymer.
 * @param solvent mass fraction of solvent
 */
export function selfDiffusivityM2S(constants: FreeVolume, solvent: number, temperatureK: number): number {
  const polymer = 1 - solvent;
  const jump = solvent * constants.v1 + polymer * constants.xi * constants.v2;
  const hole =
    solvent * constants.k11 * (constants.k21MinusTg1K + temperatureK) +
    polymer * constants.k12 * (constants.k22MinusTg2K + temperatureK - frozenK(constants, temperatureK));
  return 1e-4 * constants.d0Cm2S * Math.exp(-(constants.activationK ?? 0) / temperatureK - jump / hole);
}

/** Hole growth that a glassy polymer lacks, K. */
function frozenK({ glass }: FreeVolume, temperatureK: number): number {
  return glass ? (1 - glass.share) * (temperatureK - glass.tgK) : 0;
}

/** Mutual diffusivity, m2/s: self-diffusivity x (1 - phi)^2 (1 - 2 chi phi), phi the solvent's volume (or mass) fraction. */
export function mutualDiffusivity(selfM2S: number, phi: number, chi: number): number {
  return selfM2S * (1 - phi) * (1 - phi) * (1 - 2 * chi * phi);
}

/** Mobility law of a rubbery polymer with one solvent, from published free-volume constants. */
export function freeVolumeMobility(
  constants: FreeVolume,
  densities: { readonly polymerKgM3: number; readonly solventKgM3: number },
): MobilityLaw {
  return {
    ratio: [1],
    at(film, node, temperatureK) {
      const wetness = (film.u[0] as Float64Array)[node] as number;
      const mass = wetness * densities.solventKgM3;
      const self = selfDiffusivityM2S(constants, mass / (mass + densities.polymerKgM3), temperatureK);
      const phiP = 1 / (1 + wetness);
      return phiP * phiP * mutualDiffusivity(self, 1 - phiP, constants.chi);
    },
  };
}
