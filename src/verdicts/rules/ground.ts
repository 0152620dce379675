import type { Rule } from '../reason';

/** Filler, sealer or glue that is not through its wait: nothing goes on, nothing is sanded, nothing leaves the shop. */
export const groundWaits: Rule = {
  name: 'ground-waits',
  acts: ['coat', 'flash-coat', 'scuff', 'level-sand', 'rub-out', 'hand-over'],
  source: 'practice',
  look({ grounds, nowMs }) {
    const [last] = grounds
      .filter(({ until }) => until.likelyMs > nowMs)
      .sort((one, other) => other.until.likelyMs - one.until.likelyMs);
    if (!last) return undefined;
    const { ground, until, isSaid } = last;
    const figures = { atMs: until.likelyMs };
    return { weight: 'wait', says: ground, until, figures, ...(isSaid && { source: 'sheet' as const }) };
  },
};

/** Filler stands above the wood until it is sanded back, and shows under every coat. */
export const fillerProud: Rule = {
  name: 'filler-proud',
  acts: ['coat'],
  source: 'practice',
  look({ grounds, sandings, coats, nowMs }) {
    const lastCoatMs = coats.at(-1)?.atMs ?? 0;
    const filler = grounds.findLast(
      ({ ground, atMs }) => (ground === 'pore-filler' || ground === 'filler-paste') && atMs > lastCoatMs,
    );
    const isDry = filler !== undefined && filler.until.likelyMs <= nowMs;
    if (!isDry || sandings.some(({ atMs }) => atMs > filler.atMs)) return undefined;
    return { weight: 'caution', says: 'fillerProud', clearedBy: 'scuff' };
  },
};
