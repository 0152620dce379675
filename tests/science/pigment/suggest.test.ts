import { describe, expect, test } from 'vitest';
import { colourDifference, deltaE00 } from '../../../src/science/colour/delta-e-00';
import type { Lab } from '../../../src/science/colour/lab';
import { spectrumToLab } from '../../../src/science/colour/spectrum';
import {
  afterAddition,
  afterReading,
  afterTrials,
  colourVariance,
  expectedColour,
  firstBelief,
  tinterStrength,
} from '../../../src/science/pigment/belief';
import {
  corrected,
  mixColour,
  spectralModel,
  threeBandModel,
} from '../../../src/science/pigment/colour-model';
import { added, nearestAddition } from '../../../src/science/pigment/nearest-addition';
import { LACQUER_SURFACE } from '../../../src/science/pigment/saunderson';
import { poured, suggestAddition } from '../../../src/science/pigment/suggest';
import { USUAL_TINTERS, type UsualTinter } from '../../../src/science/pigment/usual-tinters';
import { EARTHS, hiddenPaints, seeded } from './hidden-pigments';

const paints = hiddenPaints(seeded(7));
const NONE = EARTHS.map(() => 0);
const only = (tinter: number, grams: number): number[] => NONE.map((_, t) => (t === tinter ? grams : 0));
const tint = (tinter: number, share: number) => ({ whiteGrams: 1 - share, tinterGrams: only(tinter, share) });
const WHITE_JAR = { whiteGrams: 200, tinterGrams: NONE };
const [OCHRE, BLACK] = [0, 4];

const model = threeBandModel(
  paints.colour(WHITE_JAR),
  EARTHS.map((_, t) => [0.01, 0.05].map((share) => ({ share, lab: paints.colour(tint(t, share)) }))),
  LACQUER_SURFACE,
);
const spectral = spectralModel(
  { startNm: 380, stepNm: 10, reflectance: paints.spectrum(WHITE_JAR) },
  EARTHS.map((_, t) =>
    [0.01, 0.05, 0.2].map((share) => ({ share, reflectance: paints.spectrum(tint(t, share)) })),
  ),
  { k1: 0.035, k2: 0.55, seesGloss: false },
  'D65/10',
);
const belief = firstBelief(EARTHS.map(() => 0.1));
const BENCH = { scaleDivisionG: 0.01, forms: ['neat', 'let-down-10', 'let-down-1'] as const, roomGrams: 100 };
const ask = (target: Lab<'D65/10'>, more: object = {}) =>
  suggestAddition({ model, belief, jar: WHITE_JAR, target, toleranceE00: 0.7, bench: BENCH, ...more });

test('two tinters that are the same colour come as near as one', () => {
  const twice = threeBandModel(
    paints.colour(WHITE_JAR),
    [OCHRE, OCHRE].map((t) => [0.01, 0.05].map((share) => ({ share, lab: paints.colour(tint(t, share)) }))),
    LACQUER_SURFACE,
  );
  const jar = { whiteGrams: 200, tinterGrams: [0, 0] };
  const target = mixColour(twice, { whiteGrams: 200, tinterGrams: [1.5, 0] });
  const addition = nearestAddition(twice, jar, target, [0, 1], false);
  expect(deltaE00(mixColour(twice, added(jar, addition)), target)).toBeLessThan(0.01); // as its docstring says
});

test('a tinter more never leads farther from the target, though nothing of it is wanted', () => {
  for (const target of [WHITE_JAR, tint(BLACK, 0.01), tint(OCHRE, 0.02), tint(5, 0.01), tint(2, 0.02)].map(
    paints.colour,
  ))
    for (const [one] of EARTHS.entries())
      for (const [other] of EARTHS.entries()) {
        if (other === one) continue;
        const left = (tinters: number[]) =>
          deltaE00(
            mixColour(model, added(WHITE_JAR, nearestAddition(model, WHITE_JAR, target, tinters, false))),
            target,
          );
        expect(left([one, other])).toBeLessThanOrEqual(left([one]) + 0.01); // as its docstring says
      }
});

test('no more white at once than the jar holds of it', () => {
  const jar = { whiteGrams: 10, tinterGrams: only(BLACK, 5) };
  expect(nearestAddition(model, jar, paints.colour(WHITE_JAR), [], true).whiteGrams).toBe(10);
});

test('the doubt of a strength is that of three bands which go together in part', () => {
  // Variance of a mean of three that correlate by 0.3 (judgement): (1 + 2 x 0.3)/3 of one.
  expect(tinterStrength(firstBelief([0.2, 0.1]), 1).doubt).toBeCloseTo(0.1 * Math.sqrt(1.6 / 3), 9);
});

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

