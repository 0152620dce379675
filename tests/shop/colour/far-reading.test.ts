import { describe, expect, test } from 'vitest';
import { deltaE00 } from '../../../src/science/colour/delta-e-00';
import type { Lab } from '../../../src/science/colour/lab';
import { FAR_E00, farReading } from '../../../src/shop/colour/far-reading';
import { MatchOnPaper, trialId, WHITE } from './a-match';

const lab = (L: number, a: number, b: number): Lab => ({ white: 'D65/10', L, a, b });
const match = new MatchOnPaper(['ochre'])
  .read({ as: 'target' }, [['86.5', '-0.6', '14.8']])
  .mix(1, [[WHITE, '200']])
  .read(1, [['88.9', '-1.1', '12.1']])
  .read(1, [['86.1', '-0.6', '16.6']], { clearCoats: 4 })
  .read({ as: 'toned', passes: 2 }, [['76', '10', '33']])
  .fold();
const trial = { of: { as: 'trial', trial: trialId(1) }, isDry: true } as const;
const far = (said: Parameters<typeof farReading>[1], ...labs: Lab[]) =>
  farReading(match, said, labs, 'D65/10');

describe('a reading far from what the surface read before is asked about', () => {
  test('95.5 after 88.9 is', () => {
    const found = far(trial, lab(95.5, -0.8, 2.2));
    expect(found?.before).toMatchObject({ L: 88.9 });
    expect(found?.dE00).toBeCloseTo(deltaE00(lab(95.5, -0.8, 2.2), lab(88.9, -1.1, 12.1)), 9);
  });

  test('one that scatters as readings do is not', () => {
    expect(far(trial, lab(88.7, -1.0, 12.3), lab(89.1, -1.1, 12.0))).toBeUndefined();
  });

  test.each([
    {
      what: 'under clear, against what it read under as much clear',
      said: { ...trial, clearCoats: 4 },
      asks: false,
    },
    { what: 'bare, against what it read bare', said: trial, asks: true },
    { what: 'wet, where it was never read wet', said: { ...trial, isDry: false }, asks: false },
    {
      what: 'of another trial',
      said: { ...trial, of: { as: 'trial', trial: trialId(2) } as const },
      asks: false,
    },
    { what: 'of the target', said: { of: { as: 'target' }, isDry: true } as const, asks: true },
    {
      what: 'after other passes',
      said: { of: { as: 'toned', passes: 3 }, isDry: true } as const,
      asks: false,
    },
    {
      what: 'after the same passes',
      said: { of: { as: 'toned', passes: 2 }, isDry: true } as const,
      asks: true,
    },
  ])('$what: $asks', ({ said, asks }) => {
    expect(far(said, lab(86.1, -0.6, 16.6)) !== undefined).toBe(asks);
  });

  test('so are new readings that disagree among themselves', () => {
    const card = { of: { as: 'card' }, isDry: true } as const;
    expect(far(card, lab(88.9, -1.1, 12.1), lab(95.5, -0.8, 2.2))).toMatchObject({ before: undefined });
    expect(far(card, lab(88.9, -1.1, 12.1))).toBeUndefined();
  });

  test('from three times the scatter of a single reading on', () => {
    // Along L* alone, at a neutral of L* 50, where S_L is 1: deltaE00 is the difference in L* (Sharma et al. 2005).
    const neutral = new MatchOnPaper(['ochre']).read({ as: 'target' }, [['50', '0', '0']]).fold();
    const of = { of: { as: 'target' }, isDry: true } as const;
    const at = (dL: number) => farReading(neutral, of, [lab(50 + dL, 0, 0)], 'D65/10');
    expect(FAR_E00).toBeGreaterThanOrEqual(3 * 0.3);
    expect(at(0.98)).toBeUndefined();
    expect(at(1.03)).toBeDefined();
  });
});
