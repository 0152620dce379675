import type { Xyz } from './lab';
import { inverse, type Matrix3, multiply, type Triple } from './linear';

// Source: IEC 61966-2-1:1999, primaries and D65 (0.3127, 0.3290), to seven digits.
const RGB_TO_XYZ: Matrix3 = [
  [0.4124564, 0.3575761, 0.1804375],
  [0.2126729, 0.7151522, 0.072175],
  [0.0193339, 0.119192, 0.9503041],
];
const XYZ_TO_RGB = inverse(RGB_TO_XYZ);

/** Light of one sRGB channel (0 to 1) from its code (0 to 1). Source: IEC 61966-2-1:1999, 5.2. Accuracy: exact. */
export function decodeSrgb(code: number): number {
  return code <= 0.04045 ? code / 12.92 : ((code + 0.055) / 1.055) ** 2.4;
}

/** Code of one sRGB channel (0 to 1) from its light (0 to 1). Source: IEC 61966-2-1:1999, 5.2. Accuracy: exact. */
export function encodeSrgb(light: number): number {
  return light <= 0.0031308 ? light * 12.92 : 1.055 * light ** (1 / 2.4) - 0.055;
}

/** Tristimulus values of linear sRGB light (0 to 1 a channel). */
export function linearRgbToXyz(rgb: Triple): Xyz<'D65/2'> {
  const [x, y, z] = multiply(RGB_TO_XYZ, rgb);
  return { white: 'D65/2', X: 100 * x, Y: 100 * y, Z: 100 * z };
}

/** Linear sRGB light of a colour; a channel below 0 or over 1 cannot be shown. */
export function xyzToLinearRgb({ X, Y, Z }: Xyz<'D65/2'>): Triple {
  return multiply(XYZ_TO_RGB, [X / 100, Y / 100, Z / 100]);
}
