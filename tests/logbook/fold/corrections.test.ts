import { describe, expect, test } from 'vitest';
import {
  type Entry,
  type EntryBody,
  type EntryOf,
  inItsVersion,
  parseEntry,
} from '../../../src/logbook/entry';
import { createFold, fold, type Shop } from '../../../src/logbook/fold/fold';
import {
  A_YEAR_ON_MS,
  check,
  correct,
  DAY_1_MS,
  entry,
  fillJar,
  id,
  JAR,
  layCoat,
  PIECE,
  SHIPPED,
  sand,
  startPiece,
  strike,
} from '../entries';

const OTHER_PIECE = id(0xa2);
const OTHER_JAR = id(0xb2);
const um = (text: string) => ({ text, unit: 'um' }) as const;
const noon = '2026-03-01T12:00:00.000Z';
const log = [
  entry(1, startPiece()),
  entry(2, startPiece(OTHER_PIECE)),
  entry(3, fillJar()),
  entry(4, fillJar(OTHER_JAR)),
  entry(5, layCoat()),
  entry(6, sand()),
  entry(7, check()),
  entry(8, layCoat()),
];
const corrected = (n: number, to: EntryOf<'corrected'>['to'], ...more: readonly Entry[]) =>
  fold([...log, entry(20, correct(id(n), to)), ...more]);

describe('a corrected entry counts as if it had been said so', () => {
  test('its time, and with it its place in the order', () => {
    const shop = corrected(5, { at: noon });
    expect(shop.pieces.get(PIECE)?.coats.map((coat) => [coat.id, coat.at])).toEqual([
      [id(8), entry(8, layCoat()).at],
      [id(5), noon],
    ]);
    expect(shop.records.get(PIECE)?.at(-1)).toMatchObject({ id: id(5), at: noon });
    expect(shop.last).toMatchObject({ id: id(5), at: noon });
  });

  test('its piece: gone from the one, on the other', () => {
    const { pieces, records } = corrected(5, { piece: OTHER_PIECE });
    expect(pieces.get(PIECE)?.coats.map((coat) => coat.id)).toEqual([id(8)]);
    expect(pieces.get(OTHER_PIECE)?.coats.map((coat) => coat.id)).toEqual([id(5)]);
    expect(records.get(PIECE)?.some((one) => one.id === id(5))).toBe(false);
  });

  test('its piece: the place that it was on stays behind, and comes back with the undo', () => {
    const place = id(0xc1);
    const onPlace = { ...layCoat(), zoneId: place } as EntryBody;
    const described: EntryBody = {
      kind: 'zone-described',
      piece: PIECE,
      zoneId: place,
      name: 'Edge',
      is: 'chip',
    };
    const moved = [
      entry(9, described),
      entry(10, onPlace),
      entry(21, correct(id(10), { piece: OTHER_PIECE })),
    ];
    const zoneOf = (piece: string, ...more: readonly Entry[]) =>
      fold([...log, ...moved, ...more])
        .pieces.get(piece)
        ?.coats.map(({ zoneId }) => zoneId);
    expect(zoneOf(OTHER_PIECE)).toEqual([undefined]);
    expect(zoneOf(PIECE, entry(22, strike(id(21))))).toContain(place);
    const back = entry(22, correct(id(10), { piece: PIECE, zoneId: place }));
    expect(zoneOf(PIECE, back)).toContain(place);
  });

  test('nothing else takes an entry from the place that it was on', () => {
    const onPlace = { ...layCoat(), zoneId: id(0xc1) } as EntryBody;
    for (const to of [{ at: noon }, { jar: OTHER_JAR }, { piece: PIECE }])
      expect(corrected(9, to, entry(9, onPlace)).corrected.get(id(9))?.entry).toMatchObject({
        ...to,
        zoneId: id(0xc1),
      });
  });

  test('but a place itself is never on another piece', () => {
    const described: EntryBody = {
      kind: 'zone-described',
      piece: PIECE,
      zoneId: id(0xc1),
      name: 'Edge',
      is: 'chip',
    };
    const shop = fold([...log, entry(9, described), entry(20, correct(id(9), { piece: OTHER_PIECE }))]);
    expect(shop.corrected.size).toBe(0);
    expect(shop.records.get(PIECE)?.some((one) => one.id === id(9))).toBe(true);
  });

  test('its jar and its amount', () => {
    const shop = corrected(5, { jar: OTHER_JAR, film: { by: 'wet', wetFilm: um('50') } });
    expect(shop.pieces.get(PIECE)?.coats[0]).toMatchObject({
      jar: OTHER_JAR,
      film: { wetFilm: { typed: um('50') } },
    });
  });

  test.each<{ what: string; body: EntryBody; to: EntryOf<'corrected'>['to']; shows: object }>([
    { what: 'a sanding', body: sand(), to: { removed: um('9') }, shows: { removed: um('9') } },
    {
      what: 'what was poured',
      body: { kind: 'poured', weighUp: id(0xd1), line: 0, scale: { text: '10', unit: 'g' } },
      to: { scale: { text: '12', unit: 'g' } },
      shows: { scale: { text: '12', unit: 'g' } },
    },
    {
      what: 'what was weighed',
      body: { kind: 'jar-weighed', jar: JAR, mass: { text: '10', unit: 'g' }, missing: 'used' },
      to: { mass: { text: '12', unit: 'g' } },
      shows: { mass: { text: '12', unit: 'g' } },
    },
    {
      what: 'what was drawn',
      body: { kind: 'jar-drawn', jar: JAR, volume: { text: '10', unit: 'mL' } },
      to: { volume: { text: '12', unit: 'mL' } },
      shows: { volume: { text: '12', unit: 'mL' } },
    },
    {
      what: 'how much was filled',
      body: fillJar(id(0xb3)),
      to: { amount: { text: '250', unit: 'mL' } },
      shows: { amount: { text: '250', unit: 'mL' } },
    },
    {
      what: 'the air',
      body: {
        kind: 'air-read',
        temperature: { text: '12', unit: 'C' },
        humidity: { text: '50', unit: '%' },
        movement: 'still',
      },
      to: { temperature: { text: '21', unit: 'C' }, humidity: { text: '45', unit: '%' } },
      shows: { temperature: { text: '21', unit: 'C' }, humidity: { text: '45', unit: '%' } },
    },
  ])('$what', ({ body, to, shows }) => {
    expect(corrected(9, to, entry(9, body)).corrected.get(id(9))?.entry).toMatchObject(shows);
  });

  test('also where the correction came before it, from another phone', () => {
    const grow = createFold();
    grow(log.filter((one) => one.id !== id(5)));
    grow([entry(20, correct(id(5), { at: noon }))]);
    expect(
      grow(log)
        .pieces.get(PIECE)
        ?.coats.map((coat) => coat.id),
    ).toEqual([id(8), id(5)]);
  });

  test('also where it is corrected again later, or one of its corrections is undone', () => {
    const grow = createFold();
    grow([...log, entry(20, correct(id(5), { at: noon }))]);
    const jarOf = (shop: Shop) => shop.pieces.get(PIECE)?.coats.find((coat) => coat.id === id(5))?.jar;
    expect(jarOf(grow([entry(21, correct(id(5), { jar: OTHER_JAR }))]))).toBe(OTHER_JAR);
    expect(jarOf(grow([entry(22, strike(id(21)))]))).toBe(JAR);
  });

  test('a place on the piece brings the version that can say it', () => {
    expect(corrected(5, { zoneId: id(0xc1) }).corrected.get(id(5))?.entry).toMatchObject({
      v: 2,
      zoneId: id(0xc1),
    });
  });
});

