import { describe, expect, test } from 'vitest';
import type { Entry, EntryBody } from '../../../src/logbook/entry';
import { fold } from '../../../src/logbook/fold/fold';
import { cardPlan } from '../../../src/shop/card/card-plan';
import { cardsOf, type TestCard } from '../../../src/shop/card/cards';
import { cardRequest } from '../../../src/shop/card/request';
import { entry, PIECE } from '../../logbook/entries';

import { CARD, COAT_MS, DAY_MS, HOUR_MS, shopOf, weighed } from './a-card';

describe('what the worker is asked', () => {
  const day = (n: number) => COAT_MS + n * DAY_MS;
  const ask = (...more: Entry[]) => {
    const shop = shopOf(...more);
    const asked = cardRequest(cardsOf(shop).get(CARD) as TestCard, shop, day(3));
    if (!asked.ok) throw new Error(asked.failure.kind);
    return asked.value.card;
  };

  test('goes through the warmth in which the card was dried', () => {
    const warm = { temperature: { text: '57', unit: 'C' }, time: { text: '24', unit: 'h' } };
    const { history, weighings } = ask(
      entry(6, weighed('1.3'), day(1)),
      entry(7, weighed('1.28', { warm }), day(3)),
    );
    const spans = history.air.filter(({ temperatureK }) => temperatureK > 320);
    expect(spans.map(({ fromS, temperatureK }) => [fromS / 86_400, temperatureK])).toEqual([
      [2, expect.closeTo(330.15, 9)],
    ]);
    expect(history.air.find(({ fromS }) => fromS >= 3 * 86_400)?.temperatureK).toBeLessThan(320);
    expect(weighings.map(({ isWarmDried }) => isWarmDried)).toEqual([false, true]);
  });

  test('leaves out what was weighed before its first coat, or as that was logged', () => {
    const masses = (atMs: number) =>
      ask(entry(6, weighed('1.01'), atMs), entry(7, weighed('1.3'), day(1))).weighings.map(({ massKg }) =>
        Number((massKg * 1000).toFixed(3)),
      );
    expect(masses(COAT_MS - 1)).toEqual([1.3]);
    expect(masses(COAT_MS)).toEqual([1.3]);
    expect(masses(COAT_MS + 1)).toEqual([1.01, 1.3]);
  });

  test('looks ahead from an hour after the last coat on, a fortnight at least', () => {
    const looked = (days: number) => {
      const shop = shopOf();
      const asked = cardRequest(cardsOf(shop).get(CARD) as TestCard, shop, day(days));
      if (!asked.ok) throw new Error(asked.failure.kind);
      const { lookAtS = [] } = asked.value.card;
      expect(lookAtS).toHaveLength(28);
      expect(lookAtS[0]).toBeCloseTo(3600, 6);
      return (lookAtS.at(-1) ?? 0) / 86_400;
    };
    expect(looked(3)).toBeCloseTo(14, 6);
    expect(looked(10)).toBeCloseTo(20, 6); // until the card is twice as old
    expect(looked(30)).toBeCloseTo(44, 6); // at most a fortnight beyond now
  });

  test('once it was dried warm it stays so, and warm time before the coat is none', () => {
    const warm = { temperature: { text: '57', unit: 'C' }, time: { text: '96', unit: 'h' } };
    const { history, weighings } = ask(
      entry(6, weighed('1.28', { warm }), day(2)),
      entry(7, weighed('1.281'), day(3)),
    );
    expect(weighings.map(({ isWarmDried }) => isWarmDried)).toEqual([true, true]);
    expect(history.air.find(({ temperatureK }) => temperatureK > 320)?.fromS).toBe(0);
  });

  test('says that a humidity is a guess where nobody read it', () => {
    const read: EntryBody = {
      kind: 'air-read',
      temperature: { text: '21', unit: 'C' },
      humidity: { text: '40', unit: '%' },
      movement: 'gentle',
    } as EntryBody;
    const { weighings } = ask(
      entry(6, read, day(1) - HOUR_MS),
      entry(7, weighed('1.3'), day(1)),
      entry(8, weighed('1.29'), day(2)),
    );
    expect(weighings[0]).toMatchObject({ humidity: expect.closeTo(0.4, 2) });
    expect(weighings[0]?.humiditySpread).toBeUndefined();
    expect(weighings[1]?.humiditySpread).toBeGreaterThan(0.05);
  });

  test('before one is made: three coats like the last one', () => {
    const plan = cardPlan({ pieceId: PIECE, areaM2: 0.02, divisionKg: 1e-6 }, shopOf(), day(1));
    if (!plan.ok) throw new Error(plan.failure.kind);
    expect(plan.value.plan.history.events).toHaveLength(3);
    expect(cardPlan({ pieceId: undefined, areaM2: 1, divisionKg: 1 }, fold([]), 0)).toMatchObject({
      ok: false,
    });
  });
});
