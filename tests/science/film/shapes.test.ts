import { expect, test } from 'vitest';
import { type Shape, shapeAreaM2 } from '../../../src/science/film/shapes';

// By hand from the formulas of plane and solid geometry.
const AREAS: readonly { readonly shape: Shape; readonly areaM2: number }[] = [
  { shape: { is: 'panel', lengthM: 0.5, widthM: 0.4 }, areaM2: 0.2 },
  { shape: { is: 'box', lengthM: 0.3, widthM: 0.2, heightM: 0.1 }, areaM2: 0.22 },
  { shape: { is: 'cylinder', diameterM: 2, heightM: 3 }, areaM2: 8 * Math.PI },
  { shape: { is: 'disc', diameterM: 2 }, areaM2: Math.PI },
  { shape: { is: 'sphere', diameterM: 2 }, areaM2: 4 * Math.PI },
];

test.each(AREAS)('a $shape.is has $areaM2 m2', ({ shape, areaM2 }) => {
  expect(shapeAreaM2(shape)).toBeCloseTo(areaM2, 12);
});
