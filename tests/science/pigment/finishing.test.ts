import { describe, expect, test } from 'vitest';
import { deltaE00 } from '../../../src/science/colour/delta-e-00';
import type { Lab } from '../../../src/science/colour/lab';
import { weighingUncertainty } from '../../../src/science/mixing/weigh/weighing';
import { bareAim, clearShift } from '../../../src/science/pigment/clear-shift';
import { afterPasses, passDensity, planToner } from '../../../src/science/pigment/dye-toner';
import { coatsToHide, contrastRatio, filmToHideUm, hidingPower } from '../../../src/science/pigment/hiding';
import { filmReflectance } from '../../../src/science/pigment/kubelka-munk';
import { toWeigh } from '../../../src/science/pigment/weighing';
import reference from '../../reference/kubelka-munk.json';

const lab = (L: number, a: number, b: number): Lab<'D65/10'> => ({ white: 'D65/10', L, a, b });

describe('clear shift of the radio cabinet (invented piece, values of common practice)', () => {
  const shift = clearShift(lab(86.1, -0.6, 16.6), lab(86.7, -0.5, 14.4));

  test('is -0.6 / -0.1 / +2.2', () => {
    expect(shift.dL).toBeCloseTo(-0.6, 9);
    expect(shift.da).toBeCloseTo(-0.1, 9);
    expect(shift.db).toBeCloseTo(2.2, 9);
  });

  test('puts the bare aim at 87.1 / -0.5 / 12.6', () => {
    expect(deltaE00(bareAim(lab(86.5, -0.6, 14.8), shift), lab(87.1, -0.5, 12.6))).toBeCloseTo(0, 9);
  });

  test('will not mix lights', () => {
    const underA: Lab = { white: 'A/10', L: 86, a: 0, b: 14 };
    expect(() => clearShift<Lab['white']>(underA, lab(86, 0, 14))).toThrow(RangeError);
    expect(() => bareAim<Lab['white']>(underA, shift)).toThrow(RangeError);
  });
});

describe('hiding', () => {
  const rows = reference.examples.find(({ id }) => id === 'KM-9')?.rows ?? [];
  // Scattering power SX for a contrast ratio over 0 and 0.80: computed elsewhere, confirmed by numeric integration.
  test.each(rows)('R infinity %d, K/S %d', (Rinf, ks, at90, at95, at98, overBlack, overWhite) => {
    // The table prints K/S to six decimals; it is taken from R infinity here.
    const K = (1 - (Rinf ?? 0)) ** 2 / (2 * (Rinf ?? 1));
    expect(K).toBeCloseTo(ks ?? 0, 6);
    expect(Math.abs((filmToHideUm({ K, S: 1 }, 0.9) ?? 0) - (at90 ?? 0))).toBeLessThan(0.0015);
    expect(Math.abs((filmToHideUm({ K, S: 1 }, 0.95) ?? 0) - (at95 ?? 0))).toBeLessThan(0.0015);
    expect(Math.abs((filmToHideUm({ K, S: 1 }) ?? 0) - (at98 ?? 0))).toBeLessThan(0.0015);
    expect(filmReflectance({ K, S: 1 }, at98 ?? 0, 0)).toBeCloseTo(overBlack ?? 0, 4);
    expect(filmReflectance({ K, S: 1 }, at98 ?? 0, 0.8)).toBeCloseTo(overWhite ?? 0, 4);
  });

  test('covers nine whites', () => {
    expect(rows).toHaveLength(9);
  });

  test('a draw-down gives the film and the coats to hide', () => {
    // White of R infinity 0.90 (row above): contrast ratio 0.90 at SX 3.7503 and 0.98 at 9.1427. Drawn at 40 um with the
    // former, it needs 40 x 9.1427 / 3.7503 = 97.5 um: 8 coats of 12.5 um.
    const S = 3.7503 / 40;
    const film = { K: S * 0.0055556, S };
    const coatedY = (ground: number) => 100 * filmReflectance(film, 40, ground);
    expect(contrastRatio(coatedY(0), coatedY(0.8))).toBeCloseTo(0.9, 4);
    const power = hidingPower({
      dryFilmUm: 40,
      black: { cardY: 0, coatedY: coatedY(0) },
      white: { cardY: 80, coatedY: coatedY(0.8) },
    });
    const needed = (power && filmToHideUm(power)) ?? 0;
    expect(needed).toBeCloseTo(97.5, 1);
    expect(coatsToHide(needed, 12.5)).toBe(8);
    expect(coatsToHide(50, 12.5)).toBe(4);
  });

  test('says when it cannot be told, and when it never hides', () => {
    expect(
      hidingPower({ dryFilmUm: 40, black: { cardY: 1, coatedY: 80 }, white: { cardY: 80, coatedY: 79 } }),
    ).toBeUndefined();
    expect(filmToHideUm({ K: 1e-5, S: 1e-5 })).toBeUndefined();
    expect(() => contrastRatio(50, Number.NaN)).toThrow(RangeError);
  });
});

