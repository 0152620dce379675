import { describe, expect, test } from 'vitest';
import { OF_LACQUER, shopBelief } from '../../../src/actions/outlook/shop-belief';
import { beliefOf, PRIOR, weigh } from '../../../src/estimator/belief';

const NOTHING = beliefOf(weigh(PRIOR, [], []));
/** A piece whose own word is so precise, the estimator's default prior put back in. */
const learned = (mean: number, own: number) => {
  const precision = NOTHING.spread ** -2 + own;
  return { mean: (mean * own) / precision, spread: precision ** -0.5 };
};

describe('the belief of a shop', () => {
  test('is none where no piece has learned anything', () => {
    expect(shopBelief([], OF_LACQUER)).toBeUndefined();
    expect(shopBelief([NOTHING, NOTHING], OF_LACQUER)).toBeUndefined();
  });

  // By hand: own precision 4 (spread 0.5) widened by 0.3 has variance 0.25 + 0.09, precision 2.941; the prior, a factor 2.5
  // either way in eight of ten, has spread ln 2.5/1.2816 = 0.71497 and precision 1.9563.
  test.each([
    { pieces: [learned(0.6, 4)], mean: (2.9412 * 0.6) / 4.8975, spread: 4.8975 ** -0.5 },
    { pieces: [learned(0.6, 4), NOTHING], mean: (2.9412 * 0.6) / 4.8975, spread: 4.8975 ** -0.5 },
    { pieces: [learned(0.6, 4), learned(0.2, 4)], mean: (2.9412 * 0.8) / 7.8386, spread: 7.8386 ** -0.5 },
    { pieces: [learned(0.6, 4), learned(-0.6, 4)], mean: 0, spread: 7.8386 ** -0.5 },
  ])('is a product of normals: $mean', ({ pieces, mean, spread }) => {
    const belief = shopBelief(pieces, OF_LACQUER);
    expect(belief?.mean).toBeCloseTo(mean, 3);
    expect(belief?.spread).toBeCloseTo(spread, 3);
  });

  // One thin coat that should level after a day gummed the paper after 2, 4 and 6: that is so odd that its belief grew wider than it
  // was (a spread of 0.78 for 0.69), and such a piece taught nothing.
  test('a piece that was found against all belief speaks for that end, and makes nobody surer', () => {
    const belief = shopBelief([{ mean: -0.65, spread: 0.78 }], OF_LACQUER);
    // By hand: nothing is weighed beyond 1.8, so its word is 1.8 with the precision that moves a prior of 0.6861 by 0.65:
    // 2.1244 x 0.65/1.15 = 1.2008, widened by 0.3 to 1.0837; of 1.9563 beside it.
    expect(belief?.mean).toBeCloseTo((-1.8 * 1.0837) / (1.0837 + 1.9563), 3);
    expect(belief?.spread).toBeCloseTo(PRIOR.spread, 6);
    const passed = shopBelief([{ mean: 0.65, spread: 0.78 }], OF_LACQUER);
    expect(passed?.mean).toBeCloseTo(-(belief?.mean ?? 0), 6);
    const many = shopBelief(Array(50).fill({ mean: -0.65, spread: 0.78 }), OF_LACQUER);
    expect(many?.mean).toBeGreaterThan(-1.8);
  });

  test('the further apart the less of it, for a word against all belief too', () => {
    const at = (apart: number) => shopBelief([{ mean: -0.65, spread: 0.78, apart }], OF_LACQUER)?.mean ?? 0;
    expect(at(0.8)).toBeGreaterThan(at(0.4) + 0.05);
  });

  test('however sure one piece is, the next may differ', () => {
    expect(shopBelief([learned(1, 1e9)], OF_LACQUER)?.spread).toBeGreaterThan(0.27);
  });
});
