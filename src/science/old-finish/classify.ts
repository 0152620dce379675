import { chanceOf, chanceOfTest } from './drops';
import { chanceOfLooks, type Looks } from './looks';
import { type ByClass, OLD_CLASSES, type OldFinish } from './old-finish';
import { SPOT_READINGS, SPOT_SOLVENTS, type SpotSolvent, type SpotTest } from './spot-tests';

/** How sure drops and looks make one; never certain. */
export type Odds = 'open' | 'perhaps' | 'likely' | 'very-likely';

export interface OldFinishFinding {
  /** The likeliest class; unknown where none is likelier than all others together. */
  readonly finish: OldFinish;
  readonly odds: Odds;
  /** The share of belief in each class; they add up to 1. */
  readonly shares: ByClass;
  /** The test to do next, if one could still tell. */
  readonly next: SpotSolvent | undefined;
}

/** How often each is met before anything was tried (judgement, no source). */
const MET: ByClass = {
  'wax-or-oil': 0.12,
  shellac: 0.2,
  waterborne: 0.08,
  'solvent-lacquer': 0.3,
  'oil-varnish': 0.2,
  cured: 0.1,
};
/** How sure it must be for each word (judgement, no source). */
const LEAST: readonly (readonly [Exclude<Odds, 'open'>, number])[] = [
  ['very-likely', 0.9],
  ['likely', 0.7],
  ['perhaps', 0.5],
];
/** How often all that was seen misleads: another hand's wax, a thin repair on the hidden spot (judgement). So nothing is ever certain. */
const MISLED = 0.02;
/** A drop that is expected to tell less than this is not worth a spot, nats (judgement). */
const WORTH_A_DROP = 0.08;

/**
 * What an old finish is likely to be, from drops of solvent on a hidden spot and from how it looks, and which drop to try next.
 *
 * Each class is weighed by how often it gives such answers, so that one odd drop shifts the odds and rules nothing out. Drops of one
 * solvent count as one drop of their mean, for they fall on the same film.
 * Source: common practice, no source. Left out: mixtures, what lies below the top layer.
 */
export function classifyOldFinish(
  tests: readonly SpotTest[],
  looks: Looks = { signs: [] },
): OldFinishFinding {
  const told = sharesOf((finish) => MET[finish] * chanceOfLooks(finish, looks) * chanceOfAll(finish, tests));
  const shares = sharesOf((finish) => (1 - MISLED) * told[finish] + MISLED * MET[finish]);
  const likeliest = OLD_CLASSES.reduce((best, finish) => (shares[finish] > shares[best] ? finish : best));
  const isAnything = tests.length > 0 || looks.uv !== undefined || looks.signs.length > 0;
  const odds = isAnything ? (LEAST.find(([, least]) => shares[likeliest] >= least)?.[0] ?? 'open') : 'open';
  return { finish: odds === 'open' ? 'unknown' : likeliest, odds, shares, next: nextDrop(shares, tests) };
}

function sharesOf(weight: (finish: keyof ByClass) => number): ByClass {
  const weights = OLD_CLASSES.map((finish) => [finish, weight(finish)] as const);
  const sum = weights.reduce((all, [, one]) => all + one, 0);
  return Object.fromEntries(weights.map(([finish, one]) => [finish, one / sum])) as ByClass;
}

function chanceOfAll(finish: keyof ByClass, tests: readonly SpotTest[]): number {
  return SPOT_SOLVENTS.reduce((chance, solvent) => {
    const own = tests.filter((test) => test.solvent === solvent);
    if (own.length === 0) return chance;
    const product = own.reduce((all, test) => all * chanceOfTest(finish, test), 1);
    return chance * product ** (1 / own.length);
  }, 1);
}

/** The weakest drop not yet tried from which enough is to be expected. Water is left out: it tells least and takes longest. */
function nextDrop(shares: ByClass, tests: readonly SpotTest[]): SpotSolvent | undefined {
  const tried = new Set(tests.map(({ solvent }) => solvent));
  return SPOT_SOLVENTS.find(
    (solvent) => solvent !== 'water' && !tried.has(solvent) && expected(shares, solvent) >= WORTH_A_DROP,
  );
}

/** By how much the doubt about the class is expected to shrink with a drop of this solvent, nats. */
function expected(shares: ByClass, solvent: SpotSolvent): number {
  const after = SPOT_READINGS.reduce((sum, reading) => {
    const joint = OLD_CLASSES.map((finish) => shares[finish] * chanceOf(finish, solvent, reading));
    const chance = joint.reduce((all, one) => all + one, 0);
    return sum + chance * doubt(joint.map((one) => one / chance));
  }, 0);
  return doubt(Object.values(shares)) - after;
}

const doubt = (shares: readonly number[]): number =>
  shares.reduce((sum, share) => sum - (share > 0 ? share * Math.log(share) : 0), 0);

/** Whether a coat of solvent lacquer dissolves into this old finish, so that melt-in may be offered. */
export const redissolves = (finish: OldFinish): boolean => finish === 'solvent-lacquer';
