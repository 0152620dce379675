import { describe, expect, test } from 'vitest';
import { classifyOldFinish, redissolves } from '../../../src/science/old-finish/classify';
import {
  DWELL_S,
  SPOT_SOLVENTS,
  type SpotReading,
  type SpotSolvent,
} from '../../../src/science/old-finish/spot-tests';

const drops = (...all: readonly (readonly [SpotSolvent, SpotReading])[]) =>
  all.map(([solvent, reading]) => ({ solvent, reading, dwellS: DWELL_S[solvent] }));
const NO = 'nothing';

// Common practice of furniture repair, no source.
test.each([
  { of: drops(['naphtha', 'dissolves']), finish: 'wax-or-oil', confidence: 'fair' },
  { of: drops(['naphtha', NO], ['ethanol', 'dissolves']), finish: 'shellac', confidence: 'good' },
  {
    of: drops(['naphtha', NO], ['ethanol', NO], ['xylene', NO], ['lacquer-thinner', 'dissolves']),
    finish: 'solvent-lacquer',
    confidence: 'good',
  },
  {
    of: drops(['naphtha', NO], ['ethanol', 'softens'], ['xylene', NO], ['lacquer-thinner', 'dissolves']),
    finish: 'solvent-lacquer',
    confidence: 'good',
  },
  {
    of: drops(['naphtha', NO], ['ethanol', 'dulls'], ['xylene', 'softens'], ['lacquer-thinner', 'dissolves']),
    finish: 'waterborne',
    confidence: 'good',
  },
  {
    of: drops(['naphtha', NO], ['ethanol', NO], ['xylene', NO], ['lacquer-thinner', 'wrinkles']),
    finish: 'oil-varnish',
    confidence: 'good',
  },
  {
    of: drops(['naphtha', NO], ['ethanol', NO], ['xylene', NO], ['lacquer-thinner', NO], ['acetone', NO]),
    finish: 'cured',
    confidence: 'good',
  },
] as const)('$finish, $confidence', ({ of, finish, confidence }) => {
  expect(classifyOldFinish(of)).toMatchObject({ finish, confidence });
});

describe('unknown', () => {
  test('is a class: nothing tried, too little tried, drops that contradict each other', () => {
    expect(classifyOldFinish([])).toEqual({ finish: 'unknown', confidence: 'low', next: 'naphtha' });
    expect(classifyOldFinish(drops(['naphtha', NO]))).toMatchObject({ finish: 'unknown', next: 'ethanol' });
    const contradiction = drops(['naphtha', 'dissolves'], ['ethanol', 'dissolves']);
    expect(classifyOldFinish(contradiction)).toEqual({
      finish: 'unknown',
      confidence: 'low',
      next: undefined,
    });
  });

  test('does not re-dissolve: melt-in is offered for solvent lacquer alone', () => {
    expect(redissolves('unknown')).toBe(false);
    expect(redissolves('shellac')).toBe(false);
    expect(redissolves('solvent-lacquer')).toBe(true);
  });
});

test('a drop wiped off early that did nothing says nothing', () => {
  const early = [{ solvent: 'ethanol', reading: 'nothing', dwellS: 5 }] as const;
  expect(classifyOldFinish(early)).toEqual(classifyOldFinish([]));
});

test('the drops are offered weakest first', () => {
  const tried: SpotSolvent[] = [];
  for (let drop = 0; drop < 5; drop++) {
    const { next } = classifyOldFinish(drops(...tried.map((solvent) => [solvent, NO] as const)));
    if (next) tried.push(next);
  }
  expect(tried).toEqual(SPOT_SOLVENTS.filter((solvent) => solvent !== 'water').slice(0, tried.length));
  expect(tried.length).toBeGreaterThanOrEqual(4);
});
