import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { classifyOldFinish, redissolves } from '../../../src/science/old-finish/classify';
import { chanceOfLooks, type Looks } from '../../../src/science/old-finish/looks';
import { OLD_CLASSES } from '../../../src/science/old-finish/old-finish';
import { UV_LOOKS } from '../../../src/science/old-finish/signs';
import {
  DWELL_S,
  SPOT_READINGS,
  SPOT_SOLVENTS,
  type SpotReading,
  type SpotSolvent,
} from '../../../src/science/old-finish/spot-tests';

const drops = (...all: readonly (readonly [SpotSolvent, SpotReading])[]) =>
  all.map(([solvent, reading]) => ({ solvent, reading, dwellS: DWELL_S[solvent] }));
const NO = 'nothing';

// What each is known by: common practice of furniture repair, no source. The words of the odds are judgement.
test.each<{ of: ReturnType<typeof drops>; looks?: Looks; finish: string; odds: string }>([
  { of: drops(['naphtha', 'dissolves']), finish: 'wax-or-oil', odds: 'likely' },
  { of: drops(['naphtha', NO], ['ethanol', 'dissolves']), finish: 'shellac', odds: 'likely' },
  {
    of: drops(['naphtha', NO], ['ethanol', NO], ['xylene', NO], ['lacquer-thinner', 'dissolves']),
    finish: 'solvent-lacquer',
    odds: 'likely',
  },
  {
    of: drops(['naphtha', NO], ['ethanol', 'dulls'], ['lacquer-thinner', 'smooths']),
    looks: { isOpaque: false, uv: 'greenish-yellow', signs: [] },
    finish: 'solvent-lacquer',
    odds: 'very-likely',
  },
  // Three honest drops on an old lacquer: it is never oil varnish.
  {
    of: drops(['naphtha', NO], ['ethanol', 'dulls'], ['lacquer-thinner', 'softens']),
    finish: 'solvent-lacquer',
    odds: 'perhaps',
  },
  {
    of: drops(
      ['naphtha', NO],
      ['ethanol', 'softens'],
      ['xylene', 'softens'],
      ['lacquer-thinner', 'wrinkles'],
    ),
    finish: 'waterborne',
    odds: 'perhaps',
  },
  {
    of: drops(['naphtha', NO], ['ethanol', NO], ['lacquer-thinner', 'wrinkles']),
    finish: 'oil-varnish',
    odds: 'likely',
  },
  {
    of: drops(['naphtha', NO], ['ethanol', NO], ['lacquer-thinner', 'wrinkles']),
    looks: { isOpaque: true, signs: [], madeAbout: 1935 },
    finish: 'oil-varnish',
    odds: 'very-likely',
  },
  {
    of: drops(['naphtha', NO], ['ethanol', NO], ['xylene', NO], ['lacquer-thinner', NO], ['acetone', NO]),
    finish: 'cured',
    odds: 'very-likely',
  },
])('$finish, $odds', ({ of, looks, finish, odds }) => {
  expect(classifyOldFinish(of, looks)).toMatchObject({ finish, odds });
});

describe('unknown', () => {
  test('is an answer: nothing tried, too little tried, drops that contradict each other', () => {
    expect(classifyOldFinish([])).toMatchObject({ finish: 'unknown', odds: 'open', next: 'naphtha' });
    expect(classifyOldFinish(drops(['naphtha', NO]))).toMatchObject({ finish: 'unknown', next: 'ethanol' });
    const contradiction = drops(['naphtha', 'dissolves'], ['ethanol', 'dissolves']);
    expect(classifyOldFinish(contradiction)).toMatchObject({ finish: 'unknown', odds: 'open' });
  });

  test.each<{ looks: Looks; finish: string }>([
    { looks: { signs: [], isOpaque: true, madeAbout: 1900 }, finish: 'unknown' }, // a guess from age alone
    { looks: { signs: [], uv: 'orange' }, finish: 'shellac' },
    { looks: { signs: ['oily-smell'], isOpaque: true, madeAbout: 1900 }, finish: 'oil-varnish' },
  ])('is the answer until something was looked for: $looks', ({ looks, finish }) => {
    expect(classifyOldFinish([], looks).finish).toBe(finish);
  });

  test('does not re-dissolve: melt-in is offered for solvent lacquer alone', () => {
    expect(redissolves('unknown')).toBe(false);
    expect(redissolves('shellac')).toBe(false);
    expect(redissolves('solvent-lacquer')).toBe(true);
  });
});

