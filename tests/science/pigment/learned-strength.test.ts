import { describe, expect, test } from 'vitest';
import { firstBelief, STRENGTH_DOUBT, tinterStrength } from '../../../src/science/pigment/belief';
import {
  KEPT,
  type LearnedStrength,
  learnedBelief,
  learnedStrength,
} from '../../../src/science/pigment/learned-strength';
import { EARTHS } from './hidden-pigments';
import { agedWhite, bench, match, TOLERANCE_E00 } from './simulated-finisher';

const TWICE: LearnedStrength = {
  mean: [Math.LN2, Math.LN2, Math.LN2],
  covariance: [
    [0.01, 0, 0],
    [0, 0.01, 0],
    [0, 0, 0.01],
  ],
};
const beliefWith = (kept: number) => learnedBelief([0.4, 0.4], [undefined, { learned: TWICE, kept }]);

describe('a lesson of a tinter that proved twice as strong', () => {
  test('kept whole, is the belief to start from, and the other tinter is as it was', () => {
    const belief = beliefWith(1);
    expect(tinterStrength(belief, 1).factor).toBeCloseTo(2, 9);
    expect(learnedStrength(belief, 1)).toEqual(TWICE);
    expect(learnedStrength(belief, 0)).toEqual(learnedStrength(firstBelief([0.4, 0.4]), 0));
  });

  test('forgotten, leaves nothing', () => {
    expect(beliefWith(0)).toEqual(firstBelief([0.4, 0.4]));
  });

  test('the less is kept of it, the nearer to what the tinter was taken for, and the less sure', () => {
    const seen = [1, 0.75, 0.5, 0.25].map((kept) => tinterStrength(beliefWith(kept), 1));
    for (const [i, { factor, doubt }] of seen.slice(1).entries()) {
      expect(factor).toBeLessThan(seen[i]?.factor ?? 0);
      expect(factor).toBeGreaterThan(1);
      expect(doubt).toBeGreaterThan(seen[i]?.doubt ?? 1);
    }
  });
});

/** Two matches in a row with tinters that are not what they are taken for; the second once more as if it were the first. */
function twoMatches(seed: number, most: number) {
  const own = bench(seed, 'usual');
  const first = match(own, agedWhite(own), most);
  const target = agedWhite(own);
  const lessons = EARTHS.map((_, t) => ({ learned: learnedStrength(first.belief, t), kept: KEPT.match }));
  const doubts = EARTHS.map(() => STRENGTH_DOUBT.generic);
  const second = match({ ...own, belief: learnedBelief(doubts, lessons) }, target, most);
  return { first, second, untaught: match(own, target, most) };
}

test('a finisher with somebody else’s draw-downs needs fewer trials for the second of 200 matches than for the first', () => {
  const runs = Array.from({ length: 200 }, (_, i) => twoMatches(i + 1, 8));
  const trials = (which: 'first' | 'second' | 'untaught'): number =>
    runs.reduce((sum, run) => sum + run[which].trial, 0) / runs.length;
  const reached = (which: 'first' | 'second' | 'untaught'): number =>
    runs.filter((run) => run[which].dE00 <= TOLERANCE_E00).length;
  // A bar of our own: half a trial less on average, and no more in most, as readings are noisy.
  expect(trials('second')).toBeLessThan(trials('first') - 0.5);
  expect(trials('second')).toBeLessThan(trials('untaught') - 0.5);
  expect(runs.filter(({ second, untaught }) => second.trial <= untaught.trial).length).toBeGreaterThan(170);
  // Fewer trials, and not by stopping too early.
  expect(reached('second')).toBeGreaterThanOrEqual(reached('untaught') - 4);
});
