import fc from 'fast-check';
import { expect, test } from 'vitest';
import { USUAL_BLUSH_LIMITS } from '../../../src/science/air/blush';
import { type BlushSeen, learnedBlush } from '../../../src/science/air/learned-blush';

const seen = (blushed: boolean, ...marginsK: number[]): BlushSeen[] =>
  marginsK.map((marginK) => ({ marginK, blushed }));
const anySeen = fc.record({ marginK: fc.double({ min: -2, max: 20, noNaN: true }), blushed: fc.boolean() });

test('the usual limits hold while nothing was seen', () => {
  expect(learnedBlush([]).limits).toEqual(USUAL_BLUSH_LIMITS);
});

test('blush at wide margins moves the limit up, clear coats at narrow ones down', () => {
  expect(learnedBlush(seen(true, 8, 8, 9)).limitK).toBeGreaterThan(7);
  expect(learnedBlush(seen(false, 3.5, 4, 3.5, 4)).limitK).toBeLessThan(4);
});

test('coats on both sides bring the limit between them', () => {
  const { limitK, spreadK } = learnedBlush([...seen(true, 6, 6.5, 7, 6), ...seen(false, 9, 9.5, 10, 9)]);
  expect(limitK).toBeGreaterThan(6.5);
  expect(limitK).toBeLessThan(9.2);
  expect(spreadK).toBeLessThan(1.2);
});

test('the floor of 3 K stays, and the limits stay in order', () => {
  fc.assert(
    fc.property(fc.array(anySeen, { minLength: 1, maxLength: 30 }), (coats) => {
      const { floorK, careK, easyK } = learnedBlush(coats).limits;
      expect(floorK).toBe(3);
      expect(careK).toBeGreaterThanOrEqual(floorK);
      expect(easyK).toBeGreaterThan(careK + 1.99);
    }),
    { numRuns: 60 },
  );
});

// 6 K while the limit is as unsure as before any coat (11 less 5 K, to 2 K), less as it gets surer, and never under 2 K.
test.each([
  { why: 'one clear coat far above it', coats: seen(false, 20), beyondK: 6 },
  { why: 'two on each side of it', coats: [...seen(true, 4, 5), ...seen(false, 6, 7)], beyondK: undefined },
  {
    why: 'thirty on each side of it',
    coats: [...seen(true, ...Array(30).fill(4)), ...seen(false, ...Array(30).fill(7))],
    beyondK: 2,
  },
])('it is easy from as far above the limit as that is unsure: $why', ({ coats, beyondK }) => {
  const { limits, spreadK } = learnedBlush(coats);
  expect(limits.easyK - limits.careK).toBeCloseTo(beyondK ?? 3 * spreadK, 1);
  if (beyondK === undefined) {
    expect(spreadK).toBeGreaterThan(0.8);
    expect(spreadK).toBeLessThan(1.6);
  }
});

test('coats on both sides make it as sure as a logistic of 1.5 K and a start of 2 K allow', () => {
  // Information of a logistic: p (1 - p) over its scale squared for each coat. 1.5 K off the middle p is 0.731: sixty of them and
  // the start have 60 x 0.1966/2.25 + 1/4 = 5.49 of it, so 0.43 K. The scale and the start are judgement, no source.
  const both = [...seen(true, ...Array(30).fill(3.5)), ...seen(false, ...Array(30).fill(6.5))];
  const { limitK, spreadK } = learnedBlush(both);
  expect(limitK).toBeCloseTo(5, 2);
  expect(Math.abs(spreadK - 0.43)).toBeLessThan(0.02);
});

test('one more blushed coat never lowers the limit, one more clear coat never raises it', () => {
  fc.assert(
    fc.property(fc.array(anySeen, { maxLength: 12 }), anySeen, (coats, more) => {
      const shift = learnedBlush([...coats, more]).limitK - learnedBlush(coats).limitK;
      expect(more.blushed ? shift : -shift).toBeGreaterThan(-1e-9);
    }),
    { numRuns: 60 },
  );
});