describe('evidence', () => {
  const LACQUER = drops(
    ['naphtha', NO],
    ['ethanol', 'dulls'],
    ['lacquer-thinner', 'smooths'],
    ['acetone', 'dissolves'],
  );

  test('one odd drop shifts the odds and rules nothing out', () => {
    const odd = [...LACQUER.slice(1), ...drops(['naphtha', 'softens'])];
    expect(classifyOldFinish(odd).finish).toBe('solvent-lacquer');
    expect(classifyOldFinish(odd).shares['solvent-lacquer']).toBeLessThan(
      classifyOldFinish(LACQUER).shares['solvent-lacquer'],
    );
  });

  const anyDrop = fc.record({
    solvent: fc.constantFrom(...SPOT_SOLVENTS),
    reading: fc.constantFrom(...SPOT_READINGS),
    dwellS: fc.integer({ min: 0, max: 1200 }),
  });

  test('of drops alone is never certain, whatever they say, and its shares add up', () => {
    fc.assert(
      fc.property(fc.array(anyDrop, { maxLength: 12 }), (tests) => {
        const shares = Object.values(classifyOldFinish(tests).shares);
        expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 9);
        for (const share of shares) expect(share).toBeGreaterThan(0);
        expect(Math.max(...shares)).toBeLessThan(0.995);
      }),
      { numRuns: 500 },
    );
  });

  test('does not hang on the order of the drops', () => {
    fc.assert(
      fc.property(fc.array(anyDrop, { maxLength: 8 }), (tests) => {
        const { shares } = classifyOldFinish(tests);
        const turned = classifyOldFinish(tests.toReversed()).shares;
        for (const finish of Object.keys(shares) as (keyof typeof shares)[])
          expect(turned[finish]).toBeCloseTo(shares[finish], 9);
      }),
    );
  });

  test('of one solvent counts once: the same drop on the same film again adds nothing', () => {
    const again = [...LACQUER, ...drops(['ethanol', 'dulls'])];
    expect(classifyOldFinish(again).shares['shellac']).toBeCloseTo(
      classifyOldFinish(LACQUER).shares['shellac'],
      9,
    );
  });

  test('of age: before 1920 a lacquer would be a later coat', () => {
    const of = (madeAbout: number) => classifyOldFinish(LACQUER.slice(0, 3), { signs: [], madeAbout });
    expect(of(1900).shares['solvent-lacquer']).toBeLessThan(of(1930).shares['solvent-lacquer']);
    expect(of(1920)).toEqual(of(1930));
  });
});

test('a drop wiped off early that did nothing says the less, the earlier', () => {
  const shellacAfter = (dwellS: number) =>
    classifyOldFinish([{ solvent: 'ethanol', reading: NO, dwellS }]).shares.shellac;
  expect(shellacAfter(0)).toBeCloseTo(classifyOldFinish([]).shares.shellac, 9);
  expect(shellacAfter(30)).toBeLessThan(shellacAfter(5));
  expect(shellacAfter(60)).toBeLessThan(shellacAfter(30));
});

test('the drops are offered weakest first, and water not at all', () => {
  const tried: SpotSolvent[] = [];
  for (let drop = 0; drop < 5; drop++) {
    const { next } = classifyOldFinish(drops(...tried.map((solvent) => [solvent, NO] as const)));
    if (next) tried.push(next);
  }
  expect(tried).toEqual(SPOT_SOLVENTS.filter((solvent) => solvent !== 'water').slice(0, tried.length));
  expect(tried.length).toBeGreaterThanOrEqual(4);
});

// Xylene does alike to shellac and to lacquer, so it is passed over where it is between those two (shares are judgement, no source).
test.each([
  { of: drops(['naphtha', NO], ['ethanol', 'dissolves']), next: 'lacquer-thinner' },
  { of: drops(['naphtha', NO], ['ethanol', NO], ['lacquer-thinner', 'smooths']), next: 'acetone' },
  { of: drops(['naphtha', NO], ['ethanol', 'dissolves'], ['lacquer-thinner', NO]), next: undefined },
])('the next drop is the weakest that can still tell: $next', ({ of, next }) => {
  expect(classifyOldFinish(of).next).toBe(next);
});

test('no further drop is asked for once it is clear', () => {
  expect(
    classifyOldFinish(
      drops(['naphtha', NO], ['ethanol', NO], ['lacquer-thinner', 'smooths'], ['acetone', 'dissolves']),
    ).next,
  ).toBeUndefined();
});

test.each(OLD_CLASSES)('%s is opaque or is not, and glows in one way', (finish) => {
  const sum = (some: readonly Omit<Looks, 'signs'>[]): number =>
    some.reduce((total, looks) => total + chanceOfLooks(finish, { ...looks, signs: [] }), 0);
  expect(sum([{ isOpaque: true }, { isOpaque: false }])).toBeCloseTo(1, 12);
  expect(sum(UV_LOOKS.map((uv) => ({ uv })))).toBeCloseTo(1, 12);
});
