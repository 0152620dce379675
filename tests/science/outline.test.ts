import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { alignment } from '../../src/science/align';
import { crosses, type OutlinePoint, thinned, within } from '../../src/science/outline';

const SQUARE: readonly OutlinePoint[] = [
  [0.2, 0.2],
  [0.8, 0.2],
  [0.8, 0.8],
  [0.2, 0.8],
];
const BOW = [SQUARE[0], SQUARE[2], SQUARE[1], SQUARE[3]] as readonly OutlinePoint[];

describe('an outline', () => {
  test('that crosses itself is told from one that does not', () => {
    expect(crosses(SQUARE)).toBe(false);
    expect(crosses(BOW)).toBe(true);
    expect(crosses(SQUARE.slice(0, 3))).toBe(false);
  });

  test('that touches itself at a corner does not cross', () => {
    const touching: OutlinePoint[] = [...SQUARE, [0.2, 0.5], [0.8, 0.5], [0.2, 0.4]];
    expect(crosses(touching)).toBe(false);
  });

  test.each<{ why: string; line: OutlinePoint[]; kept: number[] }>([
    {
      why: 'two points',
      line: [
        [0, 0],
        [1, 1],
      ],
      kept: [0, 1],
    },
    {
      why: 'a middle on the way',
      line: [
        [0, 0],
        [0.5, 0.5],
        [1, 1],
      ],
      kept: [0, 2],
    },
    {
      why: 'a middle off the way',
      line: [
        [0, 0],
        [0.5, 0.52],
        [1, 1],
      ],
      kept: [0, 1, 2],
    },
    {
      why: 'the way there and back',
      line: [
        [0, 0],
        [0.3, 0.4],
        [0, 0],
      ],
      kept: [0, 1, 2],
    },
    {
      why: 'a twitch of the finger',
      line: [
        [0, 0],
        [0.002, 0.002],
        [0, 0],
      ],
      kept: [0, 2],
    },
    {
      why: 'two corners between four points on the way',
      line: [
        [0, 0],
        [0.2, 0],
        [0.4, 0],
        [0.4, 0.3],
        [0.4, 0.6],
        [0.7, 0.6],
        [1, 0.6],
      ],
      kept: [0, 2, 4, 6],
    },
  ])('keeps of $why what its shape needs', ({ line, kept }) => {
    expect(thinned(line)).toEqual(kept.map((at) => line[at]));
  });

  test('is cut at the edge of the picture, and says so', () => {
    expect(within([...SQUARE, [1.4, -0.1]])).toEqual({ points: [...SQUARE, [1, 0]], isCut: true });
    expect(within(SQUARE)).toEqual({ points: SQUARE, isCut: false });
  });

  test.each<{ at: OutlinePoint; isCut: boolean }>([
    { at: [0, 1], isCut: false },
    { at: [1, 0], isCut: false },
    { at: [-0.01, 0.5], isCut: true },
    { at: [0.5, 1.01], isCut: true },
  ])('with a point at $at is cut: $isCut', ({ at, isCut }) => {
    expect(within([...SQUARE, at]).isCut).toBe(isCut);
  });

  test('keeps its corners and loses what lies between them', () => {
    const dense = SQUARE.flatMap(([x, y], i): OutlinePoint[] => {
      const [nx, ny] = SQUARE[(i + 1) % 4] as OutlinePoint;
      return Array.from({ length: 20 }, (_, n) => [x + ((nx - x) * n) / 20, y + ((ny - y) * n) / 20]);
    });
    const kept = thinned(dense);
    for (const corner of SQUARE) expect(kept).toContainEqual(corner);
    expect(kept.length).toBeLessThanOrEqual(6);
  });

  test('of many small wiggles keeps the large shape', () => {
    // A circle of 0.8 across with 300 wiggles of 0.005: they go, and the circle stays within their height.
    const wiggly = Array.from({ length: 600 }, (_, i): OutlinePoint => {
      const [angle, radius] = [(2 * Math.PI * i) / 600, 0.4 + (i % 2 ? 0.005 : -0.005)];
      return [0.5 + radius * Math.cos(angle), 0.5 + radius * Math.sin(angle)];
    });
    const kept = thinned(wiggly);
    expect(kept.length).toBeGreaterThan(8);
    expect(kept.length).toBeLessThanOrEqual(120);
  });

  test('of as many corners as may be keeps them all', () => {
    const corners = Array.from({ length: 120 }, (_, i): OutlinePoint => [i / 120, i % 2]);
    expect(thinned(corners)).toEqual(corners);
  });

  test('never has more points than are kept of one', () => {
    const anyPoints = fc.array(
      fc.tuple(fc.double({ min: 0, max: 1, noNaN: true }), fc.double({ min: 0, max: 1, noNaN: true })),
      {
        minLength: 1,
        maxLength: 600,
      },
    );
    fc.assert(
      fc.property(anyPoints, (points) => {
        expect(thinned(points).length).toBeLessThanOrEqual(120);
      }),
    );
  });
});

describe('two pictures laid over each other', () => {
  const coordinate = fc.double({ min: 0, max: 4000, noNaN: true });
  const place = fc.tuple(coordinate, coordinate);

  test('meet in both marks', () => {
    fc.assert(
      fc.property(place, place, place, place, (o1, o2, u1, u2) => {
        fc.pre(Math.hypot(o1[0] - o2[0], o1[1] - o2[1]) > 1 && Math.hypot(u1[0] - u2[0], u1[1] - u2[1]) > 1);
        const laid = alignment([o1, o2], [u1, u2]) ?? expect.unreachable();
        for (const [[x, y], [tx, ty]] of [
          [o1, u1],
          [o2, u2],
        ] as const) {
          expect(laid.a * x - laid.b * y + laid.e).toBeCloseTo(tx, 3);
          expect(laid.b * x + laid.a * y + laid.f).toBeCloseTo(ty, 3);
        }
      }),
    );
  });

  test('that lie alike are not moved, slanting marks or not', () => {
    for (const [x, y] of [
      [5, 5],
      [5, -5],
      [0, 7],
      [7, 0],
    ] as const) {
      const marks = [
        [0, 0],
        [x, y],
      ] as const;
      expect(alignment(marks, marks)).toEqual({ a: 1, b: expect.closeTo(0, 12), e: 0, f: 0 });
    }
  });

  test('cannot be laid by two marks in one place', () => {
    expect(
      alignment(
        [
          [1, 1],
          [1, 1],
        ],
        [
          [0, 0],
          [5, 5],
        ],
      ),
    ).toBeUndefined();
    expect(
      alignment(
        [
          [0, 0],
          [5, 5],
        ],
        [
          [1, 1],
          [1, 1],
        ],
      ),
    ).toBeUndefined();
  });
});
