import { DROP_GAP_MS } from '../../shop/zone/drop-fill';
import type { Rule } from '../reason';

/** The next drop into a fill waits for the one before, however soon the estimate lets a coat go on. */
export const dropWaits: Rule = {
  name: 'drop-waits',
  acts: ['coat'],
  source: 'practice',
  look({ coats, nowMs }) {
    const last = coats.at(-1);
    const atMs = (last?.atMs ?? 0) + DROP_GAP_MS;
    if (last?.how !== 'brush-fill' || atMs <= nowMs) return undefined;
    const until = { earliestMs: atMs, likelyMs: atMs, lateMs: atMs };
    return { weight: 'wait', says: 'dropWaits', until, figures: { atMs } };
  },
};
