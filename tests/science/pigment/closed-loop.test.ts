import { describe, expect, test } from 'vitest';
import { agedWhite, bench, match, TOLERANCE_E00 } from './simulated-finisher';

describe('a simulated finisher with hidden pigments, a scale of 0.01 g and reading noise 0.15', () => {
  test('reaches deltaE00 0.7 in at most four trials in 95 of 100 aged whites', () => {
    const runs = Array.from({ length: 500 }, (_, i) => {
      const own = bench(i + 1, 'own');
      return match(own, agedWhite(own));
    });
    // Counted only when the app said to stop by itself, and the true colour (which it never sees) is within.
    const reached = runs.filter(({ said, dE00 }) => said.kind === 'stop' && dE00 <= TOLERANCE_E00);
    expect(reached.length / runs.length).toBeGreaterThanOrEqual(0.95);
    expect(Math.max(...runs.map(({ trial }) => trial))).toBeLessThanOrEqual(4);
  });

  test('still gets there in most cases with draw-downs of somebody else’s pigments', () => {
    const runs = Array.from({ length: 100 }, (_, i) => {
      const usual = bench(i + 1, 'usual');
      return match(usual, agedWhite(usual));
    });
    // A bar of our own, well under what the person's own draw-downs must give.
    expect(runs.filter(({ dE00 }) => dE00 <= TOLERANCE_E00).length / runs.length).toBeGreaterThanOrEqual(0.8);
  });

  test.each([
    { why: 'lighter than the base', from: { L: 97.5, a: -0.5, b: 4 }, left: 'dark' },
    { why: 'greener than any earth', from: { L: 85, a: -8, b: 14 }, left: 'red' },
    { why: 'bluer than any earth', from: { L: 86, a: -1, b: -8 }, left: 'yellow' },
  ])('is told so when the target is $why', ({ from, left }) => {
    for (let seed = 1; seed <= 30; seed++) {
      const { said, trial } = match(bench(seed, 'own'), { white: 'D65/10', ...from });
      expect(said.kind).toBe('out-of-reach');
      expect(trial).toBeLessThanOrEqual(1);
      const remarks = said.kind === 'out-of-reach' ? said.left : [];
      expect(remarks.map(({ direction }) => direction)).toContain(left);
    }
  });
});
