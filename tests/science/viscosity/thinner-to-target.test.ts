import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { asOfMix, thinnedOfLacquer, thinnedOfMix } from '../../../src/science/film/thinning';
import { cup } from '../../../src/science/viscosity/cups';
import { kinematicViscosityMm2S } from '../../../src/science/viscosity/efflux';
import { thinnerToAdd, thinningForTime } from '../../../src/science/viscosity/thinner-to-target';

const ford4 = cup('ford-4');

describe('thinning for a time, from two readings', () => {
  test('halves the viscosity with every equal step of the mix', () => {
    // zahn-5 is proportional (c = 0), so 80, 40, 20 s are 4, 2, 1 in viscosity: equal steps in ln ν, by hand 0.1, 0.2, 0.3 of the mix.
    const readings = [
      { thinning: thinnedOfMix(0.1), seconds: 80 },
      { thinning: thinnedOfMix(0.2), seconds: 40 },
    ] as const;
    const found = thinningForTime(cup('zahn-5'), readings, 20);
    expect(found.ok && found.value.thinning).toEqual({ of: 'mix', fraction: expect.closeTo(0.3, 12) });
    expect(found.ok && found.value.isExtrapolated).toBe(true);
    const between = thinningForTime(cup('zahn-5'), readings, Math.sqrt(80 * 40));
    expect(between.ok && between.value.thinning.fraction).toBeCloseTo(0.15, 12);
    expect(between.ok && between.value.isExtrapolated).toBe(false);
  });

  test('finds the line again, in any cup', () => {
    const seconds = fc.double({ min: 20, max: 100, noNaN: true });
    fc.assert(
      fc.property(seconds, seconds, fc.double({ min: 0, max: 1, noNaN: true }), (a, b, share) => {
        fc.pre(Math.abs(a - b) > 1);
        const [slow, fast] = [Math.max(a, b), Math.min(a, b)];
        const readings = [
          { thinning: thinnedOfLacquer(0), seconds: slow },
          { thinning: thinnedOfMix(0.4), seconds: fast },
        ] as const;
        const targetS = fast + share * (slow - fast);
        const found = thinningForTime(ford4, readings, targetS);
        if (!found.ok) throw new Error(found.failure.kind);
        const log = (t: number) => Math.log(kinematicViscosityMm2S(ford4, t));
        const onLine = log(slow) + (found.value.thinning.fraction / 0.4) * (log(fast) - log(slow));
        expect(onLine).toBeCloseTo(log(targetS), 9);
      }),
    );
  });

  const lacquer = { thinning: thinnedOfLacquer(0), seconds: 60 };
  const thinned = { thinning: thinnedOfMix(0.2), seconds: 40 };
  test.each([
    { why: 'the unthinned one', readings: [lacquer, thinned], targetS: 60, fraction: 0 },
    { why: 'the thinned one', readings: [thinned, lacquer], targetS: 40, fraction: 0.2 },
  ] as const)(
    'a target that was read is no guess beyond the readings: $why',
    ({ readings, targetS, fraction }) => {
      const found = thinningForTime(ford4, readings, targetS);
      expect(found).toEqual({
        ok: true,
        value: { thinning: { of: 'mix', fraction }, isExtrapolated: false },
      });
    },
  );
  test('beyond the thinned one it is, whichever was read first', () => {
    const found = thinningForTime(ford4, [thinned, lacquer], 30);
    expect(found.ok && found.value.isExtrapolated).toBe(true);
  });

  test.each([
    { kind: 'thinned-alike', second: { thinning: thinnedOfMix(0), seconds: 50 }, targetS: 30 },
    { kind: 'thicker-with-thinner', second: { thinning: thinnedOfMix(0.2), seconds: 65 }, targetS: 30 },
    { kind: 'thicker-with-thinner', second: { thinning: thinnedOfMix(0.2), seconds: 60 }, targetS: 60 },
    { kind: 'thinner-than-target', second: { thinning: thinnedOfMix(0.2), seconds: 40 }, targetS: 70 },
    { kind: 'out-of-reach', second: { thinning: thinnedOfMix(0.2), seconds: 58 }, targetS: 20 },
    { kind: 'outside-its-cup', second: { thinning: thinnedOfMix(0.2), seconds: 40 }, targetS: 12 },
  ] as const)('says $kind', ({ kind, second, targetS }) => {
    expect(thinningForTime(ford4, [lacquer, second], targetS)).toMatchObject({
      ok: false,
      failure: { kind },
    });
  });
});

describe('thinner to add', () => {
  test('100 mL at 20 % of the mix to 36 %: 25 mL, by hand (45 of 125)', () => {
    expect(thinnerToAdd(100, thinnedOfMix(0.2), thinnedOfMix(0.36))).toBeCloseTo(25, 12);
  });
  test('ends at the wanted thinning', () => {
    const thinning = fc.double({ min: 0, max: 3, noNaN: true });
    fc.assert(
      fc.property(thinning, thinning, (from, to) => {
        const added = thinnerToAdd(100, thinnedOfLacquer(from), thinnedOfLacquer(to));
        const thinner = 100 * asOfMix(thinnedOfLacquer(from)).fraction + added;
        expect(thinner / (100 + added)).toBeCloseTo(asOfMix(thinnedOfLacquer(to)).fraction, 9);
      }),
    );
  });
});
