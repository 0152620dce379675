import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { dropFillApplications, dropFillVolumeM3 } from '../../../src/science/film/drop-fill';
import { lacquerAndThinner, materialFor } from '../../../src/science/film/material';
import { obstructionFactor } from '../../../src/science/film/pigment-packing';
import { dryFilm, wetFilm } from '../../../src/science/film/thickness';
import { asOfLacquer, asOfMix, thinnedOfLacquer, thinnedOfMix } from '../../../src/science/film/thinning';
import { M2_PER_SQUARE_FOOT, ML_PER_US_FLUID_OUNCE, milToUm } from '../../../src/units';
import { coverage, P1 } from '../../reference/film.json';

const UM = 1e-6;
const ML = 1e-6;
const M3_PER_US_GALLON = 128 * ML_PER_US_FLUID_OUNCE * ML;
const MIL = milToUm(1) * UM;

/** m2/m3 as ft2 per US gallon. */
const ft2PerGallon = (m2PerM3: number) => (m2PerM3 / M2_PER_SQUARE_FOOT) * M3_PER_US_GALLON;

describe('published worked values', () => {
  const mixedM3 = (areaM2: number, dryFilmM: number, solids: number, transferEfficiency: number) =>
    materialFor({
      areaM2,
      wetFilmM: wetFilm(dryFilmM, solids),
      coats: 1,
      transferEfficiency,
      gunHoldUpM3: 0,
      fillings: 0,
    }).mixedM3;
  const coverageM2M3 = (dryFilmM: number, solids: number, transferEfficiency = 1) =>
    1 / mixedM3(1, dryFilmM, solids, transferEfficiency);
  const OURS: Record<string, () => number> = {
    '10 mil wet, coverage from wet film': () => ft2PerGallon(coverageM2M3(10 * MIL, 1)),
    '65 % solids by volume, 5 mil dry': () => ft2PerGallon(coverageM2M3(5 * MIL, 0.65)),
    '52 % solids, transfer efficiency 0.3, 1.5 mil': () => ft2PerGallon(coverageM2M3(1.5 * MIL, 0.52, 0.3)),
    '65 % solids, 125 um dry': () => coverageM2M3(125 * UM, 0.65) / 1000,
    '1400 ft2 at 80 mil, 100 % solids': () => 1400 / ft2PerGallon(coverageM2M3(80 * MIL, 1)),
    '88 % solids, 12 mil dry': () => ft2PerGallon(coverageM2M3(12 * MIL, 0.88)),
    '80 mil wet, 88 % solids': () => dryFilm(80, 0.88),
    'lacquer 22 % volume solids, thinned 25 % by volume, WFT 100 um': () =>
      dryFilm(100, 0.22 * (1 - asOfMix(thinnedOfLacquer(0.25)).fraction)),
    'lacquer 22 % VS, 4 m2, 75 um total DFT, TE 0.60, no thinner': () =>
      1000 * mixedM3(4, 75 * UM, 0.22, 0.6),
  };
  test('nine of them', () => expect(coverage.map(({ case: name }) => name)).toEqual(Object.keys(OURS)));
  // 0.3 %: the sheets round 1604.17 ft2 mil/gal to 1604 and their results to three figures.
  test.each(coverage)('$case: $value $unit', ({ case: name, value }) => {
    const found = (OURS[name] as () => number)();
    expect(Math.abs(found / value - 1)).toBeLessThan(0.003);
  });
});

describe('thinning, of the lacquer and of the mix', () => {
  test('10 % of the lacquer is 9.1 % of the mix (common practice)', () => {
    expect(asOfMix(thinnedOfLacquer(0.1)).fraction).toBeCloseTo(0.0909, 4);
    expect(asOfLacquer(thinnedOfMix(0.1)).fraction).toBeCloseTo(0.1111, 4);
  });
  test('both ways of saying it are one thinning', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 50, noNaN: true }), (fraction) => {
        const ofMix = asOfMix(thinnedOfLacquer(fraction));
        expect(asOfLacquer(ofMix).fraction).toBeCloseTo(fraction, 8);
        expect(1 - ofMix.fraction).toBeCloseTo(1 / (1 + fraction), 12);
      }),
    );
  });
  test.each([1, -0.1, Number.NaN])('refuses a mix that is %s thinner', (fraction) => {
    expect(() => thinnedOfMix(fraction)).toThrow(RangeError);
  });
});

