import fc from 'fast-check';
import { expect, test } from 'vitest';
import { AXIS_MARKS_MS, alongAxis } from '../../../src/parts/time/axis';

const YEAR_MS = 365 * 86_400_000;

test('now, and what is past, lies at the left end; a year ahead at the right', () => {
  expect([alongAxis(0), alongAxis(-1), alongAxis(YEAR_MS), alongAxis(Number.POSITIVE_INFINITY)]).toEqual([
    0, 0, 1, 1,
  ]);
});

test('what comes later never lies further left', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0, max: YEAR_MS, noNaN: true }),
      fc.double({ min: 0, max: YEAR_MS, noNaN: true }),
      (a, b) => {
        expect(alongAxis(Math.max(a, b))).toBeGreaterThanOrEqual(alongAxis(Math.min(a, b)));
      },
    ),
  );
});

test('each mark has room for its words: at least 45 of 300 pixels from the one before, but for the first and last', () => {
  const at = AXIS_MARKS_MS.map((ms) => alongAxis(ms) * 300);
  const gaps = at.slice(1).map((x, i) => x - (at[i] ?? 0));
  expect(Math.min(...gaps)).toBeGreaterThan(40);
  expect(at.at(-1)).toBeLessThan(296);
});
