import { describe, expect, test } from 'vitest';
import { deltaE00 } from '../../../src/science/colour/delta-e-00';
import {
  afterAddition,
  afterReading,
  afterTrials,
  colourVariance,
  expectedColour,
  firstBelief,
  tinterStrength,
} from '../../../src/science/pigment/belief';
import { corrected, mixColour } from '../../../src/science/pigment/colour-model';
import { BLACK, belief, model, OCHRE, only, paints, WHITE_JAR } from './earth-bench';
import { EARTHS } from './hidden-pigments';

test('the doubt of a strength is that of three bands which go together in part', () => {
  // Variance of a mean of three that correlate by 0.3 (judgement): (1 + 2 x 0.3)/3 of one.
  expect(tinterStrength(firstBelief([0.2, 0.1]), 1).doubt).toBeCloseTo(0.1 * Math.sqrt(1.6 / 3), 9);
});

describe('a trial corrects the prediction', () => {
  const jar = { whiteGrams: 200, tinterGrams: only(BLACK, 1) };
  // The black in the jar is really 30 % stronger than drawn down.
  const truth = mixColour(
    corrected(model, [...new Array<number>(12).fill(0), ...new Array<number>(3).fill(Math.log(1.3))]),
    jar,
  );
  const learnt = afterReading(model, afterAddition(firstBelief(EARTHS.map(() => 0.3))), jar, truth, 0.15);

  test('the strength moves most of the way, and is surer than before', () => {
    const before = tinterStrength(firstBelief(EARTHS.map(() => 0.3)), BLACK);
    const after = tinterStrength(learnt, BLACK);
    expect(before).toMatchObject({ factor: 1 });
    expect(after.factor).toBeGreaterThan(1.2);
    expect(after.factor).toBeLessThan(1.35);
    expect(after.doubt).toBeLessThan(before.doubt / 2);
    expect(deltaE00(expectedColour(model, learnt, jar), truth)).toBeLessThan(0.2);
  });

  test('a row of trials is the same one by one', () => {
    const base = { jar: WHITE_JAR, reading: paints.colour(WHITE_JAR), readingSd: 0.15 };
    const row = afterTrials(model, belief, [base, { jar, reading: truth, readingSd: 0.15 }]);
    const first = afterReading(model, belief, WHITE_JAR, base.reading, 0.15);
    expect(row).toEqual(afterReading(model, afterAddition(first), jar, truth, 0.15));
  });

  test('what was not in the jar is believed as before', () => {
    expect(tinterStrength(learnt, OCHRE)).toEqual(tinterStrength(firstBelief(EARTHS.map(() => 0.3)), OCHRE));
  });

  test('an untinted jar that reads off teaches the jar’s own offset: one reading against one belief', () => {
    // Kalman 1960 for a single quantity; 0.25 in L*, a* and b* is what the model may be off at first (judgement).
    const [own, read] = [0.25 ** 2, 0.15 ** 2];
    const expected = expectedColour(model, belief, WHITE_JAR);
    const reading = { ...expected, L: expected.L + 0.3, b: expected.b - 0.2 };
    const after = afterReading(model, belief, WHITE_JAR, reading, 0.15);
    const now = expectedColour(model, after, WHITE_JAR);
    const moved = [now.L - expected.L, now.a - expected.a, now.b - expected.b];
    for (const [i, off] of [0.3, 0, -0.2].entries())
      expect(moved[i]).toBeCloseTo((off * own) / (own + read), 9);
    for (const variance of colourVariance(model, after, WHITE_JAR))
      expect(variance).toBeCloseTo((own * read) / (own + read), 9);
    // An addition may move the model's error by 0.2 (judgement).
    for (const variance of colourVariance(model, afterAddition(after), WHITE_JAR))
      expect(variance).toBeCloseTo((own * read) / (own + read) + 0.2 ** 2, 9);
  });

  test('an addition may move the model’s error in each of L*, a* and b* apart, and no strength', () => {
    const moved = afterAddition(learnt).covariance;
    const own = moved.length - 3;
    for (const [i, row] of moved.entries())
      for (const [k, value] of row.entries())
        expect(value - (learnt.covariance[i]?.[k] ?? 0)).toBeCloseTo(i === k && i >= own ? 0.2 ** 2 : 0, 12);
  });

  test('a reading as expected leaves what was learnt as it is', () => {
    const same = afterReading(model, learnt, jar, expectedColour(model, learnt, jar), 0.15);
    for (const [i, value] of same.mean.entries()) expect(value).toBeCloseTo(learnt.mean[i] ?? 9, 9);
  });

  test('a reading as expected changes nothing but the doubt', () => {
    const expected = expectedColour(model, belief, jar);
    const same = afterReading(model, belief, jar, expected, 0.15);
    for (const value of same.mean) expect(value).toBeCloseTo(0, 9);
    expect(tinterStrength(same, BLACK).doubt).toBeLessThan(0.1);
  });
});
