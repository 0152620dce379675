import { FINISH_LAWS, isCuring } from '../../estimator/finishes/finish-law';
import { saturationPressurePa } from '../../science/air/saturation';
import { toCelsius, toKelvin } from '../../units';
import type { Facts } from '../facts';
import type { Rule } from '../reason';

/** Solvent lacquers are sprayed from here on (common practice, no source); a finish that cures has a limit of its own. */
const LACQUER_FROM_K = toKelvin(15);

const shopOf = (finish: string) =>
  isCuring(finish) ? FINISH_LAWS[finish].shop : { lowestK: LACQUER_FROM_K };

const highestHumidity = (jar: Facts['jar']): number | undefined => {
  const shop: { readonly highestHumidity?: number } = jar ? shopOf(jar.finish) : {};
  return shop.highestHumidity;
};

/** Too cold for the finish: now, or overnight by the forecast. A film that cures in the cold may never form. */
export const tooCold: Rule = {
  name: 'too-cold',
  acts: ['coat'],
  source: 'practice',
  look({ air: { now, nightK }, jar }) {
    if (!jar) return undefined;
    const limitK = shopOf(jar.finish).lowestK;
    if (now && now.temperatureK < limitK)
      return {
        weight: isCuring(jar.finish) ? 'wait' : 'caution',
        says: 'tooCold',
        clearedBy: 'air',
        figures: { temperatureK: now.temperatureK, limitK },
      };
    return nightK !== undefined && nightK < limitK
      ? { weight: 'caution', says: 'coldNight', clearedBy: 'air', figures: { temperatureK: nightK, limitK } }
      : undefined;
  },
};

/** Water does not leave into air that is full of it. */
export const tooDamp: Rule = {
  name: 'too-damp',
  acts: ['coat'],
  source: 'practice',
  look({ air: { now }, jar }) {
    const limitShare = highestHumidity(jar);
    if (!now || limitShare === undefined || now.humidity <= limitShare) return undefined;
    return {
      weight: 'wait',
      says: 'tooDamp',
      clearedBy: 'air',
      figures: { share: now.humidity, limitShare },
    };
  },
};

/** The air of now, cooled to the forecast's night with the water that is in it: damper than this finish wants while it dries. */
export const dampNight: Rule = {
  name: 'damp-night',
  acts: ['coat'],
  source: 'practice',
  look({ air: { now, nightK }, jar }) {
    const limitShare = highestHumidity(jar);
    if (!now || nightK === undefined || limitShare === undefined || now.humidity > limitShare)
      return undefined;
    const held = now.humidity * saturationPressurePa(toCelsius(now.temperatureK));
    const share = Math.min(1, held / saturationPressurePa(toCelsius(nightK)));
    if (share <= limitShare) return undefined;
    return {
      weight: 'caution',
      says: 'dampNight',
      clearedBy: 'air',
      figures: { temperatureK: nightK, share, limitShare },
    };
  },
};

/** The film cools below the dew point as its solvents leave, and turns white. Of solvent finishes only. */
export const blush: Rule = {
  name: 'blush',
  acts: ['coat', 'flash-coat'],
  source: 'estimate',
  look({ air: { blush: outlook } }) {
    if (outlook === 'blushes') return { weight: 'wait', says: 'blushes', clearedBy: 'air' };
    return outlook === 'may-blush' ? { weight: 'caution', says: 'mayBlush', clearedBy: 'air' } : undefined;
  },
};

/** Wood moves faster than a hard film: warmed from the cold at once, lacquer checks (common practice, no source). */
const SHOCK_K = 6;

/** A film that stood in the cold is warmed gradually before it is worked on, and kept in its case when it travels. */
export const coldShock: Rule = {
  name: 'cold-shock',
  acts: ['level-sand', 'rub-out', 'hand-over'],
  source: 'practice',
  look({ air: { coldestK, nightK }, sandingK, clock }, { act }) {
    if (clock === 'no-coats') return undefined;
    const lowestK =
      act === 'hand-over' ? Math.min(coldestK ?? sandingK, nightK ?? sandingK) : (coldestK ?? sandingK);
    if (sandingK - lowestK < SHOCK_K) return undefined;
    const says = act === 'hand-over' ? 'coldShipping' : 'coldShock';
    return { weight: 'caution', says, figures: { temperatureK: lowestK } };
  },
};
