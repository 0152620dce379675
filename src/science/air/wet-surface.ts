import { assertWithin } from '../assert-within';
import { assertAirPressure } from './air-limits';
import { STANDARD_PRESSURE_PA } from './atmosphere';
import { rootOfRising } from './root';

/** What the cooling of a surface wet with one solvent depends on. */
export interface WetSolvent {
  readonly latentHeatJMol: number;
  /** Diffusion of the vapour in air at 25 °C and one atmosphere. */
  readonly airDiffusivityM2S: number;
  readonly vapourPressurePa: (temperatureC: number) => number;
}

/** Air at 25 °C and one atmosphere: 0.0261 W/(m K) over 1.184 kg/m3 and the heat of a kilogram (from memory). */
export const AIR_THERMAL_DIFFUSIVITY_M2S = 2.19e-5;
/** Diffusion of n-butyl acetate in air at 25 °C, m2/s: evaporation is counted against it (Fuller, Schettler and Giddings, constants from memory). */
export const BUTYL_ACETATE_IN_AIR_M2S = 7.22e-6;
/** Of dry air (from memory). */
export const AIR_HEAT_J_KG_K = 1006;
/** Dry air has 0.028966 kg/mol (ASHRAE Handbook Fundamentals 2017, ch. 1). */
const AIR_HEAT_CAPACITY_J_MOL_K = AIR_HEAT_J_KG_K * 0.028966;
/** No solvent of lacquers gets colder than this in air of 0 °C; vapour-pressure laws end near it (judgement, no source). */
const COLDEST_SURFACE_C = -23;

/** Temperatures of the air, in °C, that wetBlendC is held to. */
export const WET_SURFACE_AIR_C = { lowest: 0, highest: 50 } as const;

/**
 * How much of this cooling a real film shows: a film takes heat from the piece and holds its solvent back.
 * Source: blush-resistance humidities at 26.7 °C of n-butyl acetate (producer's sheet), isobutyl and ethyl
 * acetate (from memory), over the adiabatic cooling: 0.41, 0.37, 0.63. The only calibration found.
 */
export const FILM_COOLING_SHARE = { lowest: 0.4, highest: 0.65 } as const;

/** One solvent of a blend, with its share of the moles. */
export interface WetPart {
  readonly solvent: WetSolvent;
  readonly moleFraction: number;
}

/**
 * Temperature that a surface wet with a fresh blend, or one solvent, takes in clean moving air, with no heat from below, in °C.
 *
 * Source: steady balance of heat and vapour by the Chilton-Colburn analogy with Stefan flow:
 * Ta - Tw = (L / cp) Le^(-2/3) (-ln(1 - p(Tw) / P)), L and cp a mole, summed over solvents that each press by Raoult's law; the
 * Stefan flow is that of all vapours together. Le = a / D hardly depends on temperature or pressure: its value at 25 °C serves.
 * Valid: air from 0 to 50 °C, 50 to 110 kPa, below the blend's boiling point.
 * Accuracy: 0.2 K against an independent evaluation for 19 solvents; 0.7 K below the wet bulb of water; for blends that of
 * Raoult's law, 1 to 3 K for alcohols in esters and hydrocarbons (judgement).
 * Left out: heat from the piece, binder in the film, solvent already in the air: the coldest case; and the blend changes as the
 * fast ones leave: this is its coldest minute.
 */
export function wetBlendC(
  parts: readonly WetPart[],
  airC: number,
  pressurePa: number = STANDARD_PRESSURE_PA,
): number {
  const { lowest, highest } = WET_SURFACE_AIR_C;
  assertWithin('Air temperature', airC, lowest, highest, '°C');
  assertAirPressure(pressurePa);
  const coolingK = (surfaceC: number): number => {
    const shares = parts.map(
      ({ solvent, moleFraction }) => (moleFraction * solvent.vapourPressurePa(surfaceC)) / pressurePa,
    );
    const whole = shares.reduce((sum, share) => sum + share, 0);
    if (whole >= 1) return Number.POSITIVE_INFINITY; // it boils
    const stefan = whole > 0 ? -Math.log(1 - whole) / whole : 1;
    return stefan * parts.reduce((sum, { solvent }, i) => sum + heatK(solvent) * (shares[i] as number), 0);
  };
  return rootOfRising((surfaceC) => coolingK(surfaceC) - (airC - surfaceC), COLDEST_SURFACE_C, airC);
}

/** Cooling by one solvent for a vapour share of 1 in the air at the surface, K. */
function heatK({ latentHeatJMol, airDiffusivityM2S }: WetSolvent): number {
  const lewis = AIR_THERMAL_DIFFUSIVITY_M2S / airDiffusivityM2S;
  return (latentHeatJMol / AIR_HEAT_CAPACITY_J_MOL_K) * lewis ** (-2 / 3);
}
