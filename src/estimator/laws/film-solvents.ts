import { transferRatio } from '../../science/solvents/evaporation';
import { type SolventId, solvent } from '../../science/solvents/solvents';
import type { FilmSolvent } from '../history';

/**
 * Diffusivity relative to toluene, fitted to common practice together with the prior of nitrocellulose lacquer (no source: no
 * measurement in nitrocellulose lacquer was found).
 */
const RATIO: Partial<Record<SolventId, number>> = {
  acetone: 1.6,
  mek: 1.4,
  toluene: 1,
  'isobutyl-acetate': 0.9,
  'n-butyl-acetate': 0.8,
  '2-butoxyethanol': 0.6,
};
/** A larger molecule is slower: the six above follow molar volume to this power within a fifth, but for the glycol ether. */
const VOLUME_POWER = -0.95;
const molarVolumeM3 = (id: SolventId): number => solvent(id).molarMassKgMol / solvent(id).densityKgM3;
/** Molecules that bind to the film former by their hydroxyl are slower than their size says, as 2-butoxyethanol shows (judgement by it alone). */
const BINDING: Partial<Record<SolventId, number>> = {
  pm: 0.7,
  dpm: 0.7,
  dpnb: 0.7,
  'diacetone-alcohol': 0.7,
};

/** A solvent of the table as the drying model sees it. */
export function filmSolvent(id: SolventId): FilmSolvent {
  const facts = solvent(id);
  const { A, B, C } = facts.antoine;
  const bySize = (molarVolumeM3(id) / molarVolumeM3('toluene')) ** VOLUME_POWER * (BINDING[id] ?? 1);
  return {
    densityKgM3: facts.densityKgM3,
    tgK: facts.glassTransitionK,
    ratio: RATIO[id] ?? bySize,
    molarMassKgMol: facts.molarMassKgMol,
    latentHeatJMol: facts.latentHeatJMol,
    transferRatio: transferRatio(facts),
    vapour: { lnA: (A + 5) * Math.LN10, lnB: B * Math.LN10, cK: C },
  };
}
