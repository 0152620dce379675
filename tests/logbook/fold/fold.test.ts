import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Entry, EntryBody } from '../../../src/logbook/entry';
import { fold, type Shop } from '../../../src/logbook/fold/fold';
import {
  check,
  DAY_1_MS,
  entry,
  fillJar,
  id,
  JAR,
  layCoat,
  MINUTE_MS,
  PIECE,
  SHIPPED,
  sand,
  startPiece,
  strike,
} from '../entries';

const coatsOn = (shop: Shop, piece = PIECE) => shop.pieces.get(piece)?.coats.map((coat) => coat.id);
const bench = [entry(1, startPiece()), entry(2, fillJar())];

describe('the shop', () => {
  test('is empty at first', () => {
    const { pieces, jars, airReadings, forecast, settings, struck, unplaced } = fold([]);
    expect([pieces.size, jars.size, airReadings.length, struck.size, unplaced.length]).toEqual([
      0, 0, 0, 0, 0,
    ]);
    expect([forecast, settings]).toEqual([undefined, {}]);
  });

  test('holds what one of every kind of entry says, in SI and as typed', () => {
    const shop = fold(SHIPPED as unknown as Entry[]);
    const [shippedStart] = SHIPPED;
    const piece = shop.pieces.get(String(shippedStart?.['piece']));
    expect(piece).toMatchObject({
      name: 'Jewellery box, walnut, lid',
      base: 'sealed',
      oldFilm: { si: expect.closeTo(60e-6, 12), typed: { text: '60', unit: 'um' } },
      startedMs: Date.UTC(2026, 2, 1, 8),
      closedMs: Date.UTC(2026, 2, 20, 9),
      coats: [
        { how: 'spray', film: { by: 'wet' } },
        { how: 'brush', film: { by: 'passes', passes: 2 } },
      ],
      sandings: [{ stage: 'scuff', grit: 'P600' }],
      checks: [{ test: 'gum', result: 'passes' }],
    });
    // 1.9 ft2 of 0.09290304 m2
    expect(piece?.area?.si).toBeCloseTo(0.176515776, 12);
    expect([...shop.jars.values()]).toMatchObject([
      { name: 'Gloss, thinned', emptiedMs: Date.UTC(2026, 2, 3, 9), product: { volumeSolids: { si: 0.22 } } },
      // 1 fl oz (US) of it went into the third
      { name: 'Aged white', drawings: [{ volumeM3: expect.closeTo(29.5735e-6, 9) }], weighings: [] },
      { name: 'Both whites', drawings: [{ volumeM3: expect.closeTo(5e-6, 12) }], weighings: [{}] },
    ]);
    expect([...shop.ingredients.values()]).toMatchObject([
      {
        name: 'White base, gloss',
        density: { value: { si: expect.closeTo(1150, 6) } },
        putAwayMs: undefined,
      },
      { name: 'Black, tenth', putAwayMs: Date.UTC(2026, 2, 2, 8, 43) },
    ]);
    expect([...shop.recipes.values()]).toMatchObject([
      { version: 1, next: expect.stringMatching(/d2$/), putAwayMs: undefined, photos: [] },
      { version: 2, next: undefined, photos: [expect.stringMatching(/e1$/)] },
    ]);
    expect([...shop.weighUps.values()]).toMatchObject([
      { pours: [{ line: 0, massKg: expect.closeTo(0.04612, 9) }], jar: expect.stringMatching(/b2$/) },
    ]);
    // 70 F is 21.11 C, 294.26 K
    expect(shop.airReadings[0]?.temperature.si).toBeCloseTo(294.261, 3);
    expect(shop.forecast).toMatchObject({ nightTemperature: { si: 289.15 }, nightFrom: '19:30' });
    expect(shop.settings).toMatchObject({ units: 'us', altitude: { typed: { text: '1600', unit: 'ft' } } });
    expect(shop.unplaced).toEqual([]);
  });

  test('shows a backdated coat where it happened, not where it was logged', () => {
    const late = entry(9, layCoat(), DAY_1_MS + 3 * MINUTE_MS);
    const shop = fold([...bench, entry(4, layCoat()), late]);
    expect(coatsOn(shop)).toEqual([id(9), id(4)]);
  });

  test('shows coats of one instant in the order they were logged', () => {
    const [one, other] = [entry(5, layCoat(), DAY_1_MS + 5), entry(4, layCoat(), DAY_1_MS + 5)];
    expect(coatsOn(fold([...bench, one, other]))).toEqual([id(4), id(5)]);
  });

  test('clears a note and keeps what a change does not name', () => {
    const started = entry(1, { ...startPiece(), note: 'old' } as Entry);
    const shop = fold([started, entry(2, { kind: 'piece-changed', piece: PIECE, note: '' })]);
    expect(shop.pieces.get(PIECE)).toMatchObject({ name: 'Small box', note: '' });
  });

  test('holds a piece as it was first begun, though two phones began it', () => {
    const again = { ...startPiece(), name: 'Another box' } as EntryBody;
    const { pieces } = fold([entry(1, startPiece()), entry(2, again)]);
    expect([...pieces.values()]).toMatchObject([{ name: 'Small box', startedMs: DAY_1_MS + MINUTE_MS }]);
  });

  test('holds to the reminders as they were set last', () => {
    const set = (n: number, ...off: readonly 'scuff'[]) => entry(n, { kind: 'reminders-set', off });
    expect(fold([set(3), set(1), set(2, 'scuff')]).reminderSettings?.off).toEqual([]);
    expect(fold([set(1)]).reminderSettings?.off).toEqual([]);
    expect(fold([]).reminderSettings).toBeUndefined();
  });

  test('takes later settings over earlier ones, and keeps the others', () => {
    const patch = (n: number, value: Record<string, unknown>) =>
      entry(n, { kind: 'settings-changed', patch: value });
    const altitude = { text: '500', unit: 'm' };
    const { settings } = fold([patch(2, { units: 'us' }), patch(1, { units: 'metric', altitude })]);
    expect(settings).toMatchObject({ units: 'us', altitude: { si: 500 } });
  });

  test('names work whose piece is not there', () => {
    const shop = fold([entry(1, layCoat()), entry(2, sand()), entry(3, check())]);
    expect([shop.pieces.size, shop.unplaced]).toEqual([0, [id(1), id(2), id(3)]]);
  });

  test('keeps a struck entry in the treatment record', () => {
    const shop = fold([...bench, entry(3, layCoat()), entry(4, strike(id(3)))]);
    expect([...shop.entries.keys()]).toEqual([id(1), id(2), id(3), id(4)]);
  });
});

