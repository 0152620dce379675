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

const isOld = ({ base }: Facts): boolean => base === 'old-closed' || base === 'old-redissolves';

/** Shellac over the old finish, which lacquer does not go through. */
const hasBarrier = ({ coats }: Facts): boolean => coats.some(({ finish }) => finish === 'shellac');
