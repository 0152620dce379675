/** A 3x3 matrix, row by row. */
export type Matrix3 = readonly [Triple, Triple, Triple];
export type Triple = readonly [number, number, number];

/** The product of a 3x3 matrix and a triple. */
export function multiply([p, q, r]: Matrix3, [x, y, z]: Triple): Triple {
  return [p[0] * x + p[1] * y + p[2] * z, q[0] * x + q[1] * y + q[2] * z, r[0] * x + r[1] * y + r[2] * z];
}

/** The inverse of a 3x3 matrix, by its adjugate. */
export function inverse([p, q, r]: Matrix3): Matrix3 {
  const cross = (u: Triple, v: Triple): Triple => [
    u[1] * v[2] - u[2] * v[1],
    u[2] * v[0] - u[0] * v[2],
    u[0] * v[1] - u[1] * v[0],
  ];
  const c0 = cross(q, r);
  const c1 = cross(r, p);
  const c2 = cross(p, q);
  const determinant = p[0] * c0[0] + p[1] * c0[1] + p[2] * c0[2];
  const row = (i: 0 | 1 | 2): Triple => [c0[i] / determinant, c1[i] / determinant, c2[i] / determinant];
  return [row(0), row(1), row(2)];
}

/**
 * The solution x of A x = b for a small square system, or undefined when the system has none.
 * Source: Gaussian elimination with partial pivoting (any textbook). A and b are left as they are.
 */
export function solve(A: readonly (readonly number[])[], b: readonly number[]): number[] | undefined {
  const n = b.length;
  const rows = A.map((row, i) => [...row, b[i] ?? 0]);
  for (let column = 0; column < n; column++) {
    let pivot = column;
    for (let i = column + 1; i < n; i++)
      if (Math.abs(at(rows, i, column)) > Math.abs(at(rows, pivot, column))) pivot = i;
    [rows[column], rows[pivot]] = [rows[pivot] ?? [], rows[column] ?? []];
    const head = at(rows, column, column);
    if (!(Math.abs(head) > 1e-14)) return undefined;
    for (let i = column + 1; i < n; i++) {
      const factor = at(rows, i, column) / head;
      for (let k = column; k <= n; k++)
        (rows[i] as number[])[k] = at(rows, i, k) - factor * at(rows, column, k);
    }
  }
  const x = new Array<number>(n).fill(0);
  for (let i = n - 1; i >= 0; i--) {
    let rest = at(rows, i, n);
    for (let k = i + 1; k < n; k++) rest -= at(rows, i, k) * (x[k] ?? 0);
    x[i] = rest / at(rows, i, i);
  }
  return x;
}

const at = (rows: readonly (readonly number[])[], i: number, k: number): number => rows[i]?.[k] ?? 0;
