import { MONTH_S } from '../../units';
import type { Facts } from '../facts';
import type { Rule } from '../reason';

/** The longest that a mix is given where nothing was said of it, months (common practice, no source). */
const KEEPS_MONTHS: Readonly<Record<string, number>> = { shellac: 6, precatalysed: 12, nitrocellulose: 24 };

const keptUntilMs = (jar: NonNullable<Facts['jar']>): number =>
  jar.lifeEndMs ?? jar.filledMs + (KEEPS_MONTHS[jar.finish] ?? Number.POSITIVE_INFINITY) * MONTH_S * 1000;

/** Past its pot life a jar is not used; past its shelf life, or too old, it is tried on glass first. */
export const jarPast: Rule = {
  name: 'jar-past',
  acts: ['coat'],
  source: 'practice',
  look({ jar, nowMs }) {
    if (!jar || nowMs < keptUntilMs(jar)) return undefined;
    const sinceMs = keptUntilMs(jar);
    if (jar.dryOnGlassMs !== undefined && jar.dryOnGlassMs >= sinceMs) return undefined;
    return jar.lifeAs === 'pot'
      ? { weight: 'hold', says: 'potOver', clearedBy: 'jar', sinceMs }
      : { weight: 'caution', says: jar.finish === 'shellac' ? 'shellacOld' : 'jarOld', clearedBy: 'jar' };
  },
};

/** By what the jar or any ingredient is called, or was said to hold. Never set aside. */
export const isocyanate: Rule = {
  name: 'isocyanate',
  acts: ['coat', 'flash-coat'],
  source: 'practice',
  isNeverOverridden: true,
  look: ({ jar }) =>
    jar?.hazards.includes('isocyanate') ? { weight: 'caution', says: 'isocyanate' } : undefined,
};

/** A spray can holds slow solvent and cannot be thinned: built heavily it stays soft for weeks longer (common practice, no source). */
export const aerosol: Rule = {
  name: 'aerosol',
  acts: ['coat', 'level-sand', 'rub-out'],
  source: 'practice',
  look: ({ jar }, { act }) =>
    jar?.hazards.includes('aerosol')
      ? { weight: 'note', says: act === 'coat' ? 'aerosolCoat' : 'aerosolSoft' }
      : undefined,
};
