/** Flat-sawn wood seen from its end: rings as shallow arches, and pores between them. Always the same board. */
export interface Grain {
  readonly rings: readonly string[];
  readonly pores: readonly { readonly x: number; readonly y: number; readonly r: number }[];
}

const HEART_DEPTH = 3.1; // the rings' centre lies this many board heights below

function ring(radius: number, width: number, depth: number): string {
  const centre = width * 0.38;
  const points = Array.from({ length: 25 }, (_, n) => {
    const x = (n / 24) * width;
    const away = (x - centre) / width;
    const wander =
      Math.sin(x * 0.045 + radius) * depth * 0.035 + Math.sin(x * 0.013 + radius * 2) * depth * 0.05;
    return `${x.toFixed(1)} ${(depth * radius + away * away * depth * HEART_DEPTH * 0.5 + wander).toFixed(1)}`;
  });
  return `M${points.join('L')}`;
}

/** Draws the board's end, `width` by `depth` picture units, y from 0 at the surface. */
export function woodGrain(width: number, depth: number): Grain {
  const count = 9;
  const rings = Array.from({ length: count }, (_, n) =>
    ring(-0.55 + (n / count) * 1.6 + 0.04 * Math.sin(n * 2.4), width, depth),
  );
  const pores = Array.from({ length: Math.round(width / 7) }, (_, n) => ({
    x: ((n * 0.7548776662 + 0.31) % 1) * width,
    y: ((n * 0.5698402909 + 0.17) % 1) ** 1.2 * depth,
    r: 0.5 + ((n * 0.381966) % 1) * 0.8,
  }));
  return { rings, pores };
}

/** The surface of a coat as a closed shape reaching down for ever; each coat levels what the wood left uneven. */
export function surfacePath(width: number, coatNumber: number, depth: number): string {
  const swing = 1.1 * 0.78 ** coatNumber;
  const points = Array.from({ length: 33 }, (_, n) => {
    const x = (n / 32) * width;
    return `${x.toFixed(1)} ${(swing * (Math.sin(x * 0.11) + 0.6 * Math.sin(x * 0.27 + 1))).toFixed(2)}`;
  });
  return `M0 ${depth}L${points.join('L')}L${width} ${depth}Z`;
}
