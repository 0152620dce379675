import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { decodeSrgb, encodeSrgb, hexToLab, labToHex } from '../../../src/science/colour/srgb';
import srgb from '../../reference/srgb-linearisation.json';

const hexOf = (codes: readonly number[]): string =>
  `#${codes.map((code) => code.toString(16).padStart(2, '0')).join('')}`;

describe('sRGB transfer', () => {
  // IEC 61966-2-1:1999 constants; 0.18 <-> 0.461356129500442 as printed in an open colour library's tests.
  test.each(srgb.read_checks)('light $linear is code $encoded', ({ linear, encoded }) => {
    expect(encodeSrgb(linear)).toBeCloseTo(encoded, 12);
    expect(decodeSrgb(encoded)).toBeCloseTo(linear, 12);
  });

  test.each(srgb.computed_8bit)('8-bit code $code', ({ code, linear }) => {
    expect(decodeSrgb(code / 255)).toBeCloseTo(linear, 8);
  });
});

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
    for (const text of ['', '#ff', 'cream', '#ggg', '#12345']) expect(hexToLab(text)).toBeUndefined();
  });

  test('says when the screen cannot show a colour', () => {
    expect(labToHex({ white: 'D65/2', L: 60, a: 100, b: 60 }).isClipped).toBe(true);
  });
});