describe('a trial corrects the prediction', () => {
  const jar = { whiteGrams: 200, tinterGrams: only(BLACK, 1) };
  // The black in the jar is really 30 % stronger than drawn down.
  const truth = mixColour(
    corrected(model, [...new Array<number>(12).fill(0), ...new Array<number>(3).fill(Math.log(1.3))]),
    jar,
  );
  const learnt = afterReading(model, afterAddition(firstBelief(EARTHS.map(() => 0.3))), jar, truth, 0.15);

  test('the strength moves most of the way, and is surer than before', () => {
    const before = tinterStrength(firstBelief(EARTHS.map(() => 0.3)), BLACK);
    const after = tinterStrength(learnt, BLACK);
    expect(before).toMatchObject({ factor: 1 });
    expect(after.factor).toBeGreaterThan(1.2);
    expect(after.factor).toBeLessThan(1.35);
    expect(after.doubt).toBeLessThan(before.doubt / 2);
    expect(deltaE00(expectedColour(model, learnt, jar), truth)).toBeLessThan(0.2);
  });

  test('a row of trials is the same one by one', () => {
    const base = { jar: WHITE_JAR, reading: paints.colour(WHITE_JAR), readingSd: 0.15 };
    const row = afterTrials(model, belief, [base, { jar, reading: truth, readingSd: 0.15 }]);
    const first = afterReading(model, belief, WHITE_JAR, base.reading, 0.15);
    expect(row).toEqual(afterReading(model, afterAddition(first), jar, truth, 0.15));
  });

  test('what was not in the jar is believed as before', () => {
    expect(tinterStrength(learnt, OCHRE)).toEqual(tinterStrength(firstBelief(EARTHS.map(() => 0.3)), OCHRE));
  });

  test('an untinted jar that reads off teaches the jar’s own offset: one reading against one belief', () => {
    // Kalman 1960 for a single quantity; 0.25 in L*, a* and b* is what the model may be off at first (judgement).
    const [own, read] = [0.25 ** 2, 0.15 ** 2];
    const expected = expectedColour(model, belief, WHITE_JAR);
    const reading = { ...expected, L: expected.L + 0.3, b: expected.b - 0.2 };
    const after = afterReading(model, belief, WHITE_JAR, reading, 0.15);
    const now = expectedColour(model, after, WHITE_JAR);
    const moved = [now.L - expected.L, now.a - expected.a, now.b - expected.b];
    for (const [i, off] of [0.3, 0, -0.2].entries())
      expect(moved[i]).toBeCloseTo((off * own) / (own + read), 9);
    for (const variance of colourVariance(model, after, WHITE_JAR))
      expect(variance).toBeCloseTo((own * read) / (own + read), 9);
    // An addition may move the model's error by 0.2 (judgement).
    for (const variance of colourVariance(model, afterAddition(after), WHITE_JAR))
      expect(variance).toBeCloseTo((own * read) / (own + read) + 0.2 ** 2, 9);
  });

  test('an addition may move the model’s error in each of L*, a* and b* apart, and no strength', () => {
    const moved = afterAddition(learnt).covariance;
    const own = moved.length - 3;
    for (const [i, row] of moved.entries())
      for (const [k, value] of row.entries())
        expect(value - (learnt.covariance[i]?.[k] ?? 0)).toBeCloseTo(i === k && i >= own ? 0.2 ** 2 : 0, 12);
  });

  test('a reading as expected leaves what was learnt as it is', () => {
    const same = afterReading(model, learnt, jar, expectedColour(model, learnt, jar), 0.15);
    for (const [i, value] of same.mean.entries()) expect(value).toBeCloseTo(learnt.mean[i] ?? 9, 9);
  });

  test('a reading as expected changes nothing but the doubt', () => {
    const expected = expectedColour(model, belief, jar);
    const same = afterReading(model, belief, jar, expected, 0.15);
    for (const value of same.mean) expect(value).toBeCloseTo(0, 9);
    expect(tinterStrength(same, BLACK).doubt).toBeLessThan(0.1);
  });
});

