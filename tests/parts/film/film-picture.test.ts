import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  dropRadius,
  scaleStep,
  solventDrops,
  stackBands,
  wetness,
} from '../../../src/parts/film/film-picture';

const FRAME = { width: 200, woodTop: 220, perUm: 2 };
const layer = (key: string, dryUm: number, solventUm: number) => ({ key, label: key, dryUm, solventUm });

test('coats stand on the wood, each as thick as its dry film and its solvent, to scale', () => {
  // By hand: 10 + 0 um at 2 units a um, then 12 + 8 um.
  const bands = stackBands([layer('first', 10, 0), layer('second', 12, 8)], FRAME);
  expect(bands.map(({ top, foot }) => ({ top, foot }))).toEqual([
    { top: 200, foot: 220 },
    { top: 160, foot: 200 },
  ]);
});

test.each([
  { dryUm: 12, solventUm: 8, share: 0.4 },
  { dryUm: 10, solventUm: 0, share: 0 },
  { dryUm: 0, solventUm: 5, share: 1 },
  { dryUm: 0, solventUm: 0, share: 0 },
])('$dryUm um dry with $solventUm um solvent is $share wet', ({ dryUm, solventUm, share }) => {
  expect(wetness(layer('x', dryUm, solventUm))).toBeCloseTo(share, 12);
});

const thicknesses = fc.record({
  dryUm: fc.double({ min: 1, max: 60, noNaN: true }),
  solventUm: fc.double({ min: 0, max: 60, noNaN: true }),
});

test('every drop lies inside its own band', () => {
  fc.assert(
    fc.property(thicknesses, ({ dryUm, solventUm }) => {
      const [band] = stackBands([layer('x', dryUm, solventUm)], FRAME);
      if (!band) throw new Error('no band');
      const radius = dropRadius(band);
      for (const { x, y } of solventDrops(band, FRAME, 110)) {
        expect(x).toBeGreaterThanOrEqual(0);
        expect(x).toBeLessThanOrEqual(FRAME.width);
        expect(y - radius).toBeGreaterThanOrEqual(band.top - 1e-9);
        expect(y + radius).toBeLessThanOrEqual(band.foot + 1e-9);
      }
    }),
  );
});

test('a drop stands for the same amount of solvent everywhere, and a dry coat has none', () => {
  const dropsOf = (solventUm: number) =>
    solventDrops({ layer: layer('x', 30, solventUm), number: 0, top: 100, foot: 200, wetness: 0 }, FRAME, 100)
      .length;
  expect([0, 2.5, 5, 10].map(dropsOf)).toEqual([0, 10, 20, 40]); // um x 2 units x 200 wide / 100 a drop
});

// By hand: the largest of 1, 2, 5 x 10^n that goes three times into the span.
test.each([
  { spanUm: 150, umPerUnit: 1, value: 50, um: 50 },
  { spanUm: 149, umPerUnit: 1, value: 20, um: 20 },
  { spanUm: 40, umPerUnit: 1, value: 10, um: 10 },
  { spanUm: 152.4, umPerUnit: 25.4, value: 2, um: 50.8 },
  { spanUm: 50.8, umPerUnit: 25.4, value: 0.5, um: 12.7 },
])('a film of $spanUm um is marked every $value', ({ spanUm, umPerUnit, value, um }) => {
  const step = scaleStep(spanUm, umPerUnit);
  expect(step.value).toBe(value);
  expect(step.um).toBeCloseTo(um, 9);
});
