import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type Blend,
  blendDensityKgM3,
  lowestFlashPointC,
  massFractions,
  moleFractions,
  volumeFractions,
} from '../../../src/science/solvents/blend';
import { blendEvaporationRate, driedTo, leavingOrder } from '../../../src/science/solvents/blend-drying';
import { SOLVENTS, solvent } from '../../../src/science/solvents/solvents';

const anyBlend: fc.Arbitrary<Blend> = fc.uniqueArray(
  fc.record({
    solvent: fc.constantFrom(...SOLVENTS),
    volume: fc.double({ min: 0.01, max: 100, noNaN: true }),
  }),
  { minLength: 1, maxLength: 6, selector: (part) => part.solvent.id },
);

const half: Blend = [
  { solvent: solvent('acetone'), volume: 1 },
  { solvent: solvent('toluene'), volume: 1 },
];

test('a half and half blend, by hand', () => {
  // 0.7923 and 0.8685 g/mL; 58.08 and 92.141 g/mol: mass 0.47706, moles 0.59137 of acetone, by hand from the table's sources.
  expect(massFractions(half)[0]).toBeCloseTo(0.47706, 4);
  expect(moleFractions(half)[0]).toBeCloseTo(0.59137, 3);
  expect(blendDensityKgM3(half)).toBeCloseTo(830.4, 6);
  expect(lowestFlashPointC(half)).toBe(-18);
  expect(lowestFlashPointC([{ solvent: solvent('water'), volume: 1 }])).toBeUndefined();
  // What was written down and not poured does not flash: toluene, 4 C closed cup by the table.
  expect(
    lowestFlashPointC([
      { solvent: solvent('acetone'), volume: 0 },
      { solvent: solvent('toluene'), volume: 1 },
    ]),
  ).toBe(solvent('toluene').flashPointC);
});

test('volume, mass and mole fractions lead back to each other', () => {
  fc.assert(
    fc.property(anyBlend, (blend) => {
      const densityKgM3 = blendDensityKgM3(blend);
      const mass = massFractions(blend);
      const molar = blend.reduce(
        (sum, part, i) => sum + (mass[i] as number) / part.solvent.molarMassKgMol,
        0,
      );
      volumeFractions(blend).forEach((fraction, i) => {
        const { densityKgM3: own, molarMassKgMol } = (blend[i] as Blend[number]).solvent;
        expect((fraction * own) / densityKgM3).toBeCloseTo(mass[i] as number, 10);
        expect((mass[i] as number) / molarMassKgMol / molar).toBeCloseTo(
          moleFractions(blend)[i] as number,
          10,
        );
      });
    }),
  );
});

describe('a blend as it dries', () => {
  test('follows the law of differential distillation', () => {
    // Rayleigh (1902) for two liquids: ln(n1/n10)/ln(n2/n20) is the relative volatility, here (5.6/v1)/(1.9/v2) with molar volumes
    // 58.08/0.7923 and 92.141/0.8685 mL: 4.2654.
    for (const left of [0.9, 0.5, 0.1]) {
      const { blend } = driedTo(half, left);
      const [acetone, toluene] = blend.map((part) => Math.log(part.volume / 0.5)) as [number, number];
      expect(acetone / toluene).toBeCloseTo(4.2654, 3);
    }
  });

  test('a pure solvent has its own rate', () => {
    for (const each of SOLVENTS) {
      expect(blendEvaporationRate([{ solvent: each, volume: 3 }])).toBeCloseTo(
        each.relativeEvaporationRate,
        9,
      );
    }
  });

  test('gives up the fast first and keeps the slow', () => {
    const thinner = (['2-butoxyethanol', 'acetone', 'n-butyl-acetate', 'toluene', 'mek'] as const).map(
      (id) => ({
        solvent: solvent(id),
        volume: 1,
      }),
    );
    // The order of their listed evaporation rates: 5.6, 3.8, 1.9, 1.0, 0.07.
    expect(leavingOrder(thinner).map(({ id }) => id)).toEqual([
      'acetone',
      'mek',
      'toluene',
      'n-butyl-acetate',
      '2-butoxyethanol',
    ]);
  });

  test('holds what is left, slower and slower, whatever the blend', () => {
    fc.assert(
      fc.property(anyBlend, fc.double({ min: 0.01, max: 0.99, noNaN: true }), (blend, left) => {
        const then = driedTo(blend, left);
        expect(then.blend.reduce((sum, part) => sum + part.volume, 0)).toBeCloseTo(left, 9);
        const last = leavingOrder(blend).at(-1);
        const share = (of: Blend) =>
          volumeFractions(of)[of.findIndex((part) => part.solvent === last)] as number;
        expect(share(then.blend)).toBeGreaterThanOrEqual(share(blend) - 1e-12);
        const rates = blend.map((part) => part.solvent.relativeEvaporationRate);
        expect(then.time).toBeGreaterThanOrEqual((1 - left) / Math.max(...rates) - 1e-9);
        expect(then.time).toBeLessThanOrEqual((1 - left) / Math.min(...rates) + 1e-9);
      }),
    );
  });
});
