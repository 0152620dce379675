import { describe, expect, test } from 'vitest';
import { type WetSolvent, wetBlendC } from '../../../src/science/air/wet-surface';
import { type SolventId, solvent } from '../../../src/science/solvents/solvents';
import { vapourPressurePa } from '../../../src/science/solvents/vapour-pressure';
import { wetSurfaceC } from './wet-alone';

const wet = (id: SolventId): WetSolvent => ({
  latentHeatJMol: solvent(id).latentHeatJMol,
  airDiffusivityM2S: solvent(id).airDiffusivityM2S,
  vapourPressurePa: (temperatureC) => vapourPressurePa(solvent(id), temperatureC + 273.15),
});
const blend = (...parts: readonly (readonly [SolventId, number])[]) =>
  parts.map(([id, moleFraction]) => ({ solvent: wet(id), moleFraction }));

describe('a blend', () => {
  test('of one solvent split in two is that solvent', () => {
    const split = wetBlendC(blend(['acetone', 0.3], ['acetone', 0.7]), 25);
    expect(split).toBeCloseTo(wetSurfaceC(wet('acetone'), 25), 6);
  });

  test('lies between its parts', () => {
    const half = wetBlendC(blend(['acetone', 0.5], ['n-butyl-acetate', 0.5]), 25);
    expect(half).toBeGreaterThan(wetSurfaceC(wet('acetone'), 25));
    expect(half).toBeLessThan(wetSurfaceC(wet('n-butyl-acetate'), 25));
  });

  test('cools less with a slow part in it', () => {
    const fast = wetBlendC(blend(['acetone', 0.5], ['toluene', 0.5]), 25);
    const slowed = wetBlendC(blend(['acetone', 0.45], ['toluene', 0.45], ['2-butoxyethanol', 0.1]), 25);
    expect(slowed).toBeGreaterThan(fast + 0.5);
  });

  test('the balance holds: heat taken from the air is heat carried off', () => {
    // The equation written out anew for two solvents: Ta - Tw = S sum h_i x_i p_i/P, S = -ln(1 - sum)/sum.
    const airC = 25;
    const parts = blend(['ethyl-acetate', 0.4], ['toluene', 0.6]);
    const surfaceC = wetBlendC(parts, airC);
    const y = parts.map((part) => (part.moleFraction * part.solvent.vapourPressurePa(surfaceC)) / 101_325);
    const sum = (y[0] ?? 0) + (y[1] ?? 0);
    const heats = parts.map(
      (part) =>
        (part.solvent.latentHeatJMol / 29.1398) * (2.19e-5 / part.solvent.airDiffusivityM2S) ** (-2 / 3),
    );
    const coolingK =
      (-Math.log(1 - sum) / sum) * ((heats[0] ?? 0) * (y[0] ?? 0) + (heats[1] ?? 0) * (y[1] ?? 0));
    expect(airC - surfaceC).toBeCloseTo(coolingK, 4);
  });
});
