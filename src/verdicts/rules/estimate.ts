import { AWAITS } from '../act';
import type { Rule } from '../reason';

const NEVER = { earliestMs: 0, likelyMs: Number.POSITIVE_INFINITY, lateMs: Number.POSITIVE_INFINITY };

/** The film is not there yet, by the drying model. Nothing is claimed while it is not worked out; where it cannot be, all is perhaps. */
export const estimate: Rule = {
  name: 'estimate',
  acts: ['coat', 'flash-coat', 'level-sand', 'rub-out', 'hand-over'],
  source: 'estimate',
  look({ clock, moments, nowMs }, { act }) {
    if (clock === 'no-coats') return undefined;
    if (clock === 'computing') return { weight: 'wait', says: 'computing' };
    if (clock === 'failed') return { weight: 'wait', says: 'notWorkedOut', until: NEVER };
    const until = moments.find(({ name, state }) => name === AWAITS[act] && state !== 'done');
    if (!until || until.likelyMs <= nowMs) return undefined;
    const isKnown = Number.isFinite(until.likelyMs);
    return {
      weight: 'wait',
      says: isKnown ? 'estimate' : 'estimateFar',
      until,
      ...(isKnown && { figures: { atMs: until.likelyMs } }),
    };
  },
};