describe('striking', () => {
  const log = [...bench, entry(3, layCoat()), entry(4, layCoat())];
  test.each([
    { what: 'nothing', strikes: [], coats: [3, 4] },
    { what: 'a coat', strikes: [[5, 3]], coats: [4] },
    {
      what: 'a coat twice',
      strikes: [
        [5, 3],
        [6, 3],
      ],
      coats: [4],
    },
    {
      what: 'a strike brings the coat back',
      strikes: [
        [5, 3],
        [6, 5],
      ],
      coats: [3, 4],
    },
    {
      what: 'undo, redo, undo',
      strikes: [
        [5, 3],
        [6, 5],
        [7, 6],
      ],
      coats: [4],
    },
    {
      what: 'one of two strikes leaves the coat out',
      strikes: [
        [5, 3],
        [6, 3],
        [7, 5],
      ],
      coats: [4],
    },
    { what: 'what is not there', strikes: [[5, 99]], coats: [3, 4] },
    { what: 'itself', strikes: [[5, 5]], coats: [3, 4] },
    {
      what: 'each other strikes nothing',
      strikes: [
        [5, 6],
        [6, 5],
        [7, 3],
      ],
      coats: [4],
    },
    {
      what: 'a ring from outside opens it',
      strikes: [
        [5, 6],
        [6, 5],
        [7, 5],
      ],
      coats: [3, 4],
    },
  ])('$what', ({ strikes, coats }) => {
    const shop = fold([...log, ...strikes.map(([n = 0, target = 0]) => entry(n, strike(id(target))))]);
    expect(coatsOn(shop)).toEqual(coats.map(id));
  });
});

// Any log, forged ones included: coats before their piece, strikes at anything, one instant for many.
const bodies = fc.constantFrom(
  startPiece(),
  startPiece(id(0xa2)),
  fillJar(),
  layCoat(),
  layCoat(id(0xa2)),
  sand(),
  check(),
  ...[1, 2, 3, 4, 5, 6, 7, 8].map((n) => strike(id(n))),
);
const logs = fc
  .array(fc.record({ body: bodies, minutes: fc.integer({ min: 0, max: 5 }) }), { maxLength: 14 })
  .map((lines) => lines.map(({ body, minutes }, n) => entry(n + 1, body, DAY_1_MS + minutes * MINUTE_MS)));
const shuffled = logs.chain((log) =>
  fc.tuple(fc.constant(log), fc.shuffledSubarray(log, { minLength: log.length })),
);

describe('whatever was logged', () => {
  test('the order in which entries arrive makes no difference', () => {
    fc.assert(fc.property(shuffled, ([log, arrived]) => void expect(fold(arrived)).toEqual(fold(log))));
  });

  test('an entry that arrives twice counts once', () => {
    fc.assert(
      fc.property(logs, (log) => void expect(fold([...log, ...structuredClone(log)])).toEqual(fold(log))),
    );
  });

  test('a struck coat vanishes, and comes back when its strike is struck', () => {
    fc.assert(
      fc.property(logs, fc.nat(), (log, pick) => {
        const shop = fold(log);
        const coats = [...shop.pieces.values()].flatMap((piece) => piece.coats);
        const coat = coats[pick % Math.max(1, coats.length)];
        fc.pre(coat !== undefined);
        const undone = fold([...log, entry(90, strike(coat.id))]);
        const redone = fold([...log, entry(90, strike(coat.id)), entry(91, strike(id(90)))]);
        expect(coatsOn(undone, coat.piece)).toEqual(
          coatsOn(shop, coat.piece)?.filter((one) => one !== coat.id),
        );
        expect(redone.pieces).toEqual(shop.pieces);
      }),
    );
  });
});

test('a refold tells no entry anew', () => {
  const log = [...bench, entry(3, layCoat())];
  const [coat] = fold(log).pieces.get(PIECE)?.coats ?? [];
  const [again] = fold([...log, entry(4, layCoat())]).pieces.get(PIECE)?.coats ?? [];
  expect(coat).toBeDefined();
  expect(again).toBe(coat);
});

test('a jar keeps its first filling, and may be written down after its first coat', () => {
  const shop = fold([
    entry(1, startPiece()),
    entry(2, layCoat()),
    entry(3, fillJar()),
    entry(4, { ...fillJar(), name: 'Other' } as Entry),
  ]);
  expect(shop.jars.get(JAR)).toMatchObject({ name: 'Gloss', filledMs: DAY_1_MS + 3 * MINUTE_MS });
});
