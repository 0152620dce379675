import { describe, expect, test } from 'vitest';
import { estimateByLaw } from '../../../src/estimator/finishes/estimate-by-law';
import type { LawHistory } from '../../../src/estimator/finishes/law-history';
import { totalDryM } from '../../../src/estimator/finishes/run-of-law';
import { scaledToSheet, sheetFactors } from '../../../src/estimator/finishes/to-sheet';
import { totalFilm, totalLimitM } from '../../../src/estimator/finishes/total-film';
import { onePiece } from './cases';

const um = (value: number): number => value * 1e-6;
const MIN_S = 60;

// A catalysed jewellery box (common practice, invented piece): sealer 24 %, topcoats 28 % of 100 um wet, scuffed 8 and 4 um,
// limit 100 um: 16, 40, 68, 96 um; a fourth topcoat makes 124 um.
describe('sealer and three topcoats, scuffed between', () => {
  const coat = (hours: number, dryUm: number) => ({
    atS: hours * 3600,
    dryM: um(dryUm),
    volatileM: um(2 * dryUm),
  });
  const coats = [coat(0, 24), coat(2, 28), coat(4, 28), coat(6, 28)];
  const sandings = [
    { atS: 1.5 * 3600, removedM: um(8) },
    { atS: 3.5 * 3600, removedM: um(4) },
  ];

  test.each([
    { laid: 1, scuffs: 1, totalUm: 16 },
    { laid: 2, scuffs: 2, totalUm: 40 },
    { laid: 3, scuffs: 2, totalUm: 68 },
    { laid: 4, scuffs: 2, totalUm: 96 },
  ])('after $laid coats: $totalUm um', ({ laid, scuffs, totalUm }) => {
    const total = totalDryM({ coats: coats.slice(0, laid), sandings: sandings.slice(0, scuffs) });
    expect(total * 1e6).toBeCloseTo(totalUm, 9);
  });

  test('what was sanded away to the wood takes nothing of a coat that goes on later', () => {
    const away = [{ atS: 3600, removedM: um(90) }];
    expect(totalDryM({ coats: coats.slice(0, 2), sandings: away })).toBeCloseTo(um(28), 12);
  });

  test('96 um is near the limit of 100 um, 124 um over it', () => {
    expect(totalLimitM('conversion')).toBeCloseTo(um(100), 12);
    expect(totalFilm(um(68), um(100))).toBe('within');
    expect(totalFilm(um(96), um(100))).toBe('near');
    expect(totalFilm(um(124), um(100))).toBe('over');
  });

  test('the sheet’s own limit outranks it; a lacquer that only releases solvent has none', () => {
    expect(totalLimitM('conversion', um(125))).toBe(um(125));
    expect(totalLimitM('nitrocellulose')).toBeUndefined();
  });

  test('every layer of a profile is what was laid less what was scuffed', () => {
    const history: LawHistory = { ...onePiece({}).history, coats, sandings };
    const { profiles } = estimateByLaw('conversion', { history, nowS: 7 * 3600 });
    const last = profiles.at(-1);
    expect(last?.layers.map(({ dryM }) => Math.round(dryM * 1e6))).toEqual([16, 24, 28, 28]);
    expect(last?.layers.every(({ solventM }) => solventM >= 0)).toBe(true);
  });

  // Its sheet: recoat 45 min to 4 h at these conditions. A coat that ends at 10:00 is recoated from 10:45 to 14:00.
  test('its window by its sheet: 45 min to 4 h', () => {
    const sheet = {
      temperatureK: 294.15,
      relativeHumidity: 0.5,
      recoatFromS: 45 * MIN_S,
      recoatUntilS: 240 * MIN_S,
    };
    const estimate = estimateByLaw('conversion', onePiece({ dryM: um(25), sheet }));
    expect(estimate.milestones.recoat.likelyS / MIN_S).toBeCloseTo(45, 0);
    expect((estimate.law.recoatUntil?.likelyS ?? 0) / MIN_S).toBeCloseTo(240, 0);
  });
});

test('one more coat puts level-sanding off, a warmer shop brings it on', () => {
  const { history } = onePiece({});
  const warmer = { ...history, air: [{ fromS: 0, temperatureK: 299.15, relativeHumidity: 0.5 }] };
  const nextCoat = { atS: 7200, dryM: um(20), volatileM: um(40) };
  const estimate = estimateByLaw('conversion', {
    history,
    nowS: 7200,
    nextCoat,
    whatIf: [{ name: 'warmer', history: warmer }],
  });
  expect(estimate.oneMoreCoat?.levelS).toBeCloseTo(7200, -1);
  expect(estimate.whatIf[0]?.levelS).toBeLessThan(0);
});

describe('a lacquer moved to its data sheet', () => {
  const atSheet = { touch: 600, recoat: 1800, level: 86_400, rubOut: 172_800, settled: 100_000 };
  const conditions = { temperatureK: 293.15, relativeHumidity: 0.5 };

  test('each milestone by what the sheet says over what the model has; the rest as the nearest', () => {
    const factors = sheetFactors({ ...conditions, touchS: 900, curedS: 5 * 86_400 }, atSheet);
    expect(factors).toEqual({ touch: 1.5, recoat: 1.5, level: 2.5, rubOut: 2.5, settled: 2.5 });
  });

  test('a sheet that says nothing moves nothing', () => {
    expect(sheetFactors(conditions, atSheet)).toEqual({
      touch: 1,
      recoat: 1,
      level: 1,
      rubOut: 1,
      settled: 1,
    });
  });

  test('times after the last coat are stretched, the coat itself stays', () => {
    const estimate = estimateByLaw('conversion', onePiece({}));
    const factors = { touch: 1, recoat: 2, level: 3, rubOut: 3, settled: 3 };
    const moved = scaledToSheet(estimate, 1000, factors);
    expect(moved.milestones.touch).toEqual(estimate.milestones.touch);
    expect(moved.milestones.recoat.likelyS).toBeCloseTo(
      1000 + 2 * (estimate.milestones.recoat.likelyS - 1000),
      6,
    );
    expect(moved.curve.timeS[5]).toBeCloseTo(1000 + 3 * ((estimate.curve.timeS[5] as number) - 1000), 6);
  });
});
