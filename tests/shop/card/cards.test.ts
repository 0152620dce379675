import { describe, expect, test } from 'vitest';
import type { CardReading } from '../../../src/estimator/card/card';
import type { Entry, EntryBody } from '../../../src/logbook/entry';
import { fold } from '../../../src/logbook/fold/fold';
import { cardPlan } from '../../../src/shop/card/card-plan';
import { cardFor, cardsOf, counted, type TestCard } from '../../../src/shop/card/cards';
import { nextWeighing } from '../../../src/shop/card/next-weighing';
import { oddWeight, stepOf } from '../../../src/shop/card/odd-weight';
import { cardRequest } from '../../../src/shop/card/request';
import {
  correct,
  DAY_1_MS,
  entry,
  fillJar,
  id,
  JAR,
  layCoat,
  PIECE,
  startPiece,
  strike,
} from '../../logbook/entries';

const HOUR_MS = 3_600_000;
const DAY_MS = 24 * HOUR_MS;
const CARD = id(0xc1);
const g = (text: string) => ({ text, unit: 'g' }) as const;
const um = (text: string) => ({ text, unit: 'um' }) as const;

const made = (more: Partial<Extract<EntryBody, { kind: 'card-made' }>> = {}): EntryBody => ({
  kind: 'card-made',
  card: CARD,
  piece: PIECE,
  area: { text: '200', unit: 'cm2' },
  faces: 1,
  bare: g('1.000'),
  division: g('0.001'),
  ...more,
});
const coated = (coat?: string): EntryBody => ({
  kind: 'card-coated',
  card: CARD,
  jar: JAR,
  how: 'spray',
  film: { by: 'wet', wetFilm: um('85') },
  ...(coat !== undefined && { coat }),
});
const weighed = (grams: string, more: object = {}): EntryBody => ({
  kind: 'card-weighed',
  card: CARD,
  mass: g(grams),
  ...more,
});
const START: readonly Entry[] = [
  entry(1, startPiece()),
  entry(2, fillJar()),
  entry(3, made()),
  entry(4, layCoat()),
  entry(5, coated(id(4))),
];
const shopOf = (...more: Entry[]) => fold([...START, ...more]);
const cardOf = (...more: Entry[]) => cardsOf(shopOf(...more)).get(CARD) as TestCard;
const COAT_MS = DAY_1_MS + 4 * 60_000;

describe('a test card', () => {
  test('is what was said of it', () => {
    const card = cardOf(entry(6, weighed('1.733')));
    expect(card).toMatchObject({ pieceId: PIECE, areaM2: 0.02, bareKg: 0.001, divisionKg: 1e-6 });
    expect(card.weighings.map(({ mass }) => mass.si)).toEqual([expect.closeTo(1.733e-3, 12)]);
    expect([...card.withCoats]).toEqual([id(4)]);
  });

  test('has both its faces coated where it was said so', () => {
    const shop = fold([entry(1, made({ faces: 2 }))]);
    expect(cardsOf(shop).get(CARD)?.areaM2).toBeCloseTo(0.04, 12);
  });

  test('gets its coat as the coat of the piece is corrected, and loses it where that is undone', () => {
    const corrected = cardOf(entry(6, correct(id(4), { film: { by: 'wet', wetFilm: um('120') } })));
    expect(corrected.coats[0]?.film).toMatchObject({ wetFilm: { si: expect.closeTo(120e-6, 12) } });
    expect(cardOf(entry(6, strike(id(4)))).coats).toEqual([]);
  });

  test('keeps what was left out, and does not count it', () => {
    const card = cardOf(entry(6, weighed('1.733')), entry(7, weighed('1.9', { leftOut: 'dust' })));
    expect(card.weighings).toHaveLength(2);
    expect(counted(card).map(({ mass }) => mass.typed.text)).toEqual(['1.733']);
  });

  test('takes the next coat of its piece until it is dried warm or ended', () => {
    const find = (...more: Entry[]) => cardFor(PIECE, JAR, shopOf(...more))?.id;
    const warm = { temperature: { text: '57', unit: 'C' }, time: { text: '24', unit: 'h' } };
    expect(find()).toBe(CARD);
    expect(find(entry(6, weighed('1.7', { warm })))).toBeUndefined();
    expect(find(entry(6, { kind: 'card-ended', card: CARD }))).toBeUndefined();
    expect(cardFor(id(0xa2), JAR, shopOf())).toBeUndefined();
  });
});

test('two cards keep their coats and weighings apart', () => {
  const other = id(0xc2);
  const of = (line: EntryBody): EntryBody => ({ ...line, card: other }) as EntryBody;
  const cards = cardsOf(
    shopOf(entry(6, of(made())), entry(7, of(weighed('1.5'))), entry(8, weighed('1.733'))),
  );
  expect(cards.get(other)).toMatchObject({ coats: [], weighings: [{ id: id(7) }] });
  expect(cards.get(CARD)?.weighings.map((line) => line.id)).toEqual([id(8)]);
});

describe('a card beside no piece', () => {
  const [A, B] = [id(0xd1), id(0xd2)];
  const { piece: _, ...alone } = made() as Extract<EntryBody, { kind: 'card-made' }>;
  const card = (at: number, of: string) => entry(at, { ...alone, card: of } as EntryBody);
  const coat = (at: number, of: string, jar: string) =>
    entry(at, { ...coated(), card: of, jar } as EntryBody);
  const START_ALONE = [entry(1, startPiece()), entry(2, fillJar()), entry(3, fillJar(id(0xb2)))];
  const found = (piece: string | undefined, jar: string, ...more: Entry[]) =>
    cardFor(piece, jar, fold([...START_ALONE, ...more]))?.id;

  test('has its coats as its own; one beside a piece has them as that piece’s', () => {
    const pieceOf = (of: string, ...more: Entry[]) =>
      cardsOf(fold([...START_ALONE, ...more]))
        .get(of)
        ?.coats.map((one) => one.piece);
    expect(pieceOf(A, card(4, A), coat(5, A, JAR))).toEqual([A]);
    const alone = cardsOf(fold([...START_ALONE, card(4, A), coat(5, A, JAR)])).get(A);
    expect(alone?.withCoats.size).toBe(0); // coated by itself, with no coat of a piece
    expect(pieceOf(CARD, entry(4, made()), entry(5, coated()))).toEqual([PIECE]);
  });

  test('takes its first coat with any, and goes on with the jar of its last', () => {
    expect(found(PIECE, JAR, card(4, A))).toBe(A);
    expect(found(undefined, JAR, card(4, A))).toBe(A);
    expect(found(PIECE, JAR, card(4, A), coat(5, A, JAR))).toBe(A);
    expect(found(PIECE, id(0xb2), card(4, A), coat(5, A, JAR))).toBeUndefined();
    expect(found(PIECE, JAR, card(4, A), coat(5, A, JAR), coat(6, A, id(0xb2)))).toBeUndefined();
    expect(found(PIECE, JAR, card(4, A), card(5, B))).toBe(B);
  });

  test('stands behind the one that lies beside the piece', () => {
    expect(found(PIECE, JAR, entry(4, made()), card(5, A))).toBe(CARD);
    expect(found(id(0xa9), JAR, entry(4, made()), card(5, A))).toBe(A);
    expect(found(id(0xa9), JAR, entry(4, made()))).toBeUndefined();
  });
});

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
