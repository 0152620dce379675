import { describe, expect, test } from 'vitest';
import type { Entry, EntryBody, EntryOf } from '../../../../src/logbook/entry';
import { createFold, fold, type Shop } from '../../../../src/logbook/fold/fold';
import { documented } from '../../../../src/logbook/fold/piece/zones';
import {
  DAY_1_MS,
  entry,
  id,
  inTurn,
  JAR,
  MINUTE_MS,
  PIECE,
  photograph,
  startPiece,
  strike,
} from '../../entries';

const OTHER = id(0xa2);
const [EDGE, LID, PHOTO, SECOND, TONER, NOWHERE] = [
  id(0xc1),
  id(0xc2),
  id(0xe1),
  id(0xe2),
  id(0xf1),
  id(0xff),
];
const ratio = (value: number) => ({ text: String(value), unit: 'ratio' }) as const;
const atMs = (n: number): number => DAY_1_MS + n * MINUTE_MS;
const shopOf = (...bodies: readonly EntryBody[]): Shop => fold(bodies.map(inTurn));

describe('what is documented of a piece', () => {
  const zone = (zoneId: string, name: string, piece = PIECE): EntryBody => ({
    kind: 'zone-described',
    piece,
    zoneId,
    name,
    is: 'chip',
  });
  const outlineTo = (x: number) =>
    [
      [0, 0],
      [x, 0],
      [x, 1],
    ] as [[number, number], [number, number], [number, number]];
  const draw = (zoneId: string, photo: string, x: number): EntryBody => ({
    kind: 'zone-drawn',
    piece: PIECE,
    zoneId,
    photo,
    outline: outlineTo(x),
  });
  const note = (text: string, piece = PIECE): EntryBody => ({
    kind: 'piece-noted',
    piece,
    text,
    isPrivate: false,
  });
  const toner = (tonerId: string, jar: string): EntryBody => ({
    kind: 'toner-described',
    piece: PIECE,
    toner: tonerId,
    jar,
    white: 'D65/10',
  });
  const word = (care: string): EntryBody => ({ kind: 'record-worded', piece: PIECE, care });

  test('its places as they were last described, with the newest outline on each photo', () => {
    const shop = shopOf(
      zone(EDGE, 'Edge'), // 1
      zone(LID, 'Lid'), // 2
      draw(EDGE, PHOTO, 0.1),
      draw(EDGE, SECOND, 0.2),
      draw(LID, PHOTO, 0.3),
      draw(EDGE, PHOTO, 0.4),
      zone(EDGE, 'Front edge'), // 7
      zone(NOWHERE, 'On another piece', OTHER),
      photograph(PHOTO),
      photograph(SECOND),
    );
    const { zones } = documented(PIECE, shop);
    expect(
      zones.map(({ zoneId, name, markedMs, atMs: describedMs }) => [zoneId, name, markedMs, describedMs]),
    ).toEqual([
      [EDGE, 'Front edge', atMs(1), atMs(7)],
      [LID, 'Lid', atMs(2), atMs(2)],
    ]);
    expect([...(zones[0]?.outlines ?? [])]).toEqual([
      [PHOTO, outlineTo(0.4)],
      [SECOND, outlineTo(0.2)],
    ]);
    expect([...(zones[1]?.outlines.keys() ?? [])]).toEqual([PHOTO]);
    expect([...shop.zonePieces]).toEqual([
      [EDGE, PIECE],
      [LID, PIECE],
      [NOWHERE, OTHER],
    ]);
  });

  test('nothing that was drawn on a photo which is not of it any more, until it is again', () => {
    const mark: EntryOf<'photos-aligned'>['marks']['under'] = [
      [0, 0],
      [1, 1],
    ];
    const align = (under: string, over: string): EntryBody => ({
      kind: 'photos-aligned',
      piece: PIECE,
      under,
      over,
      marks: { under: mark, over: mark },
    });
    const logged = [
      startPiece(),
      startPiece(OTHER),
      zone(EDGE, 'Edge'),
      photograph(PHOTO), // 4
      photograph(SECOND),
      photograph(NOWHERE), // 6
      draw(EDGE, PHOTO, 0.1),
      draw(EDGE, SECOND, 0.2),
      align(PHOTO, SECOND),
      align(SECOND, PHOTO),
      align(SECOND, NOWHERE), // 11
    ].map(inTurn);
    const shown = (...more: readonly Entry[]) => {
      const { zones, alignments } = documented(PIECE, fold([...logged, ...more]));
      return [[...(zones[0]?.outlines.keys() ?? [])], alignments.map((one) => one.id)];
    };
    const moved = entry(20, { kind: 'corrected', entry: id(4), to: { piece: OTHER } });
    expect(shown()).toEqual([
      [PHOTO, SECOND],
      [id(9), id(10), id(11)],
    ]);
    expect(shown(moved)).toEqual([[SECOND], [id(11)]]);
    expect(shown(entry(20, strike(id(4))))).toEqual([[SECOND], [id(11)]]);
    expect(shown(moved, entry(21, strike(id(20))))).toEqual(shown());
    const there = documented(OTHER, fold([...logged, moved]));
    expect([there.photos.map(({ photo }) => photo), there.alignments]).toEqual([[PHOTO], []]);
  });

  test('what names a place that is not on it, by the word of another phone, as of the whole', () => {
    const inPlace = (body: EntryBody, zoneId = EDGE) => ({ ...body, zoneId }) as EntryBody;
    const logged = [
      zone(EDGE, 'Edge'),
      zone(LID, 'Lid'),
      inPlace(photograph(PHOTO)),
      inPlace(photograph(SECOND), LID),
      inPlace(note('A chip.')),
      inPlace(toner(TONER, JAR)),
      inPlace({
        kind: 'colour-read',
        match: TONER,
        piece: PIECE,
        of: { as: 'target' },
        white: 'D65/10',
        isDry: true,
        readings: [{ as: 'photo', L: ratio(72), a: ratio(1), b: ratio(2) }],
      } as unknown as EntryBody),
    ].map(inTurn);
    const places = (...more: readonly Entry[]) => {
      const { photos, notes, toners, readings } = documented(PIECE, fold([...logged, ...more]));
      return [...photos, ...notes, ...toners, ...readings].map(({ zoneId }) => zoneId);
    };
    expect(places()).toEqual([EDGE, LID, EDGE, EDGE, EDGE]);
    expect(places(entry(20, strike(id(1))))).toEqual([undefined, LID, undefined, undefined, undefined]);
  });

  test('its notes, its toners as last described, and what was last worded', () => {
    const shop = shopOf(
      note('One.'),
      note('Two.'),
      note('Elsewhere.', OTHER),
      toner(TONER, JAR),
      toner(id(0xf2), JAR),
      toner(TONER, NOWHERE),
      word('Dust it.'),
      word('Wipe it.'),
    );
    const { notes, toners, wording } = documented(PIECE, shop);
    expect(notes.map(({ text }) => text)).toEqual(['One.', 'Two.']);
    expect(toners.map(({ toner: name, jar }) => [name, jar])).toEqual([
      [TONER, NOWHERE],
      [id(0xf2), JAR],
    ]);
    expect(wording?.care).toBe('Wipe it.');
  });

  test('follows what is undone and corrected, though nothing new is said of the piece', () => {
    const grow = createFold();
    const noted = (shop: Shop) => documented(PIECE, shop).notes.map(({ id: noteId, at }) => [noteId, at]);
    const [one, two] = [note('One.'), note('Two.')].map(inTurn) as [Entry, Entry];
    const noon = '2026-03-01T12:00:00.000Z';
    expect(noted(grow([one, two]))).toEqual([
      [one.id, one.at],
      [two.id, two.at],
    ]);
    expect(noted(grow([entry(20, strike(two.id))]))).toEqual([[one.id, one.at]]);
    expect(noted(grow([entry(21, { kind: 'corrected', entry: one.id, to: { at: noon } })]))).toEqual([
      [one.id, noon],
    ]);
    expect(noted(grow([entry(22, strike(id(20)))]))).toEqual([
      [two.id, two.at],
      [one.id, noon],
    ]);
  });

  test('of a piece of which nothing was said is nothing', () => {
    expect(documented(NOWHERE, shopOf(note('One.')))).toEqual({
      zones: [],
      photos: [],
      alignments: [],
      notes: [],
      wording: undefined,
      toners: [],
      readings: [],
    });
  });
});
