// White points as tristimulus values, Y of the perfect diffuser = 100.
//
// Source: ASTM E308, table 5 (10 nm), as quoted by two open colour libraries; the LED rows are sums of the ASTM
// E2022 weights of CIE 015:2018 illuminant LED-B3 in weights-10nm.ts.

/** Tristimulus values of the white of each light and observer: `D65/10` is daylight D65 seen by the 10 degree observer. */
export const WHITE_POINTS = {
  'A/2': [109.85, 100, 35.585],
  'C/2': [98.074, 100, 118.232],
  'D50/2': [96.422, 100, 82.521],
  'D55/2': [95.682, 100, 92.149],
  'D65/2': [95.047, 100, 108.883],
  'D75/2': [94.972, 100, 122.638],
  'F2/2': [99.186, 100, 67.393],
  'F7/2': [95.041, 100, 108.747],
  'F11/2': [100.962, 100, 64.35],
  'A/10': [111.144, 100, 35.2],
  'C/10': [97.285, 100, 116.145],
  'D50/10': [96.72, 100, 81.427],
  'D55/10': [95.799, 100, 90.926],
  'D65/10': [94.811, 100, 107.304],
  'D75/10': [94.416, 100, 120.641],
  'F2/10': [103.279, 100, 69.027],
  'F7/10': [95.792, 100, 107.686],
  'F11/10': [103.863, 100, 65.607],
  'LED-B3/2': [100.862, 100, 67.634],
  'LED-B3/10': [103.31, 100, 67.907],
} as const;

/** A light and an observer angle, the pair that every colour reading is relative to. */
export type White = keyof typeof WHITE_POINTS;

/** Whether a text names a light and observer that this app knows. */
export function isWhite(text: string): text is White {
  return Object.hasOwn(WHITE_POINTS, text);
}
