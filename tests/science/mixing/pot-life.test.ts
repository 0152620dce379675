import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ageingRate, lifeEndS } from '../../../src/science/mixing/pot-life';
import { HOUR_S, toKelvin } from '../../../src/units';

describe('pot life', () => {
  test.each([
    // the trade’s worked scenario C: 8 h at 20 C, shop at 30 C: from 09:30 to about 13:30
    { shopC: 30, lifeH: 8, endsAfterH: 4 },
    { shopC: 20, lifeH: 8, endsAfterH: 8 },
    // common practice: 10 K colder takes twice as long
    { shopC: 10, lifeH: 8, endsAfterH: 16 },
  ])('of $lifeH h in $shopC C ends after $endsAfterH h', ({ shopC, lifeH, endsAfterH }) => {
    const spans = [{ fromS: 0, temperatureK: toKelvin(shopC) }];
    expect(lifeEndS(lifeH * HOUR_S, 9.5 * HOUR_S, spans) / HOUR_S).toBeCloseTo(9.5 + endsAfterH, 9);
  });

  test('counts each span at its own rate: 2 h at 30 C use 4 of 8 h, the other 4 follow at 20 C', () => {
    const spans = [
      { fromS: 0, temperatureK: toKelvin(30) },
      { fromS: 2 * HOUR_S, temperatureK: toKelvin(20) },
    ];
    expect(lifeEndS(8 * HOUR_S, 0, spans) / HOUR_S).toBeCloseTo(6, 9);
  });

  test('that began while a span ran, counts from then: 1 h at 30 C uses 2 of 8 h, the other 6 follow at 20 C', () => {
    const spans = [
      { fromS: 0, temperatureK: toKelvin(30) },
      { fromS: 2 * HOUR_S, temperatureK: toKelvin(20) },
    ];
    expect(lifeEndS(8 * HOUR_S, HOUR_S, spans) / HOUR_S).toBeCloseTo(8, 9);
    expect(lifeEndS(8 * HOUR_S, 5 * HOUR_S, spans) / HOUR_S).toBeCloseTo(13, 9);
  });

  test('without a reading of the air is taken at 20 C', () => {
    expect(lifeEndS(8 * HOUR_S, HOUR_S, []) / HOUR_S).toBe(9);
  });

  test('is used up exactly at its end, whatever the air did', () => {
    const air = fc.array(
      fc.record({
        lengthS: fc.integer({ min: 1, max: 50_000 }),
        celsius: fc.double({ min: 0, max: 40, noNaN: true }),
      }),
      { minLength: 1, maxLength: 12 },
    );
    fc.assert(
      fc.property(air, fc.integer({ min: 60, max: 200_000 }), (parts, lifeS) => {
        let atS = 0;
        const spans = parts.map(({ lengthS, celsius }) => {
          const span = { fromS: atS, temperatureK: toKelvin(celsius) };
          atS += lengthS;
          return span;
        });
        const endS = lifeEndS(lifeS, 0, spans);
        const usedS = spans.reduce((sum, { fromS, temperatureK }, i) => {
          const untilS = Math.min(endS, spans[i + 1]?.fromS ?? Number.POSITIVE_INFINITY);
          return sum + Math.max(0, untilS - fromS) * ageingRate(temperatureK);
        }, 0);
        expect(usedS / lifeS).toBeCloseTo(1, 9);
      }),
    );
  });
});
