import type { Xyz } from './lab';
import { type Matrix3, multiply, type Triple } from './linear';

// Source: IEC 61966-2-1:1999, primaries and D65 (0.3127, 0.3290), to seven digits.
export const RGB_TO_XYZ: Matrix3 = [
  [0.4124564, 0.3575761, 0.1804375],
  [0.2126729, 0.7151522, 0.072175],
  [0.0193339, 0.119192, 0.9503041],
];

/** Light of one sRGB channel (0 to 1) from its code (0 to 1). Source: IEC 61966-2-1:1999, 5.2. Accuracy: exact. */
export function decodeSrgb(code: number): number {
  return code <= 0.04045 ? code / 12.92 : ((code + 0.055) / 1.055) ** 2.4;
}

/** Tristimulus values of linear sRGB light (0 to 1 a channel). */
export function linearRgbToXyz(rgb: Triple): Xyz<'D65/2'> {
  const [x, y, z] = multiply(RGB_TO_XYZ, rgb);
  return { white: 'D65/2', X: 100 * x, Y: 100 * y, Z: 100 * z };
}