describe('an instrument in full clear (common practice, no source: what a finisher expects)', () => {
  const thinning = thinnedOfLacquer(0.5);
  const solids = 0.22 * (1 - asOfMix(thinning).fraction);
  // Filled once a day at 10 to 20 mL: twelve coats, three a day, four fillings.
  const job = { areaM2: 0.205, wetFilmM: 85 * UM, coats: 12, transferEfficiency: 0.35, fillings: 4 };
  const dryUm = dryFilm(85, solids);
  test('12.5 um dry a coat, 150 um in all', () => {
    expect(dryUm).toBeCloseTo(12.5, 1);
    expect(12 * dryUm).toBeCloseTo(150, -1);
  });
  test.each([10, 20])('about 50 mL a coat, 600 mL sprayed; with %s mL in the gun', (holdUpMl) => {
    const material = materialFor({ ...job, gunHoldUpM3: holdUpMl * ML });
    expect(Math.abs(material.perCoatM3 / ML - 50)).toBeLessThan(1);
    expect(Math.abs(material.sprayedM3 / ML - 600)).toBeLessThan(5);
    const { lacquerM3, thinnerM3 } = lacquerAndThinner(material.mixedM3, thinning);
    expect(lacquerM3 / ML).toBeGreaterThanOrEqual(400);
    expect(lacquerM3 / ML).toBeLessThanOrEqual(470);
    expect(thinnerM3 / ML).toBeGreaterThanOrEqual(200);
    expect(thinnerM3 / ML).toBeLessThanOrEqual(240);
  });
});

test('0.46 m2 at 90 um wet, transfer 40 %, three coats need about 310 mL (common practice, no source)', () => {
  const job = {
    areaM2: 0.46,
    wetFilmM: 90 * UM,
    coats: 3,
    transferEfficiency: 0.4,
    gunHoldUpM3: 0,
    fillings: 0,
  };
  expect(Math.abs(materialFor(job).mixedM3 / ML - 310)).toBeLessThan(2);
  expect(() => materialFor({ ...job, transferEfficiency: 40 })).toThrow(RangeError);
});

describe(`P1: ${P1.title}`, () => {
  const rows = P1.inputs.PVC.map((pigment, i) => ({ pigment, i }));
  test('five concentrations', () => expect(rows).toHaveLength(5));
  test.each(rows)('p = $pigment', ({ pigment, i }) => {
    const { Maxwell, Nielsen_a3, Nielsen_a10, time_ratio_plates_a10: plates } = P1.expected;
    const spheres = P1.expected.time_ratio_equal_total_dry_thickness_spheres;
    const near = (found: number, expected: number | undefined) =>
      expect(Math.abs(found - (expected as number))).toBeLessThanOrEqual(P1.tolerance.abs);
    near(obstructionFactor(pigment), Maxwell[i]);
    near(obstructionFactor(pigment, 3), Nielsen_a3[i]);
    near(obstructionFactor(pigment, 10), Nielsen_a10[i]);
    // The same solvent in 1 - p as much binder: its time goes with (1 - p)/factor.
    near((1 - pigment) / obstructionFactor(pigment), spheres[i]);
    near((1 - pigment) / obstructionFactor(pigment, 10), plates[i]);
  });
});

describe('drop fill', () => {
  test.each([
    // By hand: 0.8^3 = 0.512, 0.8^4 = 0.4096; 0.75^8 = 0.1001, 0.75^9 = 0.0751; 0.5^2 = 0.25 exactly; nothing to do.
    { moundFactor: 1, volumeSolids: 0.2, rest: 0.5, applications: 4 },
    { moundFactor: 1.25, volumeSolids: 0.2, rest: 0.1, applications: 9 },
    { moundFactor: 1.25, volumeSolids: 0.4, rest: 0.25, applications: 2 },
    { moundFactor: 1, volumeSolids: 0.2, rest: 0.512, applications: 3 },
    { moundFactor: 1, volumeSolids: 0.1, rest: 0.729, applications: 3 },
    { moundFactor: 1, volumeSolids: 0.2, rest: 1, applications: 0 },
  ])('mound $moundFactor, solids $volumeSolids, rest $rest: $applications', ({ applications, ...chip }) => {
    expect(dropFillApplications(chip)).toBe(applications);
  });

  test('takes what it leaves behind dry, divided by the solids', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 1.5, noNaN: true }),
        fc.double({ min: 0.02, max: 0.6, noNaN: true }),
        fc.double({ min: 0.01, max: 0.9, noNaN: true }),
        (moundFactor, volumeSolids, rest) => {
          const chip = { depthM: 1e-3, areaM2: 4e-6, moundFactor, volumeSolids, rest };
          // Drop by drop.
          let openM = chip.depthM;
          let volumeM3 = 0;
          let drops = 0;
          while (openM > rest * chip.depthM * (1 + 1e-9)) {
            volumeM3 += openM * moundFactor * chip.areaM2;
            openM -= openM * moundFactor * volumeSolids;
            drops++;
          }
          expect(dropFillApplications(chip)).toBe(drops);
          expect(dropFillVolumeM3(chip) / volumeM3).toBeCloseTo(1, 9);
        },
      ),
    );
  });

  test.each([
    { moundFactor: 2, volumeSolids: 0.2, rest: 0.1 },
    { moundFactor: 1, volumeSolids: 20, rest: 0.1 },
    { moundFactor: 1, volumeSolids: 0.2, rest: 0 },
  ])('refuses %o', (chip) => {
    expect(() => dropFillApplications(chip)).toThrow(RangeError);
  });
});
