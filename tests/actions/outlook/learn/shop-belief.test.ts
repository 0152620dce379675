import { describe, expect, test } from 'vitest';
import { shopBelief, wordOf } from '../../../../src/actions/outlook/learn/shop-belief';
import { PRIOR, WEIGHED_AT } from '../../../../src/estimator/belief';

/** A piece whose checks alone say this mean, so precisely. */
const learned = (mean: number, own: number) => ({
  chances: WEIGHED_AT.map((x) => -0.5 * own * (x - mean) ** 2),
});
/** Nothing at all. */
const NOTHING = learned(0, 0);
/** A film that failed where it should pass half the time at `from`, and passed where it should at `to`: paper tells to 1.2 of the logarithm. */
const found = (from: number, to: number) => ({
  chances: WEIGHED_AT.map(
    (x) => -Math.log1p(Math.exp((x - from) / 1.2)) - Math.log1p(Math.exp((to - x) / 1.2)),
  ),
});

describe('the belief of a shop', () => {
  test('is none where no piece has learned anything', () => {
    expect(shopBelief([])).toBeUndefined();
    expect(shopBelief([NOTHING, NOTHING])).toBeUndefined();
  });

  // By hand: own precision 4 (spread 0.5) widened by 0.3 has variance 0.25 + 0.09, precision 2.941; the prior, a factor 2.5
  // either way in eight of ten, has spread ln 2.5/1.2816 = 0.71497 and precision 1.9563. Values beyond 1.8 are not weighed.
  test.each([
    { pieces: [learned(0.6, 4)], mean: (2.9412 * 0.6) / 4.8975, spread: 4.8975 ** -0.5 },
    { pieces: [learned(0.6, 4), NOTHING], mean: (2.9412 * 0.6) / 4.8975, spread: 4.8975 ** -0.5 },
    { pieces: [learned(0.6, 4), learned(0.2, 4)], mean: (2.9412 * 0.8) / 7.8386, spread: 7.8386 ** -0.5 },
    { pieces: [learned(0.6, 4), learned(-0.6, 4)], mean: 0, spread: 7.8386 ** -0.5 },
  ])('is a product of normals: $mean', ({ pieces, mean, spread }) => {
    const belief = shopBelief(pieces);
    expect(belief?.mean).toBeCloseTo(mean, 1);
    expect((belief?.spread ?? 0) / spread).toBeGreaterThan(0.96);
    expect((belief?.spread ?? 0) / spread).toBeLessThan(1.04);
  });

  // Found slow against all belief, one piece is hardly surer than before; six of them agree, and are more than six times as sure.
  test('six pieces found at the same slow end are sure of it together', () => {
    const slow = found(-1.6, -1);
    const [one, six] = [shopBelief([slow]), shopBelief(Array(6).fill(slow))];
    const gained = (belief: typeof one): number => (belief?.spread ?? 9) ** -2 - PRIOR.spread ** -2;
    expect(one?.spread).toBeGreaterThan(PRIOR.spread * 0.9);
    expect(gained(six)).toBeGreaterThan(6 * gained(one));
    expect(Math.exp(1.2816 * (six?.spread ?? 9))).toBeLessThan(2);
    expect(six?.mean).toBeLessThan((one?.mean ?? 0) * 2);
    expect(six?.mean).toBeGreaterThan(-1.3);
    const fast = shopBelief(Array(6).fill(found(1, 1.6)));
    expect(fast?.mean).toBeCloseTo(-(six?.mean ?? 0), 6);
    expect(fast?.spread).toBeCloseTo(six?.spread ?? 0, 6);
  });

  test('the further apart the less of it', () => {
    const at = (apart: number) => shopBelief([{ ...learned(-1.2, 4), apart }]);
    expect(at(0.8)?.mean).toBeGreaterThan((at(0.4)?.mean ?? 0) + 0.05);
    expect(at(0.8)?.spread).toBeGreaterThan((at(0.4)?.spread ?? 9) + 0.02);
  });

  test('however sure one piece is, the next may differ', () => {
    expect(shopBelief([learned(1, 1e5)])?.spread).toBeGreaterThan(0.27);
  });

  // A card of spread 0.3 has precision 11.1, of which 2.1 were believed before it; 0.1 apart, its word is of precision 9.0 / 1.09 = 8.26.
  test('a card says what it found beyond what was believed before it', () => {
    const belief = shopBelief([{ chances: wordOf({ mean: -0.4, spread: 0.3 }), apart: 0.1 / PRIOR.spread }]);
    expect(belief?.spread).toBeCloseTo((8.26 + 1.9563) ** -0.5, 2);
    expect(belief?.mean).toBeCloseTo((-0.4 * 11.1 * (8.26 / 9)) / 10.2, 1);
  });
});
