import { deltaE00 } from '../../../src/science/colour/delta-e-00';
import type { Lab } from '../../../src/science/colour/lab';
import {
  afterAddition,
  afterReading,
  firstBelief,
  STRENGTH_DOUBT,
} from '../../../src/science/pigment/belief';
import { type JarContent, threeBandModel } from '../../../src/science/pigment/colour-model';
import { added } from '../../../src/science/pigment/nearest-addition';
import { LACQUER_SURFACE } from '../../../src/science/pigment/saunderson';
import { poured, suggestAddition, type ToAdd } from '../../../src/science/pigment/suggest';
import { EARTHS, hiddenPaints, normal, seeded } from './hidden-pigments';

const READING_SD = 0.15;
const DIVISION_G = 0.01;
const BENCH = {
  scaleDivisionG: DIVISION_G,
  forms: ['neat', 'let-down-10', 'let-down-1'] as const,
  roomGrams: 200,
};
const NONE = EARTHS.map(() => 0);

export const TOLERANCE_E00 = 0.7;

/** A bench with pigments that only nature knows, and the model that the finisher's own draw-downs give. */
export function bench(seed: number, drawnDown: 'own' | 'usual') {
  const random = seeded(seed);
  const paints = hiddenPaints(random);
  const noise = (): number => READING_SD * normal(random);
  const read = ({ white, L, a, b }: Lab<'D65/10'>): Lab<'D65/10'> => ({
    white,
    L: L + noise(),
    a: a + noise(),
    b: b + noise(),
  });
  const drawn = drawnDown === 'own' ? paints : hiddenPaints(seeded(0));
  const tint = (tinter: number, share: number) => ({
    share,
    lab: read(
      drawn.colour({ whiteGrams: 1 - share, tinterGrams: NONE.map((_, t) => (t === tinter ? share : 0)) }),
    ),
  });
  const model = threeBandModel(
    read(paints.colour({ whiteGrams: 1, tinterGrams: NONE })),
    EARTHS.map((_, tinter) => [tint(tinter, 0.01), tint(tinter, 0.05)]),
    LACQUER_SURFACE,
  );
  const doubt = drawnDown === 'own' ? STRENGTH_DOUBT.drawnDown : STRENGTH_DOUBT.generic;
  return { random, paints, read, model, belief: firstBelief(EARTHS.map(() => doubt)) };
}
type Bench = ReturnType<typeof bench>;

/** An aged white that these very pigments can make: L* 80 to 90, a* -2 to 2, b* 8 to 25 (common practice, no source). */
export function agedWhite({ random, paints }: Bench): Lab<'D65/10'> {
  for (;;) {
    const tinterGrams = NONE.map(() => (random() < 0.5 ? 8 * random() ** 2 : 0));
    const { white, L, a, b } = paints.colour({ whiteGrams: 200, tinterGrams });
    if (L > 80 && L < 90 && Math.abs(a) < 2 && b > 8 && b < 25) return { white, L, a, b };
  }
}

/** Adds, lets dry and reads, as told, until told to stop or so many trials are done. */
export function match(own: Bench, target: Lab<'D65/10'>, most = 4) {
  const { random, paints, read, model } = own;
  let jar: JarContent = { whiteGrams: 200, tinterGrams: NONE };
  let belief = afterReading(model, own.belief, jar, read(paints.colour(jar)), READING_SD);
  for (let trial = 0; ; trial++) {
    const said = suggestAddition({ model, belief, jar, target, toleranceE00: TOLERANCE_E00, bench: BENCH });
    if (said.kind !== 'add' || trial === most)
      return { said, trial, belief, dE00: deltaE00(paints.colour(jar), target) };
    const misread = ({ grams }: ToAdd): number => 1 + ((random() - 0.5) * DIVISION_G) / grams;
    const onScale = said.additions.map((one) => ({ ...one, neatGrams: one.neatGrams * misread(one) }));
    jar = added(jar, poured(onScale, EARTHS.length));
    belief = afterReading(model, afterAddition(belief), jar, read(paints.colour(jar)), READING_SD);
  }
}
