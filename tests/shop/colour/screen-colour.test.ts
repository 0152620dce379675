import { convertLabToRgb, convertRgbToXyz65, differenceCiede2000, formatHex } from 'culori/fn';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { deltaE00 } from '../../../src/science/colour/delta-e-00';
import { decodeSrgb, linearRgbToXyz } from '../../../src/science/colour/srgb';
import { hexToLab, labToHex } from '../../../src/shop/colour/screen-colour';
import srgb from '../../reference/srgb-linearisation.json';

const hexOf = (codes: readonly number[]): string =>
  `#${codes.map((code) => code.toString(16).padStart(2, '0')).join('')}`;

describe('hex colours', () => {
  // Computed from the standard's constants in double precision, three decimals.
  test.each(srgb.computed_lab_d65_2deg)('$srgb8 is Lab $lab', ({ srgb8, lab }) => {
    const read = hexToLab(hexOf(srgb8));
    expect(read?.L).toBeCloseTo(lab[0] ?? 0, 2);
    expect(read?.a).toBeCloseTo(lab[1] ?? 0, 2);
    expect(read?.b).toBeCloseTo(lab[2] ?? 0, 2);
  });

  test('every 8-bit colour comes back', () => {
    const code = fc.integer({ min: 0, max: 255 });
    fc.assert(
      fc.property(code, code, code, (r, g, b) => {
        const lab = hexToLab(hexOf([r, g, b]));
        expect(lab && labToHex(lab)).toEqual({ hex: hexOf([r, g, b]), isClipped: false });
      }),
    );
  });

  test('short form, and what is no colour', () => {
    expect(hexToLab('#fff')?.L).toBeCloseTo(100, 3);
    for (const text of ['', '#ff', 'cream', '#ggg', '#12345', '#1234', '#12345678'])
      expect(hexToLab(text)).toBeUndefined();
  });

  test('says when the screen cannot show a colour', () => {
    expect(labToHex({ white: 'D65/2', L: 60, a: 100, b: 60 }).isClipped).toBe(true);
  });
});

describe('our own functions, which reckon with 10-degree and LED whites, are those of the package where both can', () => {
  const channel = fc.double({ min: 0, max: 1, noNaN: true });

  test('sRGB to XYZ under D65 and 2 degrees', () => {
    fc.assert(
      fc.property(channel, channel, channel, (r, g, b) => {
        const theirs = convertRgbToXyz65({ r, g, b });
        const ours = linearRgbToXyz([decodeSrgb(r), decodeSrgb(g), decodeSrgb(b)]);
        // Both from IEC 61966-2-1; the white of theirs is worked out from x and y, ours is the printed one.
        expect(ours.X / 100).toBeCloseTo(theirs.x, 3);
        expect(ours.Y / 100).toBeCloseTo(theirs.y, 3);
        expect(ours.Z / 100).toBeCloseTo(theirs.z, 3);
      }),
    );
  });

  test('a swatch of D50, 2 degrees, which is adapted by Bradford', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 20, max: 95, noNaN: true }),
        fc.double({ min: -10, max: 10, noNaN: true }),
        fc.double({ min: -10, max: 25, noNaN: true }),
        (L, a, b) => {
          const ours = labToHex({ white: 'D50/2', L, a, b });
          const theirs = formatHex(convertLabToRgb({ l: L, a, b }));
          const code = (hex: string, at: number) => Number.parseInt(hex.slice(at, at + 2), 16);
          for (const at of [1, 3, 5])
            expect(Math.abs(code(ours.hex, at) - code(theirs, at))).toBeLessThanOrEqual(1);
        },
      ),
    );
  });

  test('CIEDE2000', () => {
    const theirs = differenceCiede2000();
    const part = fc.double({ min: -30, max: 30, noNaN: true });
    const lightness = fc.double({ min: 0, max: 100, noNaN: true });
    fc.assert(
      fc.property(lightness, part, part, lightness, part, part, (L1, a1, b1, L2, a2, b2) => {
        // the mean of two opposite hues is not defined: rounding picks one of two (Sharma 2005, section 3)
        fc.pre(
          Math.abs(a1 * b2 - a2 * b1) > 1e-6 * Math.hypot(a1, b1) * Math.hypot(a2, b2) ||
            a1 * a2 + b1 * b2 > 0,
        );
        const ours = deltaE00(
          { white: 'D65/2', L: L1, a: a1, b: b1 },
          { white: 'D65/2', L: L2, a: a2, b: b2 },
        );
        const said = theirs({ mode: 'lab65', l: L1, a: a1, b: b1 }, { mode: 'lab65', l: L2, a: a2, b: b2 });
        expect(ours).toBeCloseTo(said, 5); // at opposite hues rounding alone makes 5e-7
      }),
    );
  });
});
