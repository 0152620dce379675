type Place = readonly [x: number, y: number];

/** A turn, a scale and a shift of the plane: x' = a x - b y + e, y' = b x + a y + f. */
export interface Alignment {
  readonly a: number;
  readonly b: number;
  readonly e: number;
  readonly f: number;
}

/**
 * The turn, scale and shift that lays two marks of one picture over the same two of another, in pixels of each; undefined where the
 * two marks are one.
 * Source: similarity transform by two points, as the quotient of complex numbers. Left out: the view from another side.
 */
export function alignment(
  over: readonly [Place, Place],
  under: readonly [Place, Place],
): Alignment | undefined {
  const [[ox, oy], [px, py]] = over;
  const [[ux, uy], [vx, vy]] = under;
  const [dx, dy, tx, ty] = [px - ox, py - oy, vx - ux, vy - uy];
  const length = dx * dx + dy * dy;
  if (length === 0 || tx * tx + ty * ty === 0) return undefined;
  const a = (tx * dx + ty * dy) / length;
  const b = (ty * dx - tx * dy) / length;
  return { a, b, e: ux - a * ox + b * oy, f: uy - b * ox - a * oy };
}
