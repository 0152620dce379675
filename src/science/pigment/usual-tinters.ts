import type { Pigment } from './pigment';

/** Tinters by the names the trade gives them. */
export type UsualTinter =
  | 'ochre'
  | 'raw sienna'
  | 'raw umber'
  | 'burnt umber'
  | 'black'
  | 'red oxide'
  | 'green oxide';

/**
 * Tinter pastes before the person has drawn any of them down: absorption in three bands (long, middle, short) against
 * the scattering of as much white. Round figures by common practice, no source: pastes differ by a factor of two and
 * more, so believe them with STRENGTH_DOUBT.generic, and replace them by a draw-down.
 */
export const USUAL_TINTERS: Record<UsualTinter, Pigment> = {
  ochre: { K: [0.05, 0.13, 1.6], S: [0.2, 0.2, 0.2] },
  'raw sienna': { K: [0.2, 0.45, 2], S: [0.2, 0.2, 0.2] },
  'raw umber': { K: [1.3, 1.6, 2.7], S: [0.1, 0.1, 0.1] },
  'burnt umber': { K: [2.1, 3.1, 4.2], S: [0.1, 0.1, 0.1] },
  black: { K: [10.5, 10.5, 10.5], S: [0, 0, 0] },
  'red oxide': { K: [1.4, 3.4, 4.2], S: [0.3, 0.1, 0] },
  'green oxide': { K: [3, 1, 2], S: [0.2, 0.3, 0.1] },
};
