import { isSanded } from '../moments';
import type { Rule } from '../reason';

/** The recoat window of a finish that cures has closed: the next coat holds by its tooth alone, so it is scuffed first. */
export const windowClosed: Rule = {
  name: 'window-closed',
  acts: ['coat'],
  source: 'practice',
  look({ windowEnd, nowMs, coming, ...film }) {
    if (!windowEnd || nowMs < windowEnd.likelyMs || isSanded(film, 'scuff')) return undefined;
    const isScuffPlanned = coming.includes('scuff') && coming.indexOf('scuff') < coming.indexOf('coat');
    return {
      weight: isScuffPlanned ? 'caution' : 'hold',
      says: 'windowClosed',
      clearedBy: 'scuff',
      sinceMs: windowEnd.likelyMs,
    };
  },
};

/** A cured film that is built too high cracks. */
export const filmLimit: Rule = {
  name: 'film-limit',
  acts: ['coat', 'hand-over'],
  source: 'practice',
  look({ build, coats }, { act }) {
    if (!build) return undefined;
    const { totalDryM, nextDryM, limitM } = build;
    const isOver = totalDryM > limitM;
    if (act === 'hand-over')
      return isOver
        ? { weight: 'caution', says: 'filmOver', figures: { filmM: totalDryM, limitM } }
        : undefined;
    const filmM = totalDryM + nextDryM;
    if (filmM <= limitM) return undefined;
    const sinceMs = coats.at(-1)?.atMs;
    const says = isOver ? 'filmOver' : 'filmWouldBeOver';
    return { weight: 'hold', says, figures: { filmM: isOver ? totalDryM : filmM, limitM }, sinceMs };
  },
};
