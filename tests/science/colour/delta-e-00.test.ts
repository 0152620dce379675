import { differenceCiede2000 } from 'culori';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { colourDifference, deltaE00 } from '../../../src/science/colour/delta-e-00';
import type { Lab } from '../../../src/science/colour/lab';
import sharma from '../../reference/ciede2000-sharma.json';

const lab = ([L = 0, a = 0, b = 0]: readonly number[]): Lab<'D65/2'> => ({ white: 'D65/2', L, a, b });
const anyLab = fc
  .tuple(
    fc.double({ min: 0, max: 100, noNaN: true }),
    fc.double({ min: -60, max: 60, noNaN: true }),
    fc.double({ min: -60, max: 60, noNaN: true }),
  )
  .map(lab);

describe('deltaE00', () => {
  // G. Sharma, W. Wu, E. N. Dalal, Color Res. Appl. 30 (2005) 21-30, table 1.
  test.each(sharma.pairs)('Sharma 2005 pair $pair', ({ lab1, lab2, dE00 }) => {
    expect(Math.abs(deltaE00(lab(lab1), lab(lab2)) - dE00)).toBeLessThan(1e-4);
    expect(Math.abs(deltaE00(lab(lab2), lab(lab1)) - dE00)).toBeLessThan(1e-4);
  });

  test('covers the whole published table', () => {
    expect(sharma.pairs).toHaveLength(34);
  });

  test('agrees with an independent library on any pair', () => {
    const reference = differenceCiede2000();
    fc.assert(
      fc.property(anyLab, anyLab, (one, other) => {
        const { L: l1, ...ab1 } = one;
        const { L: l2, ...ab2 } = other;
        const expected = reference({ mode: 'lab65', l: l1, ...ab1 }, { mode: 'lab65', l: l2, ...ab2 });
        expect(deltaE00(one, other)).toBeCloseTo(deltaE00(other, one), 8);
        // A hue difference of exactly half a turn may be taken either way round: left to the published pair.
        if (Math.abs(halfTurn(one, other)) > 1e-6) expect(deltaE00(one, other)).toBeCloseTo(expected, 6);
      }),
      { numRuns: 300 },
    );
  });

  test('is nothing between a colour and itself', () => {
    fc.assert(fc.property(anyLab, (one) => deltaE00(one, one) === 0));
  });

  test('tells the parts with their signs', () => {
    // By the definition of CIELAB: higher L* is lighter, higher b* yellower, higher a* redder.
    const target = lab([86, 0, 15]);
    expect(colourDifference(lab([88, 0, 15]), target)).toMatchObject({ dC: 0, dH: 0 });
    expect(colourDifference(lab([88, 0, 15]), target).dL).toBeGreaterThan(0);
    expect(colourDifference(lab([86, 0, 17]), target).yellowward).toBeGreaterThan(0);
    expect(colourDifference(lab([86, 2, 15]), target).redward).toBeGreaterThan(0);
    expect(colourDifference(lab([86, -2, 15]), target).redward).toBeLessThan(0);
    // Grey has no hue: what is yellow against it is yellow alone, and the other way round.
    for (const [one, other] of [
      [
        [86, 0, 3],
        [86, 0, 0],
      ],
      [
        [86, 0, 0],
        [86, 0, 3],
      ],
    ] as const) {
      const { redward, yellowward, dE00 } = colourDifference(lab(one), lab(other));
      expect(redward).toBeCloseTo(0, 9);
      expect(Math.abs(yellowward)).toBeCloseTo(dE00, 9);
    }
  });

  test('will not compare colours under different whites', () => {
    const underD50: Lab<'D50/2'> = { white: 'D50/2', L: 50, a: 0, b: 0 };
    // @ts-expect-error a D50 Lab is not a D65 Lab
    expect(() => deltaE00(lab([50, 0, 0]), underD50)).toThrow(RangeError);
  });
});

/** Sine of the angle between the two chroma directions, near 0 when they point opposite ways. */
function halfTurn(one: Lab, other: Lab): number {
  const isOpposite = one.a * other.a + one.b * other.b < 0;
  const cross = one.a * other.b - one.b * other.a;
  return isOpposite ? cross : 1;
}
