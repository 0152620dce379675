import { WLF } from '../../src/estimator/laws/glass';

// Laws by which the solver's own glass transition and mobility are checked.

/**
 * Glass transition of a mixture, K.
 *
 * Source: T. G. Fox, Bull. Am. Phys. Soc. 1 (1956) 123: 1/Tg = sum w_i/Tg_i.
 * Valid: miscible, no strong specific interaction.
 * Accuracy: 10 to 33 K of depression for 2 to 6 % of solvent, as measured on acrylic films (Heritage Science 7 (2019) 42).
 * @param massFractions and glassTransitionsK of the same parts, in the same order
 */
export function foxK(massFractions: readonly number[], glassTransitionsK: readonly number[]): number {
  return 1 / massFractions.reduce((sum, w, i) => sum + w / (glassTransitionsK[i] as number), 0);
}

/**
 * Glass transition of a polymer with one diluent by free volume, K.
 *
 * Source: F. N. Kelley and F. Bueche, J. Polym. Sci. 50 (1961) 549. Used to check {@link foxK}, which needs no expansion coefficients.
 * @param solvent volume fraction of the diluent
 */
export function kelleyBuecheK(
  solvent: number,
  polymer: { readonly expansionPerK: number; readonly tgK: number },
  diluent: { readonly expansionPerK: number; readonly tgK: number },
): number {
  const p = polymer.expansionPerK * (1 - solvent);
  const s = diluent.expansionPerK * solvent;
  return (p * polymer.tgK + s * diluent.tgK) / (p + s);
}

/**
 * Viscosity of a melt above its glass transition, log10 of Pa s, with 1e12 Pa s at Tg.
 *
 * Source: Williams, Landel and Ferry 1955. 54 K above Tg is about 1e3 Pa s, dry to touch; 21 K is about 1e7 Pa s, where a
 * thumb leaves no print (correspondences from memory of a coatings textbook).
 */
export function wlfLogViscosity(aboveTgK: number): number {
  return 12 - (WLF.c1 * aboveTgK) / (WLF.c2K + aboveTgK);
}
