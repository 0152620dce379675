import type { Xyz } from '../../../src/science/colour/lab';
import { inverse, multiply, type Triple } from '../../../src/science/colour/linear';
import { RGB_TO_XYZ } from '../../../src/science/colour/srgb';

// The way back from light to a photo's codes, for photos that are made up.
const XYZ_TO_RGB = inverse(RGB_TO_XYZ);

/** Code of one sRGB channel (0 to 1) from its light (0 to 1). Source: IEC 61966-2-1:1999, 5.2. Accuracy: exact. */
export function encodeSrgb(light: number): number {
  return light <= 0.0031308 ? light * 12.92 : 1.055 * light ** (1 / 2.4) - 0.055;
}

/** Linear sRGB light of a colour; a channel below 0 or over 1 cannot be shown. */
export function xyzToLinearRgb({ X, Y, Z }: Xyz<'D65/2'>): Triple {
  return multiply(XYZ_TO_RGB, [X / 100, Y / 100, Z / 100]);
}