describe('dye toner', () => {
  const maple = lab(80, 4, 22);
  const density = passDensity(maple, lab(70, 12, 32), 4);

  test('passes multiply: four passes give the card back, two and two more are four', () => {
    expect(deltaE00(afterPasses(maple, density, 4), lab(70, 12, 32))).toBeCloseTo(0, 9);
    const twoAndTwo = afterPasses(afterPasses(maple, density, 2), density, 2);
    expect(deltaE00(twoAndTwo, lab(70, 12, 32))).toBeCloseTo(0, 9);
  });

  test.each([
    { passes: 3, fullPasses: 3, endsWithHalfPass: false },
    { passes: 2.5, fullPasses: 2, endsWithHalfPass: true },
    { passes: 5.1, fullPasses: 5, endsWithHalfPass: false },
  ])('a target $passes passes away', ({ passes, ...plan }) => {
    expect(planToner(maple, afterPasses(maple, density, passes), density, 0.2)).toMatchObject({
      kind: 'passes',
      ...plan,
    });
  });

  test('a weak one takes many passes: a tenth as strong, thirty where three would do', () => {
    const weak = density.map((band) => band / 10) as unknown as typeof density;
    expect(planToner(maple, afterPasses(maple, density, 3), weak, 0.2)).toMatchObject({ fullPasses: 30 });
  });

  test('cannot be made lighter', () => {
    expect(planToner(maple, lab(85, 4, 22), density, 0.6)).toEqual({ kind: 'cannot-be-made-lighter' });
  });

  test('a lighter target that only wants a breath less of it still gets its yellow', () => {
    expect(planToner(maple, lab(80.1, 7, 28), density, 0.6).kind).toBe('passes');
  });

  test('is the wrong toner when every pass leads away', () => {
    expect(planToner(maple, lab(79, -4, 10), density, 0.6)).toMatchObject({ kind: 'another-toner' });
  });

  test('is already there', () => {
    expect(planToner(maple, lab(80.2, 4, 22), density, 0.6).kind).toBe('already-there');
    expect(planToner(maple, maple, density, 0)).toEqual({ kind: 'already-there', dE00: 0 });
  });
});

describe('weighing on a scale of 0.01 g', () => {
  // The radio cabinet: 3.7 %, 4.8 %, 17 %, not weighable (invented piece; common practice, no source).
  test.each([
    { grams: 0.135, error: 0.037 },
    { grams: 0.105, error: 0.048 },
    { grams: 0.03, error: 0.167 },
  ])('$grams g is off by up to $error', ({ grams, error }) => {
    expect(weighingUncertainty(grams, 0.01)).toBeCloseTo(error, 3);
  });

  test.each([
    { neat: 0.135, form: 'neat', shown: 0.14 },
    { neat: 0.1, form: 'neat', shown: 0.1 }, // 5 %: just well enough
    { neat: 0.00005, form: 'let-down-1', shown: 0.01 }, // half a division, shown as a whole one
    { neat: 0.03, form: 'let-down-10', shown: 0.3 },
    { neat: 0.003, form: 'let-down-1', shown: 0.3 },
  ])('$neat g goes as $form', ({ neat, form, shown }) => {
    const weighed = toWeigh(neat, 0.01, ['let-down-1', 'neat', 'let-down-10']);
    expect(weighed?.form).toBe(form);
    expect(weighed?.grams).toBeCloseTo(shown, 9);
  });

  test('without a let-down it says how bad it is, or that it cannot be weighed', () => {
    expect(toWeigh(0.03, 0.01, ['neat'])).toMatchObject({ form: 'neat', error: expect.closeTo(0.167, 3) });
    expect(toWeigh(0.003, 0.01, ['neat'])).toBeUndefined();
  });
});
