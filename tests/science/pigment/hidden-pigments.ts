import { spectrumToLab } from '../../../src/science/colour/spectrum';
import type { JarContent } from '../../../src/science/pigment/colour-model';
import { opaqueMix } from './opaque-mix';

/** A seeded generator of numbers from 0 to 1 (mulberry32, public domain). */
export function seeded(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

/** A number from the normal distribution with mean 0 and standard deviation 1 (Box and Muller 1958). */
export const normal = (random: () => number): number =>
  Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());

const NM = Array.from({ length: 36 }, (_, i) => 380 + 10 * i);
// The truth has another surface than the app assumes, and an instrument that does not see the gloss.
const TRUE_SURFACE = { k1: 0.035, k2: 0.55, seesGloss: false };

interface Recipe {
  readonly name: string;
  /** Absorption below and above an edge, the edge and its width in nm, and scattering: invented, shaped like earths. */
  readonly below: number;
  readonly above: number;
  readonly edgeNm: number;
  readonly widthNm: number;
  readonly scattering: number;
}

export const EARTHS: readonly Recipe[] = [
  { name: 'ochre', below: 1.8, above: 0.02, edgeNm: 484, widthNm: 15, scattering: 0.5 },
  { name: 'raw sienna', below: 2, above: 0.07, edgeNm: 505, widthNm: 20, scattering: 0.35 },
  { name: 'raw umber', below: 3, above: 0.9, edgeNm: 505, widthNm: 40, scattering: 0.3 },
  { name: 'burnt umber', below: 4, above: 0.8, edgeNm: 565, widthNm: 30, scattering: 0.3 },
  { name: 'black', below: 9, above: 10, edgeNm: 550, widthNm: 60, scattering: 0.05 },
  { name: 'red oxide', below: 4, above: 0.15, edgeNm: 578, widthNm: 12, scattering: 0.8 },
];

/** The pigments as they really are: each off from the usual in strength, edge, width and dirt. */
export function hiddenPaints(random: () => number) {
  const vary = (share: number): number => Math.exp(share * normal(random));
  const white = { K: NM.map((nm) => 0.0003 + 0.5 / (1 + Math.exp((nm - 384) / 6))), S: NM.map(() => 1) };
  const dirt = 0.0008 * vary(0.5);
  const base = {
    K: white.K.map((k, i) => k + dirt * (0.4 + 0.6 / (1 + Math.exp(((NM[i] ?? 0) - 480) / 40)))),
    S: white.S,
  };
  const tinters = EARTHS.map((earth) => {
    const [strength, above] = [vary(0.3), earth.above * vary(0.2)];
    const edgeNm = earth.edgeNm + 5 * normal(random);
    const widthNm = earth.widthNm * vary(0.1);
    const K = NM.map(
      (nm) => strength * (above + (earth.below - above) / (1 + Math.exp((nm - edgeNm) / widthNm))),
    );
    return { K, S: NM.map(() => earth.scattering * vary(0.2)) };
  });
  const spectrum = ({ whiteGrams, tinterGrams }: JarContent): number[] =>
    opaqueMix(
      [
        { pigment: base, amount: whiteGrams },
        ...tinters.map((pigment, i) => ({ pigment, amount: tinterGrams[i] ?? 0 })),
      ],
      TRUE_SURFACE,
    );
  return {
    spectrum,
    colour: (jar: JarContent) =>
      spectrumToLab({ startNm: 380, stepNm: 10, reflectance: spectrum(jar) }, 'D65/10'),
  };
}
