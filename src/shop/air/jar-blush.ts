import { finishTraits } from '../../estimator/finishes/traits';
import type { BlushOutlook } from '../../science/air/blush';
import { FILM_COOLING_SHARE, WET_SURFACE_AIR_C, wetBlendC } from '../../science/air/wet-surface';
import { moleFractions } from '../../science/solvents/blend';
import { type Solvent, solvent } from '../../science/solvents/solvents';
import { nearestVapourPressurePa } from '../../science/solvents/vapour-pressure';
import { toKelvin } from '../../units';
import { type JarMix, jarFilm } from '../jar/film';
import { USUAL_RETARDER } from '../jar/own-solvents';
import type { MeasuredAir } from './measured-air';

/** How a film of this jar stands to the dew point when it is coldest. */
export type JarBlushOutlook = 'stays-clear' | 'may-blush' | 'blushes';

export interface JarBlush {
  /** How far a film of it may cool below the piece, K. */
  readonly coolsFromK: number;
  readonly coolsToK: number;
  /** The film at its coldest, °C. */
  readonly filmLowestC: number;
  readonly filmHighestC: number;
  readonly outlook: JarBlushOutlook;
}

/**
 * What this jar's own solvents make of this air: how cold its film gets by evaporation, against the dew point.
 * Undefined for a finish that does not blush, and below 0 °C or above 50 °C.
 */
export function jarBlush(jar: JarMix, air: MeasuredAir): JarBlush | undefined {
  const { lowest, highest } = WET_SURFACE_AIR_C;
  if (!finishTraits(jar.product.finish).blushes || air.airC < lowest || air.airC > highest) return undefined;
  const adiabaticK = air.airC - wetBlendC(wetPartsOf(jar), air.airC, air.pressurePa);
  const coolsFromK = FILM_COOLING_SHARE.lowest * adiabaticK;
  const coolsToK = FILM_COOLING_SHARE.highest * adiabaticK;
  const filmLowestC = air.pieceC - coolsToK;
  const filmHighestC = air.pieceC - coolsFromK;
  return {
    coolsFromK,
    coolsToK,
    filmLowestC,
    filmHighestC,
    outlook: outlookOf(air.dewPointC, filmLowestC, filmHighestC),
  };
}

/**
 * What to expect of a coat: by the margin that experience asks for, or by what this jar's own solvents do, whichever is worse, so
 * that the air's page says what the piece's says.
 */
export function worstBlush(byMargin: BlushOutlook, byJar: JarBlushOutlook | undefined): BlushOutlook {
  if (byMargin === 'below-floor' || byMargin === 'expect-blush') return byMargin;
  if (byJar === 'blushes') return 'expect-blush';
  return byJar === 'may-blush' ? 'care' : byMargin;
}

function outlookOf(dewPointC: number, lowestC: number, highestC: number): JarBlushOutlook {
  if (dewPointC < lowestC) return 'stays-clear';
  return dewPointC > highestC ? 'blushes' : 'may-blush';
}

function wetPartsOf(jar: JarMix) {
  const blend = jarFilm(jar).solvents.map(({ id, share }) => ({ solvent: solvent(id), volume: share }));
  const fractions = moleFractions(blend);
  return blend.map(({ solvent: one }, i) => ({ solvent: wet(one), moleFraction: fractions[i] as number }));
}

const wet = (one: Solvent) => ({
  latentHeatJMol: one.latentHeatJMol,
  airDiffusivityM2S: one.airDiffusivityM2S,
  vapourPressurePa: (temperatureC: number) => nearestVapourPressurePa(one, toKelvin(temperatureC)),
});

/** The same jar with so much more retarder, a fraction of the mix. */
export function withMoreRetarder(jar: JarMix, ofMix: number): JarMix {
  const solventId = jar.retarder?.solvent ?? USUAL_RETARDER;
  const own = jar.retarder?.percent.si ?? 0;
  const si = Math.min(MOST_RETARDER, (jar.retarder?.of === 'lacquer' ? own / (1 + own) : own) + ofMix);
  return {
    ...jar,
    retarder: {
      of: 'mix',
      solvent: solventId,
      percent: { si, typed: { text: String(Math.round(si * 1000) / 10), unit: '%' } },
    },
  };
}

/** More of the mix than this is not advised (common practice, no source). */
const MOST_RETARDER = 0.3;
