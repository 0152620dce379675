import { type WetSolvent, wetBlendC } from '../../../src/science/air/wet-surface';

/** A surface wet with one solvent alone, as the published tables have it, by the function for blends that the app runs. */
export const wetSurfaceC = (solvent: WetSolvent, airC: number, pressurePa?: number): number =>
  wetBlendC([{ solvent, moleFraction: 1 }], airC, pressurePa);
