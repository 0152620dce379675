import { GAS_CONSTANT } from '../../science/air/atmosphere';
import { type Film, MOST_NODES } from '../film';
import { WLF } from './glass';
import type { MobilityLaw } from './law';

/** A film former that hardens only by losing solvent, SI. */
export interface Binder {
  readonly densityKgM3: number;
  /** Glass transition of the dry binder, K. */
  readonly tgK: number;
  /** Flory-Huggins interaction with its solvents. */
  readonly chi: number;
  /** Diffusivity of the reference solvent where the mixture is at its glass transition, m2/s. */
  readonly glassDiffusivityM2S: number;
  /** Share of the WLF exponent that the diffusivity follows above Tg. */
  readonly wlfShare: number;
  /** Activation energy below Tg, J/mol. */
  readonly glassActivationJMol: number;
}

/** A solvent as the mobility law sees it, SI. */
export interface Diluent {
  readonly densityKgM3: number;
  readonly tgK: number;
  /** Diffusivity relative to the reference solvent. */
  readonly ratio: number;
}

/** Diffusivity in a film that is all but liquid is capped here, m2/s: half of what small molecules do in thin liquids (from memory). */
const LIQUID_CAP_M2S = 5e-10;
const LN_10 = Math.LN10;

/**
 * Mobility of solvents in a lacquer, through the glass transition of the mixture.
 *
 * D_i = ratio_i min(D_g 10^q, 5e-10) (1 - phi_s)^2 (1 - 2 chi phi_s); above Tg q = b c1 (T - Tg)/(c2 + T - Tg),
 * below it q = -(E_g/(R ln 10))(1/T - 1/Tg). Tg of the mixture by Fox.
 * Source: WLF (1955), Fox (1956), mutual diffusion after Vrentas and Duda (1977); D_g is a calibration value: no measurement
 * of D in nitrocellulose lacquer was found in the literature.
 */
export function lacquerMobility(binder: Binder, diluents: readonly Diluent[]): MobilityLaw {
  const glassFactor = binder.glassActivationJMol / GAS_CONSTANT;
  const lnGlassD = Math.log(binder.glassDiffusivityM2S);
  const lnCap = Math.log(LIQUID_CAP_M2S);
  const aboveFactor = LN_10 * binder.wlfShare * WLF.c1;
  const perTg = diluents.map((diluent) => diluent.densityKgM3 / diluent.tgK);
  const binderPerTg = binder.densityKgM3 / binder.tgK;
  const wetness = new Float64Array(MOST_NODES);
  const mass = new Float64Array(MOST_NODES);
  const massPerTg = new Float64Array(MOST_NODES);

  function mobilityOf(wet: number, tgK: number, temperatureK: number): number {
    const above = temperatureK - tgK;
    const lnShift =
      above > 0 ? (aboveFactor * above) / (WLF.c2K + above) : -glassFactor * (1 / temperatureK - 1 / tgK);
    const phiP = 1 / (1 + wet);
    const phiP2 = phiP * phiP;
    const lnD = lnGlassD + lnShift;
    return Math.exp(Math.min(lnD, lnCap)) * phiP2 * phiP2 * (1 - 2 * binder.chi * (1 - phiP));
  }

  return {
    ratio: diluents.map((diluent) => diluent.ratio),
    at(film, node, temperatureK) {
      let wet = 0;
      let total = binder.densityKgM3;
      let totalPerTg = binderPerTg;
      for (let i = 0; i < film.solvents; i++) {
        const u = (film.u[i] as Float64Array)[node] as number;
        wet += u;
        total += (diluents[i] as Diluent).densityKgM3 * u;
        totalPerTg += (perTg[i] as number) * u;
      }
      return mobilityOf(wet, total / totalPerTg, temperatureK);
    },
    fill(film, temperatureK, mobility) {
      const { nodes } = film;
      wetness.fill(0, 0, nodes);
      mass.fill(binder.densityKgM3, 0, nodes);
      massPerTg.fill(binderPerTg, 0, nodes);
      for (let i = 0; i < film.solvents; i++) {
        const u = film.u[i] as Float64Array;
        const density = (diluents[i] as Diluent).densityKgM3;
        const densityPerTg = perTg[i] as number;
        for (let n = 0; n < nodes; n++) {
          const value = u[n] as number;
          wetness[n] = (wetness[n] as number) + value;
          mass[n] = (mass[n] as number) + density * value;
          massPerTg[n] = (massPerTg[n] as number) + densityPerTg * value;
        }
      }
      for (let n = 0; n < nodes; n++) {
        const tgK = (mass[n] as number) / (massPerTg[n] as number);
        mobility[n] = mobilityOf(wetness[n] as number, tgK, temperatureK);
      }
    },
  };
}

/** Glass transition at a node, K, by Fox on mass fractions. */
export type TgOf = (film: Film, node: number) => number;

/** Makes the glass-transition function of one binder with its solvents. */
export function createTgOf(
  binder: { readonly densityKgM3: number; readonly tgK: number },
  diluents: readonly { readonly densityKgM3: number; readonly tgK: number }[],
): TgOf {
  const binderPerTg = binder.densityKgM3 / binder.tgK;
  const perVolume = diluents.map(({ densityKgM3 }) => densityKgM3);
  const perTg = diluents.map(({ densityKgM3, tgK }) => densityKgM3 / tgK);
  return (film, node) => {
    let mass = binder.densityKgM3;
    let massPerTg = binderPerTg;
    for (let i = 0; i < perTg.length; i++) {
      const wetness = (film.u[i] as Float64Array)[node] as number;
      mass += (perVolume[i] as number) * wetness;
      massPerTg += (perTg[i] as number) * wetness;
    }
    return mass / massPerTg;
  };
}
