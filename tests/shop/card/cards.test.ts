import { describe, expect, test } from 'vitest';
import type { Entry, EntryBody } from '../../../src/logbook/entry';
import { fold } from '../../../src/logbook/fold/fold';
import { cardFor, cardsOf, counted } from '../../../src/shop/card/cards';
import { correct, entry, fillJar, id, JAR, PIECE, startPiece, strike } from '../../logbook/entries';

import { CARD, cardOf, coated, made, shopOf, um, weighed } from './a-card';

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
