import { finishTraits } from '../../estimator/finishes/traits';
import { redissolves } from '../../science/old-finish/classify';
import type { Facts } from '../facts';
import type { Rule } from '../reason';

/** Finishes whose solvents swell and lift an old paint; alcohol and water do not (common practice, no source). */
const STRONG = new Set(['nitrocellulose', 'acrylic', 'cab', 'precatalysed', 'conversion', 'urethane']);
const LIFTS = new Set(['oil-varnish', 'waterborne']);

/** An old finish that lacquer lifts: a barrier of dewaxed shellac first, or it comes off. */
export const baseLifts: Rule = {
  name: 'base-lifts',
  acts: ['coat', 'flash-coat'],
  source: 'practice',
  look(facts) {
    const { oldFinish, jar } = facts;
    const isStrong = jar === undefined || STRONG.has(jar.finish);
    if (!isOld(facts) || !isStrong || hasBarrier(facts)) return undefined;
    const sinceMs = oldFinish.knownMs;
    if (oldFinish.finish === 'wax-or-oil')
      return { weight: 'hold', says: 'baseRepels', clearedBy: 'spot-test', sinceMs };
    return LIFTS.has(oldFinish.finish)
      ? { weight: 'hold', says: 'baseLifts', clearedBy: 'barrier', sinceMs }
      : undefined;
  },
};

/** Nobody knows yet what lies under the first coat. */
export const baseUnknown: Rule = {
  name: 'base-unknown',
  acts: ['coat', 'flash-coat', 'promise'],
  source: 'practice',
  look: (facts) =>
    isOld(facts) && facts.coats.length === 0 && facts.oldFinish.finish === 'unknown'
      ? { weight: 'caution', says: 'baseUnknown', clearedBy: 'spot-test' }
      : undefined,
};

/** Silicone from polish makes fresh lacquer crawl. Shellac over it closes it off. */
export const silicone: Rule = {
  name: 'silicone',
  acts: ['coat', 'flash-coat'],
  source: 'practice',
  look: (facts) =>
    isOld(facts) && facts.oldFinish.signs.includes('polish') && !hasBarrier(facts)
      ? { weight: 'caution', says: 'silicone', clearedBy: 'barrier' }
      : undefined,
};

/** Thinner alone opens only what dissolves in it again: on everything else it does nothing, or harm. */
export const noMelt: Rule = {
  name: 'no-melt',
  acts: ['flash-coat'],
  source: 'practice',
  look(facts) {
    const { oldFinish, jar, coats, base } = facts;
    const newest = coats.findLast(({ how }) => how !== 'flash');
    const hasNothingToOpen = newest
      ? newest.finish !== undefined && !finishTraits(newest.finish).meltsIn
      : base === 'old-closed' || (oldFinish.finish !== 'unknown' && !redissolves(oldFinish.finish));
    const isOtherKind = jar !== undefined && !finishTraits(jar.finish).meltsIn;
    return hasNothingToOpen || isOtherKind
      ? { weight: 'hold', says: 'noMelt', clearedBy: 'spot-test', sinceMs: newest?.atMs ?? oldFinish.knownMs }
      : undefined;
  },
};

const isOld = ({ base }: Facts): boolean => base === 'old-closed' || base === 'old-redissolves';

/** Shellac over the old finish, which lacquer does not go through. */
const hasBarrier = ({ coats }: Facts): boolean => coats.some(({ finish }) => finish === 'shellac');
