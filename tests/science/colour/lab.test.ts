import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { adaptLab, bandsToXyz, xyzToBands } from '../../../src/science/colour/bradford';
import { impossiblePart, labToXyz, xyzToLab } from '../../../src/science/colour/lab';
import { isWhite, WHITE_POINTS, type White } from '../../../src/science/colour/white-points';
import whites from '../../reference/cie-white-points.json';

const WHITES = Object.keys(WHITE_POINTS) as White[];
const anyWhite = fc.constantFrom(...WHITES);

describe('white points', () => {
  // ASTM E308, table 5, as quoted by two open libraries.
  test.each(Object.entries(whites.astm_e308))('%s as in ASTM E308', (white, xyz) => {
    expect(isWhite(white) && WHITE_POINTS[white]).toEqual(xyz);
  });

  test('covers all eighteen of them, and the LED', () => {
    expect(Object.keys(whites.astm_e308)).toHaveLength(18);
    expect(WHITES).toHaveLength(20);
    expect(isWhite('toString')).toBe(false);
  });
});

describe('CIELAB', () => {
  // From the definition, ISO/CIE 11664-4: f(1) = 1, L* = 116 (Y/Yn)^(1/3) - 16, and 903.3 Y/Yn near black.
  test.each([
    { Y: 100, L: 100 },
    { Y: 0, L: 0 },
    { Y: 12.5, L: 42 }, // 116 x 0.5 - 16
    { Y: 0.5, L: 4.5165 }, // (29/3)^3 x 0.005
  ])('a grey of Y $Y has L* $L', ({ Y, L }) => {
    const lab = xyzToLab({ white: 'D65/10', X: (94.811 * Y) / 100, Y, Z: (107.304 * Y) / 100 });
    expect(lab.L).toBeCloseTo(L, 3);
    expect(lab.a).toBeCloseTo(0, 9);
    expect(lab.b).toBeCloseTo(0, 9);
  });

  test('goes to XYZ and back under any white', () => {
    const part = fc.double({ min: 0, max: 110, noNaN: true });
    fc.assert(
      fc.property(anyWhite, part, part, part, (white, X, Y, Z) => {
        const back = labToXyz(xyzToLab({ white, X, Y, Z }));
        expect(back.X).toBeCloseTo(X, 8);
        expect(back.Y).toBeCloseTo(Y, 8);
        expect(back.Z).toBeCloseTo(Z, 8);
      }),
    );
  });

  test.each([
    { lab: { L: 100.1, a: 0, b: 0 }, part: 'L' },
    { lab: { L: -0.1, a: 0, b: 0 }, part: 'L' },
    { lab: { L: 90, a: -300, b: 0 }, part: 'a' },
    { lab: { L: 90, a: 0, b: 128.1 }, part: 'b' },
    { lab: { L: 0, a: -128, b: 128 }, part: undefined },
    { lab: { L: 100, a: 128, b: -128 }, part: undefined },
    { lab: { L: 90, a: 0, b: Number.NaN }, part: 'b' },
    { lab: { L: 86.5, a: -0.6, b: 14.8 }, part: undefined },
  ])('finds the impossible part of $lab', ({ lab, part }) => {
    expect(impossiblePart(lab)).toBe(part);
  });
});

describe('Bradford adaptation', () => {
  test('takes every white to every other', () => {
    fc.assert(
      fc.property(anyWhite, anyWhite, (from, to) => {
        const adapted = adaptLab({ white: from, L: 100, a: 0, b: 0 }, to);
        expect(adapted.L).toBeCloseTo(100, 6);
        expect(adapted.a).toBeCloseTo(0, 6);
        expect(adapted.b).toBeCloseTo(0, 6);
      }),
    );
  });

  test('gives three bands that are 1 for the perfect white, and returns from them', () => {
    const [X, Y, Z] = WHITE_POINTS['D65/10'];
    for (const band of xyzToBands({ white: 'D65/10', X, Y, Z })) expect(band).toBeCloseTo(1, 12);
    const cream = labToXyz({ white: 'D65/10', L: 86.5, a: -0.6, b: 14.8 });
    expect(bandsToXyz(xyzToBands(cream), 'D65/10').Z).toBeCloseTo(cream.Z, 10);
  });
});
