import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { inverse, type Matrix3, multiply, solve, type Triple } from '../../../src/science/colour/linear';

const times = (A: readonly (readonly number[])[], x: readonly number[]): number[] =>
  A.map((row) => row.reduce((sum, value, k) => sum + value * (x[k] ?? 0), 0));
const part = fc.double({ min: -1, max: 1, noNaN: true });

describe('a square system', () => {
  test.each([
    // Golub and Van Loan, Matrix Computations, 3.4: without a change of rows the first unknown comes out as 0.
    {
      why: 'a pivot next to nothing',
      A: [
        [1e-20, 1],
        [1, 2],
      ],
      b: [1, 4],
      x: [2, 1],
    },
    {
      why: 'a nought on the diagonal',
      A: [
        [0, 2, 0],
        [3, 0, 0],
        [0, 0, 4],
      ],
      b: [2, 6, -4],
      x: [2, 1, -1],
    },
  ])('with $why', ({ A, b, x }) => {
    const found = solve(A, b) ?? [];
    for (const [i, value] of x.entries()) expect(found[i]).toBeCloseTo(value, 12);
  });

  test.each([
    {
      why: 'two rows alike',
      A: [
        [1, 2],
        [2, 4],
      ],
    },
    {
      why: 'nothing at all',
      A: [
        [0, 0],
        [0, 0],
      ],
    },
  ])('with $why has no solution', ({ A }) => expect(solve(A, [1, 1])).toBeUndefined());

  test('is solved whatever its size, and left as it was', () => {
    // A row's own place outweighs the rest of it, so that a solution there is.
    const square = (n: number) =>
      fc.array(fc.array(part, { minLength: n, maxLength: n }), { minLength: n, maxLength: n });
    const system = fc.integer({ min: 1, max: 6 }).chain((n) => fc.tuple(square(n), square(n)));
    fc.assert(
      fc.property(system, ([drawn, [x = []]]) => {
        const n = drawn.length;
        // Turned by one row, so that the heavy places do not stand where they are wanted.
        const A = drawn.map((row, i) => row.map((value, k) => (k === (i + 1) % n ? value + n + 1 : value)));
        const b = times(A, x);
        const kept = structuredClone([A, b]);
        const found = solve(A, b) ?? [];
        for (let k = 0; k < n; k++) expect(found[k]).toBeCloseTo(x[k] as number, 9);
        expect([A, b]).toEqual(kept);
      }),
    );
  });
});

test('a matrix and its inverse undo each other', () => {
  const triple = fc.tuple(part, part, part);
  fc.assert(
    fc.property(triple, triple, triple, triple, (p, q, r, v) => {
      const matrix: Matrix3 = [
        [p[0] + 4, p[1], p[2]],
        [q[0], q[1] - 4, q[2]],
        [r[0], r[1], r[2] + 4],
      ];
      const back: Triple = multiply(inverse(matrix), multiply(matrix, v));
      for (const i of [0, 1, 2] as const) expect(back[i]).toBeCloseTo(v[i], 12);
    }),
  );
});
