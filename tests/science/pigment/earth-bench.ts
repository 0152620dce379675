import type { Lab } from '../../../src/science/colour/lab';
import { firstBelief } from '../../../src/science/pigment/belief';
import { spectralModel, threeBandModel } from '../../../src/science/pigment/colour-model';
import { LACQUER_SURFACE } from '../../../src/science/pigment/saunderson';
import { suggestAddition } from '../../../src/science/pigment/suggest';
import { EARTHS, hiddenPaints, seeded } from './hidden-pigments';

export const paints = hiddenPaints(seeded(7));
export const NONE = EARTHS.map(() => 0);
export const only = (tinter: number, grams: number): number[] =>
  NONE.map((_, t) => (t === tinter ? grams : 0));
export const tint = (tinter: number, share: number) => ({
  whiteGrams: 1 - share,
  tinterGrams: only(tinter, share),
});
export const WHITE_JAR = { whiteGrams: 200, tinterGrams: NONE };
export const [OCHRE, BLACK] = [0, 4];

export const model = threeBandModel(
  paints.colour(WHITE_JAR),
  EARTHS.map((_, t) => [0.01, 0.05].map((share) => ({ share, lab: paints.colour(tint(t, share)) }))),
  LACQUER_SURFACE,
);
export const spectral = spectralModel(
  { startNm: 380, stepNm: 10, reflectance: paints.spectrum(WHITE_JAR) },
  EARTHS.map((_, t) =>
    [0.01, 0.05, 0.2].map((share) => ({ share, reflectance: paints.spectrum(tint(t, share)) })),
  ),
  { k1: 0.035, k2: 0.55, seesGloss: false },
  'D65/10',
);
export const belief = firstBelief(EARTHS.map(() => 0.1));
export const BENCH = {
  scaleDivisionG: 0.01,
  forms: ['neat', 'let-down-10', 'let-down-1'] as const,
  roomGrams: 100,
};
export const ask = (target: Lab<'D65/10'>, more: object = {}) =>
  suggestAddition({ model, belief, jar: WHITE_JAR, target, toleranceE00: 0.7, bench: BENCH, ...more });
