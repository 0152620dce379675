import { describe, expect, test } from 'vitest';
import { colourDifference, deltaE00 } from '../../../src/science/colour/delta-e-00';
import type { Lab } from '../../../src/science/colour/lab';
import { spectrumToLab } from '../../../src/science/colour/spectrum';
import {
  corrected,
  mixColour,
  spectralModel,
  threeBandModel,
} from '../../../src/science/pigment/colour-model';
import { LACQUER_SURFACE } from '../../../src/science/pigment/saunderson';
import { USUAL_TINTERS, type UsualTinter } from '../../../src/science/pigment/usual-tinters';
import { ask, BLACK, model, NONE, OCHRE, only, paints, spectral, tint, WHITE_JAR } from './earth-bench';
import { EARTHS } from './hidden-pigments';

describe('three-band model', () => {
  test('gives the base and the draw-downs back', () => {
    expect(deltaE00(mixColour(model, WHITE_JAR), paints.colour(WHITE_JAR))).toBeLessThan(0.01);
    for (const [t] of EARTHS.entries()) {
      // Two draw-downs in three bands cannot follow a spectrum: the bar is 0.8, the 50:50 perceptibility of
      // Paravina et al. 2015.
      expect(deltaE00(mixColour(model, tint(t, 0.01)), paints.colour(tint(t, 0.01)))).toBeLessThan(0.8);
    }
  });

  test('has a colour even where a draw-down is as light as the perfect white, or the jar is empty', () => {
    const white: Lab<'D65/10'> = { white: 'D65/10', L: 100, a: 0, b: 0 };
    const lightest = threeBandModel(white, [[{ share: 0.1, lab: white }]], LACQUER_SURFACE);
    expect(mixColour(lightest, { whiteGrams: 1, tinterGrams: [0.1] }).L).toBeCloseTo(100, 0);
    expect(mixColour(lightest, { whiteGrams: 0, tinterGrams: [0] }).L).toBeCloseTo(
      116 * Math.cbrt(0.04) - 16,
      1,
    ); // the gloss
  });

  test('keeps the proportions: twice of everything is the same colour', () => {
    const jar = { whiteGrams: 100, tinterGrams: NONE.map((_, t) => 0.3 * t) };
    const twice = { whiteGrams: 200, tinterGrams: NONE.map((_, t) => 0.6 * t) };
    expect(deltaE00(mixColour(model, jar), mixColour(model, twice))).toBeCloseTo(0, 9);
  });

  test('a stronger tinter goes further', () => {
    const strong = corrected(model, [...only(0, 0), ...new Array<number>(12).fill(Math.log(2))]);
    const jar = { whiteGrams: 100, tinterGrams: only(BLACK, 0.5) };
    expect(mixColour(strong, jar).L).toBeLessThan(mixColour(model, jar).L);
  });
});

describe('usual tinters', () => {
  const white: Lab<'D65/10'> = { white: 'D65/10', L: 95.5, a: -0.8, b: 2.2 };
  const names = Object.keys(USUAL_TINTERS) as UsualTinter[];
  const usual = threeBandModel(
    white,
    names.map((name) => USUAL_TINTERS[name]),
    LACQUER_SURFACE,
  );
  const with1Percent = (name: UsualTinter) =>
    colourDifference(
      mixColour(usual, { whiteGrams: 99, tinterGrams: names.map((other) => (other === name ? 1 : 0)) }),
      white,
    );

  // What each does to white: common practice, no source.
  test.each([
    { name: 'ochre', part: 'yellowward', sign: 1 },
    { name: 'raw sienna', part: 'yellowward', sign: 1 },
    { name: 'raw sienna', part: 'redward', sign: 1 },
    { name: 'raw umber', part: 'dL', sign: -1 },
    { name: 'burnt umber', part: 'redward', sign: 1 },
    { name: 'black', part: 'dL', sign: -1 },
    { name: 'black', part: 'yellowward', sign: -1 },
    { name: 'red oxide', part: 'redward', sign: 1 },
    { name: 'green oxide', part: 'redward', sign: -1 },
  ] as const)('$name moves $part by $sign', ({ name, part, sign }) => {
    expect(with1Percent(name)[part] * sign).toBeGreaterThan(0.3);
  });

  test.each(names.filter((name) => name !== 'black'))('%s alone is no black: it scatters', (name) => {
    const alone = mixColour(usual, {
      whiteGrams: 0,
      tinterGrams: names.map((other) => (other === name ? 1 : 0)),
    });
    const black = mixColour(usual, {
      whiteGrams: 0,
      tinterGrams: names.map((other) => (other === 'black' ? 1 : 0)),
    });
    expect(deltaE00(alone, black)).toBeGreaterThan(2);
  });

  test('a tinter with no draw-down and no usual strength is refused', () => {
    expect(() => threeBandModel(white, [[]], LACQUER_SURFACE)).toThrow(RangeError);
  });
});

describe('spectral model', () => {
  test('predicts a mixture of three from single-pigment tints', () => {
    const jar = { whiteGrams: 200, tinterGrams: [2, 0, 1, 0, 0.1, 0] };
    expect(deltaE00(mixColour(spectral, jar), paints.colour(jar))).toBeLessThan(0.05);
  });

  test('suggests as the three-band model does', () => {
    const target = paints.colour({ whiteGrams: 200, tinterGrams: [2, 0, 0, 0, 0.2, 0] });
    const said = ask(target, { model: spectral });
    expect(said.kind === 'add' && said.additions.map(({ what }) => what).sort()).toEqual([OCHRE, BLACK]);
  });

  test('has a strength for waves to 490 nm, one to 580 nm and one beyond', () => {
    const absorbs = (logs: readonly number[]) => corrected(spectral, logs).tinters[OCHRE]?.K ?? [];
    for (const [band, channels] of [
      [0, 15],
      [1, 9],
      [2, 12],
    ] as const) {
      const twice = absorbs([0, 1, 2].map((i) => (i === band ? Math.LN2 : 0)));
      expect(twice.filter((value, i) => value > 1.9 * (absorbs([])[i] ?? 0))).toHaveLength(channels);
    }
  });

  test('is the spectrum of the base when nothing is added', () => {
    const plain = spectralModel(
      { startNm: 400, stepNm: 10, reflectance: new Array<number>(31).fill(0.8) },
      [],
      { k1: 0, k2: 0, seesGloss: true }, // no surface
      'A/10',
    );
    const flat = spectrumToLab(
      { startNm: 400, stepNm: 10, reflectance: new Array<number>(31).fill(0.8) },
      'A/10',
    );
    expect(deltaE00(mixColour(plain, { whiteGrams: 1, tinterGrams: [] }), flat)).toBeCloseTo(0, 9);
  });
});
