import type { Triple } from '../linear';
import { decodeSrgb } from '../srgb';

/** Pixels of a photograph, four bytes each (red, green, blue, opacity), row by row. */
export interface Photo {
  readonly width: number;
  readonly height: number;
  readonly rgba: ArrayLike<number>;
}

/** A place in a photograph, in pixels from its top left corner. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

/** Corners clockwise from the top left of what was marked (on a chart: from the corner of its first patch). */
export type Corners = readonly [Point, Point, Point, Point];

/** What the camera saw of one patch. */
export interface PatchSample {
  /** Mean light of the channels, linear, 0 to 1. */
  readonly rgb: Triple;
  /** Standard deviation of the light over its mean, a fraction: texture, noise and uneven light together. */
  readonly spread: number;
  /** Part of the pixels with a channel at its end: their true light is not known. */
  readonly clippedFraction: number;
}

/** From this code on a channel has run into its end (judgement, no source). */
const CLIPPED_CODE = 254;
/** Points looked at along each side of a patch: a thousand in all, whatever the size of the photograph. */
const POINTS_A_SIDE = 32;
/** The middle of a patch is taken, away from its frame and from a slip of the finger. */
const MIDDLE_SHARE = 0.5;

const LIGHT_OF_CODE = Float64Array.from({ length: 256 }, (_, code) => decodeSrgb(code / 255));

/**
 * The place in a photograph of a point of the marked four-sided field, (0, 0) being its first and (1, 1) its third corner.
 *
 * Source: P. Heckbert, Fundamentals of Texture Mapping and Image Warping (1989), square-to-quadrilateral case.
 * Valid: corners of a convex field. Accuracy: exact for a flat field. Left out: distortion of the lens.
 */
export function fieldToPhoto([p0, p1, p2, p3]: Corners): (u: number, v: number) => Point {
  const dx1 = p1.x - p2.x;
  const dx2 = p3.x - p2.x;
  const dy1 = p1.y - p2.y;
  const dy2 = p3.y - p2.y;
  const sx = p0.x - p1.x + p2.x - p3.x;
  const sy = p0.y - p1.y + p2.y - p3.y;
  const determinant = dx1 * dy2 - dx2 * dy1;
  const g = (sx * dy2 - dx2 * sy) / determinant;
  const h = (dx1 * sy - sx * dy1) / determinant;
  return (u, v) => {
    const w = 1 + g * u + h * v;
    return {
      x: (p0.x + (p1.x - p0.x + g * p1.x) * u + (p3.x - p0.x + h * p3.x) * v) / w,
      y: (p0.y + (p1.y - p0.y + g * p1.y) * u + (p3.y - p0.y + h * p3.y) * v) / w,
    };
  };
}

/** Why marked corners cannot be used, or undefined when they can: clockwise, convex, inside, at least 8 pixels a patch. */
export function cornersFault(photo: Photo, corners: Corners, columns: number, rows: number) {
  const isInside = corners.every(({ x, y }) => x >= 0 && y >= 0 && x < photo.width && y < photo.height);
  if (!isInside) return 'outside' as const;
  const turns = corners.map((corner, i) => {
    const next = corners[(i + 1) % 4] ?? corner;
    const after = corners[(i + 2) % 4] ?? corner;
    return (next.x - corner.x) * (after.y - next.y) - (next.y - corner.y) * (after.x - next.x);
  });
  if (turns.some((turn) => !(turn > 0))) return 'crossed' as const;
  const smallest = Math.min(...turns) / (columns * rows);
  return smallest < 64 ? ('too-small' as const) : undefined;
}

/** How much smaller a photograph may be drawn, a factor up to 1, so that every point looked at in a patch keeps a pixel of its own. */
export function scaleThatServes(corners: Corners, columns: number, rows: number): number {
  const sides = corners.map((corner, i) => {
    const next = corners[(i + 1) % 4] ?? corner;
    return Math.hypot(next.x - corner.x, next.y - corner.y) / (i % 2 === 0 ? columns : rows);
  });
  return Math.min(1, POINTS_A_SIDE / MIDDLE_SHARE / Math.min(...sides));
}

/** The patches of a marked field, row by row from its first corner. The corners must have passed {@link cornersFault}. */
export function samplePatches(photo: Photo, corners: Corners, columns: number, rows: number): PatchSample[] {
  const toPhoto = fieldToPhoto(corners);
  return Array.from({ length: columns * rows }, (_, index) => {
    const column = index % columns;
    const row = Math.floor(index / columns);
    return samplePatch(photo, (u, v) => toPhoto((column + u) / columns, (row + v) / rows));
  });
}

function samplePatch(photo: Photo, place: (u: number, v: number) => Point): PatchSample {
  const sum: [number, number, number] = [0, 0, 0];
  let lightSum = 0;
  let squares = 0;
  let clipped = 0;
  for (let i = 0; i < POINTS_A_SIDE; i++) {
    for (let k = 0; k < POINTS_A_SIDE; k++) {
      const { x, y } = place(withinMiddle(i), withinMiddle(k));
      const at = 4 * (Math.floor(y) * photo.width + Math.floor(x));
      let light = 0;
      let highest = 0;
      for (const channel of [0, 1, 2] as const) {
        const code = photo.rgba[at + channel] ?? 0;
        highest = Math.max(highest, code);
        const value = LIGHT_OF_CODE[code] ?? 0;
        sum[channel] += value;
        light += value;
      }
      if (highest >= CLIPPED_CODE) clipped++;
      lightSum += light;
      squares += light * light;
    }
  }
  const n = POINTS_A_SIDE ** 2;
  const mean = lightSum / n;
  const spread = mean > 0 ? Math.sqrt(Math.max(squares / n - mean * mean, 0)) / mean : 0;
  return { rgb: [sum[0] / n, sum[1] / n, sum[2] / n], spread, clippedFraction: clipped / n };
}

const withinMiddle = (i: number): number => 0.5 + MIDDLE_SHARE * ((i + 0.5) / POINTS_A_SIDE - 0.5);
