import type { Rule } from '../reason';

/**
 * Lead in an old opaque finish: no sanding and no promised date before a test; where it was found, none without a written reason.
 *
 * Source: common practice; old opaque finishes from before about 1980 are treated as lead until tested.
 */
export const lead: Rule = {
  name: 'lead',
  acts: ['scuff', 'level-sand', 'rub-out', 'promise', 'hand-over'],
  source: 'practice',
  look({ base, oldFinish: { sanding, leadMs, knownMs, isSeen } }, { act }) {
    const isOld = base === 'old-closed' || base === 'old-redissolves';
    if (sanding === 'any')
      return isOld && !isSeen && act !== 'hand-over'
        ? { weight: 'caution', says: 'leadUnasked', clearedBy: 'look' }
        : undefined;
    if (act === 'hand-over') return { weight: 'caution', says: 'leadTold' };
    const isFound = sanding === 'wet-only';
    return {
      weight: 'hold',
      says: isFound ? 'leadFound' : 'leadUntested',
      clearedBy: isFound ? 'lead-found' : 'lead-test',
      sinceMs: isFound ? leadMs : knownMs,
    };
  },
};
