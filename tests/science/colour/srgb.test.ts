import { convertLrgbToRgb } from 'culori/fn';
import { describe, expect, test } from 'vitest';
import { decodeSrgb } from '../../../src/science/colour/srgb';
import srgb from '../../reference/srgb-linearisation.json';
import { encodeSrgb } from './shown-srgb';

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

test('the camera’s own curve is that of the package that draws swatches', () => {
  for (const linear of [0, 0.001, 0.0031308, 0.01, 0.18, 0.5, 1]) {
    const { r } = convertLrgbToRgb({ r: linear, g: linear, b: linear });
    expect(encodeSrgb(linear)).toBeCloseTo(r, 6);
  }
});
