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
