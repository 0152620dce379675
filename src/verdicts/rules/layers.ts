import { finishTraits } from '../../estimator/finishes/traits';
import { HOUR_MS } from '../../units';
import { AWAITS } from '../act';
import type { CoatFact, Facts } from '../facts';
import { isSanded } from '../moments';
import type { Rule } from '../reason';
import { stageOf, USUAL_REMOVAL_M } from '../sanding';

/** Sanding reaches the colour, the old finish or the wood: told before it does. */
export const sandsThrough: Rule = {
  name: 'sands-through',
  acts: ['scuff', 'level-sand', 'rub-out'],
  source: 'practice',
  look({ above }, { act, removedM }) {
    const stage = stageOf(act);
    if (!above || !stage) return undefined;
    const { most } = USUAL_REMOVAL_M[stage];
    if (above.filmM >= (removedM ?? most)) return undefined;
    // What is usual is no measure: only what the person means to take off holds it.
    return {
      weight: removedM === undefined ? 'caution' : 'hold',
      says: SAYS[above.what],
      figures: { filmM: above.filmM, limitM: removedM ?? most },
    };
  },
};

const SAYS = { colour: 'throughColour', wood: 'throughWood', 'old-finish': 'throughOld' } as const;

/** Coats of one day bond without a scuff, where they do not melt into one another (common practice, no source). */
const ONE_DAY_MS = 12 * HOUR_MS;

/** A finish that does not melt in: scuffed between days, and cut through it shows where one coat ends. */
export const layersShow: Rule = {
  name: 'layers-show',
  acts: ['coat', 'level-sand', 'rub-out'],
  source: 'practice',
  look(facts, { act }) {
    const [before, last] = facts.coats.filter(({ how }) => how !== 'flash').slice(-2);
    const newest = last ?? before;
    if (!newest || meltsIn(newest)) return undefined;
    if (act !== 'coat')
      return last && before && last.atMs - before.atMs > ONE_DAY_MS
        ? { weight: 'caution', says: 'witnessLines' }
        : { weight: 'note', says: 'oneDay' };
    const isOfAnotherDay = facts.nowMs - newest.atMs > ONE_DAY_MS;
    return isOfAnotherDay && !isSanded(facts, 'scuff')
      ? { weight: 'caution', says: 'scuffFirst', clearedBy: 'scuff' }
      : undefined;
  },
};

const meltsIn = ({ finish }: CoatFact): boolean => finish === undefined || finishTraits(finish).meltsIn;

/** Out of the shop before it is hard down to the wood: with care, and for a date: the owner is told. */
export const stillSoft: Rule = {
  name: 'still-soft',
  acts: ['promise', 'hand-over'],
  source: 'estimate',
  look({ moments, nowMs, promisedMs }, { act, forMs }) {
    const until = moments.find(({ name }) => name === 'settled');
    const atMs = act === 'promise' ? (forMs ?? promisedMs ?? nowMs) : nowMs;
    if (!until || until.likelyMs <= atMs) return undefined;
    const isKnown = Number.isFinite(until.likelyMs);
    return {
      weight: 'caution',
      says: isKnown ? 'stillSoft' : 'softForLong',
      until,
      ...(isKnown && { figures: { atMs: until.likelyMs } }),
    };
  },
};

/** The date says ready, and nobody has tried it since the last coat. */
export const untried: Rule = {
  name: 'untried',
  acts: ['level-sand', 'rub-out'],
  source: 'practice',
  look(facts, { act }) {
    const moment = facts.moments.find(({ name }) => name === AWAITS[act]);
    const isNear = moment?.state === 'perhaps' || moment?.state === 'reached';
    return isNear && !isTried(facts, act === 'rub-out') ? { weight: 'note', says: 'untried' } : undefined;
  },
};

const isTried = ({ checks, coats }: Facts, isRubOut: boolean): boolean => {
  const lastMs = coats.at(-1)?.atMs ?? 0;
  const tests: readonly string[] = isRubOut ? ['print', 'gum', 'smell'] : ['print', 'gum'];
  return checks.some(
    ({ test, result, atMs }) => atMs >= lastMs && result === 'passes' && tests.includes(test),
  );
};
