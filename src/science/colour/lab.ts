import { WHITE_POINTS, type White } from './white-points';

/** Tristimulus values together with the white they belong to; Y of the perfect diffuser is 100. */
export interface Xyz<W extends White = White> {
  readonly white: W;
  readonly X: number;
  readonly Y: number;
  readonly Z: number;
}

/** A CIELAB colour together with the white it is relative to, so that only like can be compared with like. */
export interface Lab<W extends White = White> {
  readonly white: W;
  readonly L: number;
  readonly a: number;
  readonly b: number;
}

// The cube root and the straight line under it meet at delta = 6/29 (ISO/CIE 11664-4).
const DELTA = 6 / 29;
const compress = (t: number): number => (t > DELTA ** 3 ? Math.cbrt(t) : t / (3 * DELTA ** 2) + 4 / 29);
const expand = (f: number): number => (f > DELTA ? f ** 3 : 3 * DELTA ** 2 * (f - 4 / 29));

/**
 * CIELAB from tristimulus values, relative to the white they carry.
 *
 * Source: ISO/CIE 11664-4:2019, equations 1 to 6. Valid: all XYZ. Accuracy: exact. Left out: nothing.
 */
export function xyzToLab<W extends White>({ white, X, Y, Z }: Xyz<W>): Lab<W> {
  const [Xn, Yn, Zn] = WHITE_POINTS[white];
  return labFromRatios(white, X / Xn, Y / Yn, Z / Zn);
}

/** CIELAB from tristimulus values already divided by those of the white. */
export function labFromRatios<W extends White>(white: W, x: number, y: number, z: number): Lab<W> {
  const fy = compress(y);
  return { white, L: 116 * fy - 16, a: 500 * (compress(x) - fy), b: 200 * (fy - compress(z)) };
}

/** Tristimulus values divided by those of the white: the inverse of {@link labFromRatios}. */
function labToRatios({ L, a, b }: Lab): readonly [x: number, y: number, z: number] {
  const fy = (L + 16) / 116;
  return [expand(fy + a / 500), expand(fy), expand(fy - b / 200)];
}

/** Tristimulus values of a CIELAB colour, under its own white: the exact inverse of {@link xyzToLab}. */
export function labToXyz<W extends White>(lab: Lab<W>): Xyz<W> {
  const [Xn, Yn, Zn] = WHITE_POINTS[lab.white];
  const [x, y, z] = labToRatios(lab);
  return { white: lab.white, X: x * Xn, Y: y * Yn, Z: z * Zn };
}

/** Chroma C*ab: the distance from grey. */

/** What a typed or imported reading may hold: a little beyond the perfect white is refused, as L* ends at 100. */
const LAB_LIMITS = {
  L: { lowest: 0, highest: 100 },
  a: { lowest: -128, highest: 128 },
  b: { lowest: -128, highest: 128 },
} as const;

/** The first of L, a, b that no surface can have, or undefined when all three can be. */
export function impossiblePart(lab: Pick<Lab, 'L' | 'a' | 'b'>): 'L' | 'a' | 'b' | undefined {
  const parts = ['L', 'a', 'b'] as const;
  return parts.find(
    (part) => !(lab[part] >= LAB_LIMITS[part].lowest && lab[part] <= LAB_LIMITS[part].highest),
  );
}
