import { describe, expect, test } from 'vitest';
import {
  type Spectrum,
  spectrumFault,
  spectrumToLab,
  spectrumToXyz,
} from '../../../src/science/colour/spectrum';
import { type SpectralWhite, WEIGHTS_10NM } from '../../../src/science/colour/weights-10nm';
import { worstOfLights } from '../../../src/science/colour/worst-light';
import chart from '../../reference/chart-24-patch.json';
import whites from '../../reference/cie-white-points.json';
import examples from '../../reference/spectral-to-xyz-examples.json';

const flat = (reflectance: number, startNm = 380, stepNm = 10, count = 36): Spectrum => ({
  startNm,
  stepNm,
  reflectance: new Array<number>(count).fill(reflectance),
});
const skin: Spectrum = { startNm: 400, stepNm: 10, reflectance: examples.sample.reflectance };
const patch = (index: number): Spectrum => ({
  startNm: 380,
  stepNm: 10,
  reflectance: chart.patches[index]?.reflectance_iso17321 ?? [],
});

describe('spectrumToXyz', () => {
  test('dark skin sample under A, ends folded to 400 and 700 nm', () => {
    // Worked example of an open colour library after ASTM E308: 14.54167211, 10.88649849, 2.04930374.
    const [X = 0, Y = 0, Z = 0] = examples.expected[0]?.XYZ ?? [];
    const xyz = spectrumToXyz(skin, 'A/2');
    // The weights have five decimals and the last digit of 31 of them moves the sum by at most 1.5e-4 here.
    expect(Math.abs(xyz.X - X)).toBeLessThan(1.5e-4);
    expect(Math.abs(xyz.Y - Y)).toBeLessThan(1.5e-4);
    expect(Math.abs(xyz.Z - Z)).toBeLessThan(1.5e-4);
  });

  test.each(Object.entries(whites.computed_astm_e2022_10nm_weights))(
    'perfect diffuser under %s',
    (white, xyz) => {
      // Sums of the ASTM E2022 weights, printed to three decimals.
      const { X, Y, Z } = spectrumToXyz(flat(1), white as SpectralWhite);
      expect([X, Y, Z].map((value) => Math.round(value * 1000) / 1000)).toEqual(xyz);
    },
  );

  test('knows eight lights of 36 weights', () => {
    expect(Object.keys(WEIGHTS_10NM)).toHaveLength(8);
    for (const { X, Y, Z } of Object.values(WEIGHTS_10NM))
      expect([X, Y, Z].map((w) => w.length)).toEqual([36, 36, 36]);
  });

  test.each([
    { why: '20 nm', spectrum: flat(0.5, 400, 20, 16) },
    { why: '5 nm', spectrum: flat(0.5, 360, 5, 85) },
    { why: '1 nm', spectrum: flat(0.5, 380, 1, 401) },
  ])('a grey at $why is the grey of the weights', ({ spectrum }) => {
    const lab = spectrumToLab(spectrum, 'D65/10');
    expect(lab.L).toBeCloseTo(116 * Math.cbrt(0.5) - 16, 8); // from the definition of L*
    expect(lab.a).toBeCloseTo(0, 8);
  });

  test('a straight line of reflectance is the same at 10 and at 20 nm', () => {
    const line = (stepNm: number, count: number): Spectrum => ({
      startNm: 400,
      stepNm,
      reflectance: Array.from({ length: count }, (_, i) => 0.2 + 0.002 * stepNm * i),
    });
    expect(spectrumToXyz(line(20, 16), 'A/10').X).toBeCloseTo(spectrumToXyz(line(10, 31), 'A/10').X, 10);
  });

  test.each([
    { why: 'a step of 7 nm', spectrum: flat(0.5, 380, 7, 60), fault: 'step' },
    { why: 'a start between the points', spectrum: flat(0.5, 385, 10, 40), fault: 'step' },
    { why: 'a start at 410 nm', spectrum: flat(0.5, 410, 10, 40), fault: 'range' },
    { why: 'an end at 680 nm', spectrum: flat(0.5, 400, 10, 29), fault: 'range' },
  ])('refuses $why', ({ spectrum, fault }) => {
    expect(spectrumFault(spectrum)).toBe(fault);
    expect(() => spectrumToXyz(spectrum, 'D65/10')).toThrow(RangeError);
  });
});

describe('worstOfLights', () => {
  test('orders the lights and keeps the worst in front', () => {
    const order = worstOfLights(patch(1), patch(6));
    expect(order).toHaveLength(3);
    expect(order[0].dE00).toBe(Math.max(...order.map(({ dE00 }) => dE00)));
  });

  test('equal surfaces differ under none', () => {
    expect(worstOfLights(patch(1), patch(1))[0].dE00).toBe(0);
    expect(() => worstOfLights(patch(1), patch(1), [])).toThrow(RangeError);
  });
});
