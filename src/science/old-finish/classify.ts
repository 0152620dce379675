import { DWELL_S, SPOT_SOLVENTS, type SpotReading, type SpotSolvent, type SpotTest } from './spot-tests';

/** What an old finish may be; not knowing is one of the answers. */
const OLD_FINISHES = [
  'wax-or-oil',
  'shellac',
  'waterborne',
  'solvent-lacquer',
  'oil-varnish',
  'cured',
  'unknown',
] as const;
export type OldFinish = (typeof OLD_FINISHES)[number];

export type Confidence = 'low' | 'fair' | 'good';

export interface OldFinishFinding {
  readonly finish: OldFinish;
  readonly confidence: Confidence;
  /** The test to do next, if one could still tell. */
  readonly next: SpotSolvent | undefined;
}

type Answer = 'goes' | 'moves' | 'stays';
type Expected = { readonly [S in SpotSolvent]: readonly Answer[] };

const ANSWERS: { readonly [R in SpotReading]: Answer } = {
  nothing: 'stays',
  dulls: 'moves',
  softens: 'moves',
  wrinkles: 'moves',
  dissolves: 'goes',
};

const GOES = ['goes'] as const;
const STAYS = ['stays'] as const;
const NOT_GOES = ['stays', 'moves'] as const;
const NOT_STAYS = ['moves', 'goes'] as const;

/**
 * How each class answers each drop.
 * Source: the order of solvents and the answers are common practice of furniture repair, no source.
 */
const EXPECTED: { readonly [F in Exclude<OldFinish, 'unknown'>]: Expected } = {
  'wax-or-oil': {
    water: NOT_GOES,
    naphtha: NOT_STAYS,
    ethanol: NOT_GOES,
    xylene: NOT_STAYS,
    'lacquer-thinner': NOT_STAYS,
    acetone: NOT_STAYS,
  },
  shellac: {
    water: NOT_GOES,
    naphtha: STAYS,
    ethanol: GOES,
    xylene: STAYS,
    'lacquer-thinner': NOT_STAYS,
    acetone: NOT_STAYS,
  },
  waterborne: {
    water: NOT_GOES,
    naphtha: STAYS,
    ethanol: NOT_GOES,
    xylene: NOT_STAYS,
    'lacquer-thinner': NOT_STAYS,
    acetone: NOT_STAYS,
  },
  'solvent-lacquer': {
    water: STAYS,
    naphtha: STAYS,
    ethanol: NOT_GOES,
    xylene: STAYS,
    'lacquer-thinner': GOES,
    acetone: GOES,
  },
  'oil-varnish': {
    water: STAYS,
    naphtha: STAYS,
    ethanol: NOT_GOES,
    xylene: NOT_GOES,
    'lacquer-thinner': ['moves'],
    acetone: NOT_GOES,
  },
  cured: {
    water: STAYS,
    naphtha: STAYS,
    ethanol: STAYS,
    xylene: STAYS,
    'lacquer-thinner': STAYS,
    acetone: NOT_GOES,
  },
};
/** The drop that each class is known by. */
const TELLING: { readonly [F in Exclude<OldFinish, 'unknown'>]: SpotSolvent } = {
  'wax-or-oil': 'naphtha',
  shellac: 'ethanol',
  waterborne: 'xylene',
  'solvent-lacquer': 'lacquer-thinner',
  'oil-varnish': 'lacquer-thinner',
  cured: 'acetone',
};
const CLASSES = Object.keys(EXPECTED) as Exclude<OldFinish, 'unknown'>[];

/**
 * What an old finish is likely to be, from drops of solvent on a hidden spot, and which drop to try next.
 *
 * A class stays in play until a drop speaks against it. One class left, and its telling drop tried: good. One left without
 * it, or after a drop that was shorter than its time: fair. More than one: the likeliest is not named.
 * A drop that was wiped off early and did nothing says nothing.
 * Source: common practice, no source. Left out: mixtures, several layers, old age.
 */
export function classifyOldFinish(tests: readonly SpotTest[]): OldFinishFinding {
  const telling = tests.filter(
    ({ solvent, dwellS, reading }) => reading !== 'nothing' || dwellS >= DWELL_S[solvent],
  );
  const left = CLASSES.filter((finish) =>
    telling.every(({ solvent, reading }) => EXPECTED[finish][solvent].includes(ANSWERS[reading])),
  );
  const tried = new Set(telling.map(({ solvent }) => solvent));
  const [only] = left;
  if (only === undefined) return { finish: 'unknown', confidence: 'low', next: undefined };
  if (left.length > 1) {
    return { finish: 'unknown', confidence: 'low', next: nextDrop(left, tried) };
  }
  const isSure = tried.has(TELLING[only]) && tried.size > 1;
  return {
    finish: only,
    confidence: isSure ? 'good' : 'fair',
    next: isSure ? undefined : nextDrop([only], tried),
  };
}

/** The weakest drop not yet tried. */
function nextDrop(
  left: readonly Exclude<OldFinish, 'unknown'>[],
  tried: ReadonlySet<SpotSolvent>,
): SpotSolvent | undefined {
  const telling = new Set(left.map((finish) => TELLING[finish]));
  return SPOT_SOLVENTS.find(
    (solvent) => !tried.has(solvent) && solvent !== 'water' && (left.length > 1 || telling.has(solvent)),
  );
}

/** Whether a coat of solvent lacquer dissolves into this old finish, so that melt-in may be offered. */
export const redissolves = (finish: OldFinish): boolean => finish === 'solvent-lacquer';
