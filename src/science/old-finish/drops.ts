import type { OldClass } from './old-finish';
import { DWELL_S, SPOT_READINGS, type SpotReading, type SpotSolvent, type SpotTest } from './spot-tests';

type Answers = { readonly [R in SpotReading]: number };

/**
 * How often a film that behaves so gives each answer.
 * Source: the kinds of answer are common practice of furniture repair, no source; the shares are judgement.
 */
const BEHAVIOURS = {
  stays: { nothing: 0.86, dulls: 0.08, softens: 0.02, smooths: 0.01, dissolves: 0.01, wrinkles: 0.02 },
  hazes: { nothing: 0.45, dulls: 0.38, softens: 0.1, smooths: 0.02, dissolves: 0.02, wrinkles: 0.03 },
  swells: { nothing: 0.15, dulls: 0.2, softens: 0.32, smooths: 0.03, dissolves: 0.07, wrinkles: 0.23 },
  lifts: { nothing: 0.14, dulls: 0.12, softens: 0.18, smooths: 0.02, dissolves: 0.02, wrinkles: 0.52 },
  flows: { nothing: 0.04, dulls: 0.06, softens: 0.25, smooths: 0.33, dissolves: 0.29, wrinkles: 0.03 },
  'comes-off': { nothing: 0.05, dulls: 0.1, softens: 0.2, smooths: 0.05, dissolves: 0.57, wrinkles: 0.03 },
} as const satisfies Record<string, Answers>;
type Behaviour = keyof typeof BEHAVIOURS;

/**
 * How each class behaves under each drop.
 * Source: the order of solvents and the answers are common practice of furniture repair, no source.
 */
const UNDER: { readonly [F in OldClass]: { readonly [S in SpotSolvent]: Behaviour } } = {
  'wax-or-oil': {
    water: 'hazes',
    naphtha: 'comes-off',
    ethanol: 'hazes',
    xylene: 'comes-off',
    'lacquer-thinner': 'comes-off',
    acetone: 'comes-off',
  },
  shellac: {
    water: 'hazes',
    naphtha: 'stays',
    ethanol: 'comes-off',
    xylene: 'stays',
    'lacquer-thinner': 'swells',
    acetone: 'swells',
  },
  waterborne: {
    water: 'hazes',
    naphtha: 'stays',
    ethanol: 'swells',
    xylene: 'swells',
    'lacquer-thinner': 'swells',
    acetone: 'swells',
  },
  'solvent-lacquer': {
    water: 'stays',
    naphtha: 'stays',
    ethanol: 'hazes',
    xylene: 'stays',
    'lacquer-thinner': 'flows',
    acetone: 'flows',
  },
  'oil-varnish': {
    water: 'stays',
    naphtha: 'stays',
    ethanol: 'stays',
    xylene: 'hazes',
    'lacquer-thinner': 'lifts',
    acetone: 'lifts',
  },
  cured: {
    water: 'stays',
    naphtha: 'stays',
    ethanol: 'stays',
    xylene: 'stays',
    'lacquer-thinner': 'stays',
    acetone: 'hazes',
  },
};

/** One drop in ten is misread or falls on dirt, and then any answer is as likely as another (judgement, no source). */
const MISREAD = 0.1;

/** How likely the class gives this answer to a drop that is left its whole time. */
export const chanceOf = (finish: OldClass, solvent: SpotSolvent, reading: SpotReading): number =>
  (1 - MISREAD) * BEHAVIOURS[UNDER[finish][solvent]][reading] + MISREAD / SPOT_READINGS.length;

/** How likely the class gives this answer to this drop; a drop wiped off early that did nothing says only so much. */
export function chanceOfTest(finish: OldClass, { solvent, dwellS, reading }: SpotTest): number {
  const left = reading === 'nothing' ? Math.min(1, dwellS / DWELL_S[solvent]) : 1;
  return left * chanceOf(finish, solvent, reading) + (1 - left);
}
