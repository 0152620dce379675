import { describe, expect, test } from 'vitest';
import { deltaE00 } from '../../../src/science/colour/delta-e-00';
import { spectrumToLab } from '../../../src/science/colour/spectrum';
import { rInfinity } from '../../../src/science/pigment/kubelka-munk';
import type { Pigment } from '../../../src/science/pigment/pigment';
import { LACQUER_SURFACE } from '../../../src/science/pigment/saunderson';
import { fitTints, fitWhite } from '../../../src/science/pigment/tint-ladder';
import films from '../../reference/film-ladders-and-mixtures.json';
import paints from '../../reference/pigment-two-constant.json';
import { filmOf, fitFilmLadder } from './film-ladder';
import { opaqueMix } from './opaque-mix';

const lab = (reflectance: readonly number[]) =>
  spectrumToLab({ startNm: 380, stepNm: 10, reflectance }, 'D65/10');
const median = (values: number[]): number =>
  values.sort((one, other) => one - other)[values.length >> 1] ?? 99;
const paper = films.paper_reflectance;

describe('measured films on paper (Chen et al. 2019, arXiv 1904.00275)', () => {
  const pigments = new Map<string, Pigment>();
  const ladderErrors: number[] = [];
  for (const [name, rungs] of Object.entries(films.ladders)) {
    const ladder = rungs.map(({ q_ml, reflectance }) => ({ amount: q_ml, reflectance }));
    const pigment = fitFilmLadder(ladder, paper, LACQUER_SURFACE);
    pigments.set(name, pigment);
    for (const { amount, reflectance } of ladder)
      ladderErrors.push(
        deltaE00(lab(filmOf([{ pigment, amount }], paper, LACQUER_SURFACE)), lab(reflectance)),
      );
  }
  const share = (name: string, amount: number) => ({
    pigment: pigments.get(name) ?? { K: [], S: [] },
    amount,
  });

  test('the ladders come back', () => {
    // The baseline published with the data set's selection: median 1.44 with the same surface.
    expect(ladderErrors).toHaveLength(48);
    expect(median(ladderErrors)).toBeLessThan(2);
  });

  test('two-pigment mixtures are predicted from the ladders alone', () => {
    const errors = films.mixtures.map(({ a, qa_ml, b, qb_ml, reflectance }) =>
      deltaE00(lab(filmOf([share(a, qa_ml), share(b, qb_ml)], paper, LACQUER_SURFACE)), lab(reflectance)),
    );
    expect(errors).toHaveLength(30);
    // The bar of this project, at the published baseline's median of 5.98 for these pigments.
    expect(median(errors)).toBeLessThanOrEqual(6.5);
  });
});

describe('opaque tints with white', () => {
  // K and S of a measured artists' white and bone black, an open library's data set.
  const [white, black] = paints.two_constant.pigments;
  const surface = { k1: 0.03, k2: 0.65, seesGloss: false };
  const tint = (share: number) => {
    const shares = [white, black].map((pigment, i) => ({
      pigment: pigment ?? { K: [], S: [] },
      amount: i ? share : 1 - share,
    }));
    return { share, reflectance: opaqueMix(shares, surface) };
  };

  test.each(paints.two_constant.computed_regression_tints)('black $black_fraction is as published', (row) => {
    const [L = 0, a = 0, b = 0] = row.lab_d65_10_specular_excluded;
    expect(deltaE00(lab(tint(row.black_fraction).reflectance), { white: 'D65/10', L, a, b })).toBeLessThan(
      0.02,
    );
  });

  test('K and S come back from the white, three tints and the black alone', () => {
    const fitted = fitTints(
      [tint(0.02), tint(0.1), tint(0.5), tint(1)],
      fitWhite(tint(0).reflectance, surface),
      surface,
    );
    for (const i of [5, 15, 25, 35]) {
      expect(fitted.K[i]).toBeCloseTo(black?.K[i] ?? 0, 6);
      expect(fitted.S[i]).toBeCloseTo(black?.S[i] ?? 0, 6);
    }
  });

  describe('in one band, by hand', () => {
    const bare = { k1: 0, k2: 0, seesGloss: true }; // no surface
    // Duncan 1940: a share c of a tinter in a white of S 1 gives K/S = ((1 - c) Kw + c K) / ((1 - c) + c S).
    const rung = (share: number, K: number, S: number, Kw = 0) => {
      const ks = ((1 - share) * Kw + share * K) / (1 - share + share * S);
      return { share, reflectance: [rInfinity(ks)] };
    };
    const fitted = (K: number, S: number, doubt = 0, Kw = 0) =>
      fitTints([rung(0.5, K, S, Kw), rung(0.25, K, S, Kw)], { K: [Kw], S: [1] }, bare, doubt);

    test('what readings tell of scattering counts half when they are as unsure as what they tell', () => {
      expect(fitted(3, 0.5).S[0]).toBeCloseTo(0.5, 9);
      // Rows (c/q, -c) of (1/4, -1/2) and (7/24, -1/4) leave 0.047059 to the scattering; it is likely to be 0.5 (common practice).
      expect(fitted(3, 0.5, 0.5 * Math.sqrt(0.0470588)).S[0]).toBeCloseTo(0.25, 5);
    });

    test('neither is ever less than nothing', () => {
      expect(fitted(3, -0.3).S[0]).toBe(0);
      expect(fitted(3, -0.3).K[0]).toBeGreaterThan(3);
      expect(fitted(-0.05, 0.5, 0, 0.2).K[0]).toBe(0);
      expect(fitted(0.1, 0, 0, 0.2).K[0]).toBeCloseTo(0.1, 9);
      expect(fitted(-0.05, -0.1, 0, 0.2)).toEqual({ K: [0], S: [0] });
    });

    test('a reading as dark as the gloss, or darker, is a black, and one lighter than white a white', () => {
      const of = (R: number) =>
        fitTints([{ share: 0.5, reflectance: [R] }], { K: [0], S: [1] }, LACQUER_SURFACE);
      expect(of(0.04).K[0]).toBeGreaterThan(100);
      expect(of(0.03)).toEqual(of(0.04));
      expect(Number.isFinite(of(0.04).K[0])).toBe(true);
      expect(fitWhite([1.05, 1, 0.9], LACQUER_SURFACE).K.map((K) => K > 1e-9)).toEqual([false, false, true]);
    });
  });

  test('one tint alone gives the absorption, with no scattering', () => {
    const fitted = fitTints([tint(0.02)], fitWhite(tint(0).reflectance, surface), surface);
    expect(fitted.S.every((value) => value === 0)).toBe(true);
    expect((fitted.K[20] ?? 0) / (black?.K[20] ?? 1)).toBeCloseTo(1, 1);
  });
});
