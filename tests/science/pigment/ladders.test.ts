import { describe, expect, test } from 'vitest';
import { deltaE00 } from '../../../src/science/colour/delta-e-00';
import { spectrumToLab } from '../../../src/science/colour/spectrum';
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

  test('one tint alone gives the absorption, with no scattering', () => {
    const fitted = fitTints([tint(0.02)], fitWhite(tint(0).reflectance, surface), surface);
    expect(fitted.S.every((value) => value === 0)).toBe(true);
    expect((fitted.K[20] ?? 0) / (black?.K[20] ?? 1)).toBeCloseTo(1, 1);
  });
});
