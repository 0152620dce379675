import { GAS_CONSTANT } from '../../science/air/atmosphere';
import {
  AIR_HEAT_J_KG_K,
  AIR_THERMAL_DIFFUSIVITY_M2S,
  BUTYL_ACETATE_IN_AIR_M2S,
} from '../../science/air/wet-surface';
import type { SurfaceLaw } from './law';

/** A solvent as the surface sees it, SI. */
export interface Volatile {
  readonly densityKgM3: number;
  readonly molarMassKgMol: number;
  readonly latentHeatJMol: number;
  /** Mass transfer coefficient relative to n-butyl acetate: (ratio of diffusivities in air)^(2/3). */
  readonly transferRatio: number;
  /** Antoine's law in exponential form, for it is asked at every step: psat = exp(lnA - lnB/(T + cK)), Pa and K. */
  readonly vapour: { readonly lnA: number; readonly lnB: number; readonly cK: number };
}

const vapourPressure = ({ vapour: { lnA, lnB, cK } }: Volatile, temperatureK: number): number =>
  Math.exp(lnA - lnB / (temperatureK + cK));

/** What the film gets its heat from as solvent cools it. */
export interface HeatSource {
  /** Thermal effusivity of the panel, W s^0.5/(m2 K); 0 where it gives no heat. */
  readonly panelEffusivity: number;
}

/** Dry air of some 23 C at one atmosphere (from memory). */
const AIR = { densityKgM3: 1.19, heatJKgK: AIR_HEAT_J_KG_K } as const;
const LEWIS_FACTOR = (AIR_THERMAL_DIFFUSIVITY_M2S / BUTYL_ACETATE_IN_AIR_M2S) ** (2 / 3);
/** The film is laid over a second or so: the panel's heat is not infinite in the first instant (judgement, no source). */
const LAYING_S = 2;

/**
 * Evaporation of several solvents from the top of a film, with the cooling it causes.
 *
 * J_i = (M_i/rho_i) k_g,i (a_i psat_i(Ts) - 0)/(R Ts), with ln a_i = ln phi_i + phi_p + chi phi_p^2 (Flory-Huggins, short form
 * for several solvents). Ts from h (Tair - Ts) + panel = sum J_i rho_i Hv_i, with h from k_g by the Lewis analogy
 * (Chilton and Colburn 1934) and the panel as a half-space (Carslaw and Jaeger 1959, 2.4).
 * Left out: solvent already in the air of the room; radiation; heat stored in the film itself.
 */
export function evaporation(
  solvents: readonly Volatile[],
  chi: number,
  heat: HeatSource | undefined,
): SurfaceLaw {
  const wetnessFactor = new Float64Array(solvents.length);
  let lastK = 0;

  /** Heat taken by evaporation at one film temperature, W/m2; fills the conductances on the way. */
  function coolingAt(
    temperatureK: number,
    transferMS: number,
    surface: Float64Array,
    conductance: Float64Array,
  ): number {
    let cooling = 0;
    for (let i = 0; i < solvents.length; i++) {
      const solvent = solvents[i] as Volatile;
      const vapourMolM3 = vapourPressure(solvent, temperatureK) / (GAS_CONSTANT * temperatureK);
      const moles = transferMS * solvent.transferRatio * vapourMolM3 * (wetnessFactor[i] as number);
      conductance[i] = (moles * solvent.molarMassKgMol) / solvent.densityKgM3;
      cooling += moles * (surface[i] as number) * solvent.latentHeatJMol;
    }
    return cooling;
  }

  const surface = new Float64Array(solvents.length);
  return {
    forget() {
      lastK = 0;
    },
    fill(film, air, sinceWetS, conductance) {
      const top = film.nodes - 1;
      let wetness = 0;
      for (let i = 0; i < solvents.length; i++) {
        surface[i] = (film.u[i] as Float64Array)[top] as number;
        wetness += surface[i] as number;
      }
      const phiP = 1 / (1 + wetness);
      wetnessFactor.fill(phiP * Math.exp(phiP + chi * phiP * phiP));
      if (!heat) {
        coolingAt(air.temperatureK, air.transferMS, surface, conductance);
        return air.temperatureK;
      }
      const supply =
        air.transferMS * AIR.densityKgM3 * AIR.heatJKgK * LEWIS_FACTOR +
        heat.panelEffusivity / Math.sqrt(Math.PI * (sinceWetS + LAYING_S));
      // Secant steps on the heat balance; cooling grows with temperature, so the root is single.
      let atK = air.temperatureK;
      let cooling = coolingAt(atK, air.transferMS, surface, conductance);
      if (cooling < 0.02 * supply) return air.temperatureK;
      lastK = Math.min(lastK || atK - cooling / (2 * supply), atK - 0.05);
      let excess = cooling;
      let tryK = Math.max(lastK, atK - 60);
      for (let round = 0; round < 8; round++) {
        cooling = coolingAt(tryK, air.transferMS, surface, conductance);
        const nextExcess = cooling - supply * (air.temperatureK - tryK);
        if (Math.abs(nextExcess) < 0.02 * supply) break;
        const slope = (nextExcess - excess) / (tryK - atK);
        atK = tryK;
        excess = nextExcess;
        tryK = Math.max(air.temperatureK - 60, tryK - nextExcess / Math.max(slope, supply));
      }
      lastK = tryK;
      return tryK;
    },
  };
}
