import { quantity } from '../../logbook/typed';
import { USUAL_LIFE } from '../../shop/jar/life';
import type { JarFact } from '../facts';
import type { Rule } from '../reason';

/** As was said; else as a mix usually keeps on the shelf. A pot that nobody spoke of is not over. */
function keptUntilMs({ lifeEndMs, mixedMs, finish }: JarFact): number {
  const usual = USUAL_LIFE[finish];
  return lifeEndMs ?? (usual.as === 'shelf' ? mixedMs + quantity(usual).si * 1000 : Number.POSITIVE_INFINITY);
}

/** Past its pot life a jar is not used; past its shelf life, or too old, it is tried on glass first. */
export const jarPast: Rule = {
  name: 'jar-past',
  acts: ['coat'],
  source: 'practice',
  look({ jar, nowMs }) {
    if (!jar || nowMs < keptUntilMs(jar)) return undefined;
    const sinceMs = keptUntilMs(jar);
    if (jar.dryOnGlassMs !== undefined && jar.dryOnGlassMs >= sinceMs) return undefined;
    const figures = { jar: jar.name };
    return jar.lifeAs === 'pot'
      ? { weight: 'hold', says: 'potOver', figures, clearedBy: 'jar', sinceMs }
      : {
          weight: 'caution',
          says: jar.finish === 'shellac' ? 'shellacOld' : 'jarOld',
          figures,
          clearedBy: 'jar',
        };
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
