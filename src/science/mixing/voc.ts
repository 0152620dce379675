import { type Result, succeed } from '../../result';
import { massFractions } from '../solvents/blend';
import type { SolventId } from '../solvents/solvents';
import { type Composition, type KnownPart, partVolumeM3, solventsOf } from './composition';
import { andThen, forEach, type MixFailure, sumOver } from './failure';
import { weightSolidsOf } from './solids';

/** Of the table's solvents, those that do not count: water, and acetone (40 CFR 51.100(s)(1)). */
const NOT_COUNTED: readonly SolventId[] = ['water', 'acetone'];

interface Volatiles {
  readonly organicKg: number;
  readonly notCountedM3: number;
}

function volatilesOf({ ingredient, massKg }: KnownPart): Result<Volatiles, MixFailure> {
  return andThen(weightSolidsOf(ingredient), (solids) => {
    if (solids >= 1) return succeed({ organicKg: 0, notCountedM3: 0 });
    return andThen(solventsOf(ingredient), (blend) => {
      const fractions = massFractions(blend);
      let organicKg = 0;
      let notCountedM3 = 0;
      blend.forEach(({ solvent }, i) => {
        const partKg = massKg * (1 - solids) * (fractions[i] as number);
        if (NOT_COUNTED.includes(solvent.id)) notCountedM3 += partKg / solvent.densityKgM3;
        else organicKg += partKg;
      });
      return succeed({ organicKg, notCountedM3 });
    });
  });
}

/** What a litre gives off, two ways of saying it, kg/m3 (the same number as g/L). */
export interface VocContent {
  /** Less water and exempt solvents: the figure that limits are written in. */
  readonly lessExemptKgM3: number;
  /** Of the mix as it is. */
  readonly actualKgM3: number;
}

/**
 * Volatile organic compounds of a mix.
 *
 * Source: US EPA Method 24 (40 CFR 60, appendix A-7): (Wv - Ww - Wex) rho/(1 - Vw - Vex), here from the ingredients instead of an oven.
 * Valid: volumes taken to add. Accuracy: that of the ingredients' facts.
 * Left out: what cures into the film, and plasticiser that the oven would drive off.
 */
export function vocContent(mix: Composition): Result<VocContent, MixFailure> {
  return andThen(forEach(mix, volatilesOf), (parts) =>
    andThen(sumOver(mix, partVolumeM3), (volumeM3) => {
      const organicKg = parts.reduce((sum, part) => sum + part.organicKg, 0);
      const notCountedM3 = parts.reduce((sum, part) => sum + part.notCountedM3, 0);
      const countedM3 = volumeM3 - notCountedM3;
      return succeed({
        lessExemptKgM3: organicKg === 0 ? 0 : organicKg / countedM3,
        actualKgM3: organicKg / volumeM3,
      });
    }),
  );
}
