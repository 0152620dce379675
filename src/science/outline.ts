/** A point as shares of a picture's width and height. */
export type OutlinePoint = readonly [x: number, y: number];

const side = ([ax, ay]: OutlinePoint, [bx, by]: OutlinePoint, [px, py]: OutlinePoint): number =>
  Math.sign((bx - ax) * (py - ay) - (by - ay) * (px - ax));

const cut = (a: OutlinePoint, b: OutlinePoint, c: OutlinePoint, d: OutlinePoint): boolean =>
  side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0;

/** Whether two edges of a closed outline cross: it then encloses nothing that can be named. Source: orientation test of segments. */
export function crosses(outline: readonly OutlinePoint[]): boolean {
  const edges = outline.map((point, i) => [point, outline[(i + 1) % outline.length] ?? point] as const);
  return edges.some(([a, b], i) => edges.slice(i + 1).some(([c, d]) => cut(a, b, c, d)));
}

/** The outline with what runs off the picture cut at its edge, and whether anything did. */
export function within(outline: readonly OutlinePoint[]): {
  readonly points: readonly OutlinePoint[];
  readonly isCut: boolean;
} {
  const clamp = (share: number): number => Math.min(1, Math.max(0, share));
  return {
    points: outline.map(([x, y]) => [clamp(x), clamp(y)]),
    isCut: outline.flat().some((share) => share < 0 || share > 1),
  };
}

/** Points nearer than this to the line between the others are left out, as a share of the picture (judgement, no source). */
const THIN = 0.004;
/** More say nothing that a finger drew (judgement, no source). */
const MOST_POINTS = 120;

/** A drawn line with no more points than its shape needs. Source: Douglas and Peucker 1973. */
export function thinned(outline: readonly OutlinePoint[], tolerance = THIN): readonly OutlinePoint[] {
  const kept = simplify(outline, tolerance);
  return kept.length > MOST_POINTS ? thinned(outline, 2 * tolerance) : kept;
}

function simplify(line: readonly OutlinePoint[], tolerance: number): readonly OutlinePoint[] {
  const [first, last] = [line[0], line.at(-1)];
  if (line.length < 3 || !first || !last) return line;
  let farthest = { at: 0, away: 0 };
  for (const [at, point] of line.entries()) {
    const away = distance(point, first, last);
    if (away > farthest.away) farthest = { at, away };
  }
  if (farthest.away <= tolerance) return [first, last];
  const before = simplify(line.slice(0, farthest.at + 1), tolerance);
  return [...before.slice(0, -1), ...simplify(line.slice(farthest.at), tolerance)];
}

function distance([x, y]: OutlinePoint, [ax, ay]: OutlinePoint, [bx, by]: OutlinePoint): number {
  const length = Math.hypot(bx - ax, by - ay);
  if (length === 0) return Math.hypot(x - ax, y - ay);
  return Math.abs((bx - ax) * (y - ay) - (by - ay) * (x - ax)) / length;
}
