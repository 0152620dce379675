import type { Solvent } from './solvents';

/** So much of one solvent, in any one unit of volume. */
export interface BlendPart {
  readonly solvent: Solvent;
  readonly volume: number;
}

/** Solvents poured together, by volume: the way thinners are described. */
export type Blend = readonly BlendPart[];

const mass = ({ solvent, volume }: BlendPart): number => volume * solvent.densityKgM3;
const moles = (part: BlendPart): number => mass(part) / part.solvent.molarMassKgMol;
const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);

function shares(blend: Blend, amount: (part: BlendPart) => number): number[] {
  const amounts = blend.map(amount);
  const total = sum(amounts);
  return amounts.map((each) => each / total);
}

/** Fraction by volume of each part, in the blend's order. Left out: the small change of volume on mixing. */
export const volumeFractions = (blend: Blend): number[] => shares(blend, (part) => part.volume);

/** Fraction by mass of each part, in the blend's order. */
export const massFractions = (blend: Blend): number[] => shares(blend, mass);

/** Fraction by moles of each part, in the blend's order. */
export const moleFractions = (blend: Blend): number[] => shares(blend, moles);

/** Density at 20 C, kg/m3, of ideal mixing (volumes add). */
export const blendDensityKgM3 = (blend: Blend): number =>
  sum(blend.map(mass)) / sum(blend.map((part) => part.volume));

/** The lowest closed-cup flash point among the parts, C; a mixture may flash lower still, or higher with much water. */
export function lowestFlashPointC(blend: Blend): number | undefined {
  const flashPoints = blend.flatMap(({ solvent, volume }) =>
    volume > 0 && solvent.flashPointC !== undefined ? [solvent.flashPointC] : [],
  );
  return flashPoints.length > 0 ? Math.min(...flashPoints) : undefined;
}
