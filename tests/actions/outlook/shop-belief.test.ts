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

  test('however sure one piece is, the next may differ', () => {
    expect(shopBelief([learned(1, 1e9)], OF_LACQUER)?.spread).toBeGreaterThan(0.27);
  });
});