test('half a pass of a toner is corrected, by a line that only the newer app reads', () => {
  const film = { by: 'passes', passes: 3.5, perPass: um('12') } as const;
  const half = { ...layCoat(), film } as EntryBody;
  const to = { film: { ...film, perPass: um('14') } };
  const line = inItsVersion(entry(20, correct(id(9), to)));
  expect(line.v).toBe(2);
  expect(parseEntry(line, A_YEAR_ON_MS)).toEqual({ ok: true, value: line });
  expect(inItsVersion(entry(20, correct(id(9), { film: { ...to.film, passes: 3 } }))).v).toBe(1);
  const shop = fold([...log, inItsVersion(entry(9, half)), line]);
  expect(shop.pieces.get(PIECE)?.coats.at(-1)?.film).toMatchObject({
    passes: 3.5,
    perPass: { typed: um('14') },
  });
});

test('what was logged stays as it was logged: the backup and the other phone get both lines', () => {
  expect(corrected(5, { at: noon }).entries.get(id(5))).toEqual(log[4]);
});

test('the correction logged last has the last word, field by field', () => {
  const shop = corrected(5, { at: noon, jar: OTHER_JAR }, entry(21, correct(id(5), { jar: JAR })));
  expect(shop.corrected.get(id(5))).toMatchObject({ entry: { at: noon, jar: JAR }, by: [id(20), id(21)] });
});

test('a correction is undone like any other entry, and its undoing too', () => {
  const undone = entry(21, strike(id(20)));
  expect(corrected(5, { at: noon }, undone).corrected.size).toBe(0);
  expect(corrected(5, { at: noon }, undone).pieces.get(PIECE)?.coats[0]?.id).toBe(id(5));
  expect(corrected(5, { at: noon }, undone, entry(22, strike(id(21)))).corrected.size).toBe(1);
});

test('the last of several counts, though one of them corrects nothing', () => {
  const [one, none, other] = [{ jar: OTHER_JAR }, { removed: um('9') }, { at: noon }] as const;
  const shop = corrected(5, one, entry(22, correct(id(5), other)), entry(21, correct(id(5), none)));
  expect(shop.corrected.get(id(5))).toMatchObject({
    entry: { jar: OTHER_JAR, at: noon },
    by: [id(20), id(22)],
  });
});

test.each([
  { what: 'the name of a piece where it is started', n: 1, to: { piece: OTHER_PIECE } },
  { what: 'the name of a jar where it is filled', n: 3, to: { jar: OTHER_JAR } },
  { what: 'what the entry does not have', n: 7, to: { jar: OTHER_JAR } },
  { what: 'a strike', n: 9, to: { at: noon } },
  { what: 'a correction', n: 19, to: { at: noon } },
  { what: 'an entry that is not there', n: 99, to: { at: noon } },
])('does not correct $what', ({ n, to }) => {
  const more = [entry(9, strike(id(7))), entry(19, correct(id(8), { at: noon }))];
  expect([...corrected(n, to, ...more).corrected.keys()]).toEqual([id(8)]);
});

test('the first day is before noon', () => expect(Date.parse(noon)).toBeGreaterThan(DAY_1_MS));
test('the shipped correction moves its check', () => {
  const { corrected } = fold(SHIPPED as unknown as Entry[]);
  expect([...corrected.values()].map(({ entry }) => [entry.kind, entry.at])).toEqual([
    ['checked', '2026-03-02T09:06:00.000Z'],
  ]);
});
