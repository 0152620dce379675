import { describe, expect, test } from 'vitest';
import type { CardReading } from '../../../src/estimator/card/card';
import { nextWeighing } from '../../../src/shop/card/next-weighing';
import { oddWeight, stepOf } from '../../../src/shop/card/odd-weight';
import { entry } from '../../logbook/entries';

import { COAT_MS, cardOf, DAY_MS, g, weighed } from './a-card';

/** Expected at 0.5, 1, 2 and 4 days: 1.30 to 1.27 g, give or take 4 mg in eight of ten. */
const expected = [0.5, 1, 2, 4].map((days, k) => ({
  atS: days * 86_400,
  lowKg: (1.296 - 0.01 * k) * 1e-3,
  likelyKg: (1.3 - 0.01 * k) * 1e-3,
  highKg: (1.304 - 0.01 * k) * 1e-3,
  gain: [0.02, 0.1, 0.4, 0.6][k] as number,
}));
const reading = {
  expected,
  dryKg: { mean: 0.22e-3, spread: 0.02e-3 },
  warmGain: 0.5,
} as unknown as CardReading;
const told = { reading, startMs: COAT_MS, isGuessed: false };

describe('a weight', () => {
  const odd = (text: string, card = cardOf()) =>
    oddWeight(card, told, { text, massKg: Number(text.replace(',', '.')) / 1000, atMs: COAT_MS + DAY_MS })
      ?.kind;

  test.each([
    ['1.290', undefined],
    ['1,290', undefined],
    ['1.301', undefined],
    ['1290', 'milligrams'],
    ['1.01', 'below'],
    ['0.9', 'below'],
    ['1.320', 'up'],
    ['1.250', 'down'],
    ['1.29', 'scale'],
    ['1.2900', 'scale'],
  ])('%s is asked about: %s', (text, kind) => {
    expect(odd(text)).toBe(kind);
  });

  test('in milligrams is offered in grams', () => {
    const at = { text: '1290', massKg: 1.29, atMs: COAT_MS + DAY_MS };
    expect(oddWeight(cardOf(), told, at)).toEqual({ kind: 'milligrams', grams: '1.29' });
  });

  // Dust weighs: at a division of 1 mg, and 0.22 g of film, 8.8 mg more than last time are too many.
  test('heavier than it was since its last coat is odd, though it is as light as expected', () => {
    const weighedAt = (days: number) => cardOf(entry(6, weighed('1.290'), COAT_MS + days * DAY_MS));
    expect(odd('1.298', weighedAt(0.8))).toBeUndefined();
    expect(odd('1.300', weighedAt(0.8))).toBe('up');
    expect(odd('1.300', weighedAt(-0.001))).toBeUndefined(); // a coat went on since
  });

  test('within four spreads of what is expected is not odd, beyond them it is', () => {
    // At one day 1.290 g, give or take 4 mg in eight of ten: a spread of 3.12 mg, four of them 12.5 mg.
    expect(['1.302', '1.303', '1.278', '1.277'].map((text) => odd(text))).toEqual([
      undefined,
      'up',
      undefined,
      'down',
    ]);
  });

  test('is odd below the bare foil with a third of its film, and not above', () => {
    const light = { ...told, reading: { ...reading, expected: [] } };
    const at = (text: string) =>
      oddWeight(cardOf(), light, { text, massKg: Number(text) / 1000, atMs: COAT_MS + DAY_MS })?.kind;
    expect([at('1.066'), at('1.067')]).toEqual(['below', undefined]); // 1 g and 0.3 of 0.22 g
    expect(
      oddWeight(cardOf(), undefined, { text: '1.001', massKg: 1.001e-3, atMs: COAT_MS }),
    ).toBeUndefined();
    expect(oddWeight(cardOf(), undefined, { text: '1.000', massKg: 1e-3, atMs: COAT_MS })?.kind).toBe(
      'below',
    );
  });

  test('on a scale that was said before is not asked about again', () => {
    expect(odd('1.29', cardOf(entry(6, weighed('1.30', { division: g('0.01') }))))).toBeUndefined();
  });

  test('goes by the step of its last digit', () => {
    expect(['1', '1.7', '1,73', '1.730'].map(stepOf)).toEqual(['1', '0.1', '0.01', '0.001']);
  });
});

describe('the next weighing', () => {
  const at = (days: number) => COAT_MS + days * DAY_MS;

  test('tells most at the best of the times until the card is twice as old', () => {
    expect(nextWeighing(cardOf(), told, at(0.1))).toEqual({ do: 'weigh', atMs: at(1) });
    expect(nextWeighing(cardOf(), told, at(1.2))).toEqual({ do: 'weigh', atMs: at(2) });
  });

  test('is after warm drying once it has lain open for two days and was weighed twice', () => {
    const twice = cardOf(entry(6, weighed('1.3'), at(0.5)), entry(7, weighed('1.29'), at(1)));
    expect(nextWeighing(twice, told, at(2)).do).toBe('weigh'); // four days tell more
    const less = { ...told, reading: { ...reading, warmGain: 0.7 } };
    expect(nextWeighing(twice, less, at(2)).do).toBe('dry-warm');
    expect(nextWeighing(twice, less, at(1.5)).do).toBe('weigh');
    expect(nextWeighing(cardOf(entry(6, weighed('1.3'), at(0.5))), less, at(2)).do).toBe('weigh');
  });

  test('is none where nothing more would tell', () => {
    const nothing = { ...reading, warmGain: 0, expected: expected.map((one) => ({ ...one, gain: 0.001 })) };
    expect(nextWeighing(cardOf(), { ...told, reading: nothing }, at(3))).toEqual({ do: 'nothing' });
    // Before it has lain open for two days it is weighed then, for what follows asks for it.
    expect(nextWeighing(cardOf(), { ...told, reading: nothing }, at(1))).toEqual({
      do: 'weigh',
      atMs: at(2),
    });
    const warm = { temperature: { text: '57', unit: 'C' }, time: { text: '24', unit: 'h' } };
    const dried = cardOf(entry(6, weighed('1.3', { warm }), at(0.9)));
    expect(nextWeighing(dried, { ...told, reading: nothing }, at(1))).toEqual({ do: 'nothing' });
  });

  test('is now where the best time was passed a moment ago, and at least six hours after a coat', () => {
    const flat = {
      ...told,
      reading: { ...reading, expected: expected.map((one) => ({ ...one, gain: 0.5 })) },
    };
    expect(nextWeighing(cardOf(), flat, at(0.51)).do).toBe('weigh');
    expect(nextWeighing(cardOf(), flat, at(0.51))).toEqual({ do: 'weigh', atMs: at(0.51) }); // within half an hour
    expect(nextWeighing(cardOf(), flat, at(0.53))).toEqual({ do: 'weigh', atMs: at(1) });
  });

  test('once dried warm it is not dried again', () => {
    const warm = { temperature: { text: '57', unit: 'C' }, time: { text: '24', unit: 'h' } };
    const dried = cardOf(entry(6, weighed('1.3'), at(0.5)), entry(7, weighed('1.28', { warm }), at(1.5)));
    const less = { ...told, reading: { ...reading, warmGain: 0.9 } };
    expect(nextWeighing(dried, less, at(2.5)).do).toBe('weigh');
  });
});
