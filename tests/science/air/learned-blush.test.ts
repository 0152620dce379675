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

test('one more blushed coat never lowers the limit, one more clear coat never raises it', () => {
  fc.assert(
    fc.property(fc.array(anySeen, { maxLength: 12 }), anySeen, (coats, more) => {
      const shift = learnedBlush([...coats, more]).limitK - learnedBlush(coats).limitK;
      expect(more.blushed ? shift : -shift).toBeGreaterThan(-1e-9);
    }),
    { numRuns: 60 },
  );
});