describe('suggestAddition', () => {
  test('leads to the target, as far as is believed', () => {
    const target = mixColour(model, { whiteGrams: 200, tinterGrams: [2, 0, 0.8, 0, 0, 0] });
    const said = ask(target);
    expect(said.kind).toBe('add');
    if (said.kind !== 'add') return;
    const before = deltaE00(mixColour(model, WHITE_JAR), target);
    expect(said.dE00).toBeLessThan(before / 3);
    expect(said.additions.every(({ error, grams }) => error <= 0.05 && grams > 0)).toBe(true);
    expect(
      deltaE00(mixColour(model, added(WHITE_JAR, poured(said.additions, 6))), said.predicted),
    ).toBeCloseTo(0, 6);
    expect(said.additions.map(({ what }) => what)).not.toContain('white');
  });

  test('stays short of a target while strengths are unsure, and goes all the way once they are sure', () => {
    const target = mixColour(model, { whiteGrams: 200, tinterGrams: only(OCHRE, 2) });
    const neat = (doubt: number): number => {
      const said = ask(target, { belief: firstBelief(EARTHS.map(() => doubt)) });
      return said.kind === 'add' ? said.additions.reduce((sum, { neatGrams }) => sum + neatGrams, 0) : 0;
    };
    expect(neat(0.4)).toBeLessThan(neat(0.1));
    expect(neat(0.1)).toBeLessThan(2);
    expect(neat(0.01)).toBeLessThan(2.05);
  });

  test('goes back with white alone when the jar is too dark, and counts the room', () => {
    const jar = { whiteGrams: 200, tinterGrams: only(BLACK, 0.5) };
    const target = mixColour(model, { whiteGrams: 250, tinterGrams: only(BLACK, 0.5) });
    const said = ask(target, { jar });
    expect(said.kind === 'add' && said.additions.map(({ what }) => what)).toEqual(['white']);
    const full = ask(target, { jar, bench: { ...BENCH, roomGrams: 5 } });
    expect(full).toMatchObject({ kind: 'out-of-reach' });
    expect(full.kind === 'out-of-reach' && full.missingRoomGrams).toBeGreaterThan(20);
  });

  test('stops when it is there', () => {
    const here = afterReading(model, belief, WHITE_JAR, mixColour(model, WHITE_JAR), 0.1);
    expect(ask(mixColour(model, WHITE_JAR), { belief: here })).toMatchObject({ kind: 'stop' });
  });

  test('asks for a let-down when the scale cannot show the amount', () => {
    const target = mixColour(model, { whiteGrams: 2, tinterGrams: only(BLACK, 0.003) });
    const said = ask(target, {
      jar: { whiteGrams: 2, tinterGrams: NONE },
      bench: { ...BENCH, forms: ['neat'], scaleDivisionG: 0.1 },
    });
    expect(said).toMatchObject({ kind: 'too-little-to-weigh', tinter: BLACK });
  });

  test('what a coarse scale rounds up never leads past the target', () => {
    const target = mixColour(model, { whiteGrams: 30, tinterGrams: only(OCHRE, 0.8) });
    const on = (scaleDivisionG: number) =>
      ask(target, {
        jar: { whiteGrams: 30, tinterGrams: NONE },
        bench: { ...BENCH, forms: ['neat'], scaleDivisionG },
      });
    expect(on(1)).toMatchObject({ kind: 'too-little-to-weigh', tinter: OCHRE });
    expect(on(0.45)).toMatchObject({ kind: 'add', additions: [{ what: OCHRE, grams: 0.45 }] }); // and not 0.9
  });

  test('names a tinter that it leaves out because the scale cannot show it, where that tells', () => {
    const on = (tinterGrams: number[], scaleDivisionG: number) =>
      ask(mixColour(model, { whiteGrams: 30, tinterGrams }), {
        jar: { whiteGrams: 30, tinterGrams: NONE },
        bench: { ...BENCH, forms: ['neat'], scaleDivisionG },
      });
    const ochreAndBlack = only(OCHRE, 0.6).map((grams, t) => (t === BLACK ? 0.03 : grams));
    const coarse = on(ochreAndBlack, 0.1);
    expect(coarse).toMatchObject({ kind: 'add', leftOut: { tinter: BLACK } });
    expect(coarse.kind === 'add' && coarse.additions.map(({ what }) => what)).toEqual([OCHRE]);
    expect(on(ochreAndBlack, 0.001)).not.toHaveProperty('leftOut');
    expect(on(only(OCHRE, 0.6), 0.1)).not.toHaveProperty('leftOut');
  });

  test('will not aim at a target under another light, or tint an empty jar', () => {
    const underA = { white: 'A/10', L: 86, a: 0, b: 14 } as unknown as Lab<'D65/10'>;
    expect(() => ask(underA)).toThrow(RangeError);
    expect(() => ask(paints.colour(WHITE_JAR), { jar: { whiteGrams: 0, tinterGrams: NONE } })).toThrow(
      RangeError,
    );
  });
});
