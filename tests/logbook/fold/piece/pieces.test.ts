import { describe, expect, test } from 'vitest';
import type { EntryBody } from '../../../../src/logbook/entry';
import { createFold, fold, type Shop } from '../../../../src/logbook/fold/fold';
import {
  check,
  DAY_1_MS,
  entry,
  fillJar,
  id,
  inTurn,
  layCoat,
  MINUTE_MS,
  PIECE,
  sand,
  startPiece,
  strike,
} from '../../entries';

const OTHER = id(0xa2);
const NOWHERE = id(0xff);
const atMs = (n: number): number => DAY_1_MS + n * MINUTE_MS;
const shopOf = (...bodies: readonly EntryBody[]): Shop => fold(bodies.map(inTurn));

describe('a piece', () => {
  const area = { text: '2', unit: 'm2' } as const;
  const oldFilm = { text: '60', unit: 'um' } as const;

  test('is as it was begun and changed, field by field, and closed when it was last', () => {
    const { pieces } = shopOf(
      { ...startPiece(), oldFilm, note: 'A gift.' } as EntryBody,
      { kind: 'piece-changed', piece: PIECE, base: 'sealed', area },
      { kind: 'piece-changed', piece: PIECE, name: 'Large box' },
      { kind: 'piece-changed', piece: NOWHERE, name: 'No box' },
      { kind: 'piece-closed', piece: PIECE },
      { kind: 'piece-closed', piece: PIECE }, // by two phones
    );
    expect([...pieces.values()]).toEqual([
      {
        id: PIECE,
        name: 'Large box',
        base: 'sealed',
        oldFilm: { si: expect.closeTo(60e-6, 12), typed: oldFilm },
        area: { si: 2, typed: area },
        note: 'A gift.',
        startedMs: atMs(1),
        closedMs: atMs(6),
        coats: [],
        sandings: [],
        checks: [],
        grounds: [],
      },
    ]);
  });

  test('on which nothing was done is the same one while others are worked on', () => {
    const grow = createFold();
    const before = grow([startPiece(), startPiece(OTHER), fillJar(), layCoat(OTHER)].map(inTurn));
    const after = grow([entry(9, layCoat())]);
    expect(after.pieces.get(OTHER)).toBe(before.pieces.get(OTHER));
    expect(after.pieces.get(PIECE)).not.toBe(before.pieces.get(PIECE));
    expect(before.pieces.get(PIECE)?.coats).toEqual([]);
    expect(
      grow([entry(10, layCoat())])
        .pieces.get(PIECE)
        ?.coats.map((coat) => coat.id),
    ).toEqual([id(9), id(10)]);
  });

  test('has as work on the whole what names a place that is not on it, and only that', () => {
    const [edge, lid] = [id(0xc1), id(0xc2)];
    const mark = (zoneId: string, piece = PIECE): EntryBody => ({
      kind: 'zone-described',
      piece,
      zoneId,
      name: 'Edge',
      is: 'chip',
    });
    const work = (zoneId: string) =>
      [layCoat(), sand(), check(), { kind: 'ground-laid', piece: PIECE, ground: 'glue' } as const].map(
        (body) => ({ ...body, zoneId }) as EntryBody,
      );
    const grow = createFold();
    const places = (shop: Shop) => {
      const { coats, sandings, checks, grounds } = shop.pieces.get(PIECE) ?? expect.unreachable();
      return [coats, sandings, checks, grounds].map((some) => some.map(({ zoneId }) => zoneId));
    };
    const bodies = [
      startPiece(),
      startPiece(OTHER),
      fillJar(),
      mark(lid, OTHER),
      ...work(edge),
      ...work(lid),
    ];
    expect(places(grow(bodies.map(inTurn)))).toEqual(Array(4).fill([undefined, undefined]));
    expect(places(grow([entry(20, mark(edge))]))).toEqual(Array(4).fill([edge, undefined]));
    expect(places(grow([entry(21, strike(id(20)))]))).toEqual(Array(4).fill([undefined, undefined]));
  });

  test('work of every sort on a piece that is not there is named', () => {
    const bodies: EntryBody[] = [
      { kind: 'piece-changed', piece: NOWHERE, name: 'Box' },
      { kind: 'piece-closed', piece: NOWHERE },
      { kind: 'ground-laid', piece: NOWHERE, ground: 'glue' },
      sand(),
      { kind: 'ground-laid', piece: PIECE, ground: 'glue' },
      startPiece(),
    ];
    expect(shopOf(...bodies).unplaced).toEqual([id(1), id(2), id(3)]);
  });
});

test('holds set aside are kept by piece, in the order in which they were', () => {
  const aside = (piece: string, rule: string): EntryBody => ({
    kind: 'hold-overridden',
    piece,
    rule,
    act: 'coat',
    reason: 'Only the hidden edge.',
  });
  const { overrides } = shopOf(aside(PIECE, 'film-prints'), aside(OTHER, 'blush'), aside(PIECE, 'blush'));
  expect([...overrides].map(([piece, some]) => [piece, some.map(({ rule }) => rule)])).toEqual([
    [PIECE, ['film-prints', 'blush']],
    [OTHER, ['blush']],
  ]);
});
