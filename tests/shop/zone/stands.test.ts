import { describe, expect, test } from 'vitest';
import { published, wholeKey } from '../../../src/actions/outlook/awaited';
import type { Outlook } from '../../../src/actions/outlook/outlook';
import type { EntryBody } from '../../../src/logbook/entry';
import { fold, type Shop } from '../../../src/logbook/fold/fold';
import { standById, standsOf } from '../../../src/shop/zone/stands';
import {
  check,
  entry,
  fillJar,
  id,
  inTurn,
  layCoat,
  PIECE,
  sand,
  startPiece,
  strike,
} from '../../logbook/entries';

const CHIP = id(0xc1);
const EDGE = id(0xc2);
const describeZone = (zoneId = CHIP, more = {}): EntryBody => ({
  kind: 'zone-described',
  piece: PIECE,
  zoneId,
  name: 'Lower edge',
  is: 'chip',
  ...more,
});
const on = <Body extends EntryBody>(body: Body, zoneId = CHIP): Body => ({ ...body, zoneId });
const logbook = (...bodies: EntryBody[]) => bodies.map(inTurn);
const stands = (shop: Shop) => standsOf(shop.pieces.get(PIECE) ?? expect.unreachable(), shop);
const ids = (lines: readonly { readonly id: string }[]) => lines.map((line) => line.id);

describe('the places where a piece dries', () => {
  test('are the piece itself, untouched, where no zone is marked', () => {
    const shop = fold(logbook(startPiece(), fillJar(), layCoat()));
    expect(stands(shop)).toEqual([{ id: PIECE, zone: undefined, piece: shop.pieces.get(PIECE) }]);
    expect(stands(shop)[0]?.piece).toBe(shop.pieces.get(PIECE));
  });

  test('share what was done to the whole, and keep what was done to one of them', () => {
    const shop = fold(
      logbook(
        startPiece(),
        fillJar(),
        describeZone(),
        describeZone(EDGE, { base: 'sealed' }),
        layCoat(), // 5
        on(layCoat()), // 6
        on(sand()), // 7
        on(check()), // 8
        on(layCoat(), EDGE), // 9
        sand(), // 10
        check(), // 11
      ),
    );
    const [whole, chip, edge] = stands(shop).map(({ piece }) => piece);
    expect(ids(whole?.coats ?? [])).toEqual([id(5)]);
    expect(ids(chip?.coats ?? [])).toEqual([id(5), id(6)]);
    expect(ids(edge?.coats ?? [])).toEqual([id(5), id(9)]);
    expect(ids(whole?.sandings ?? [])).toEqual([id(10)]);
    expect(ids(chip?.sandings ?? [])).toEqual([id(7), id(10)]);
    expect(ids(chip?.checks ?? [])).toEqual([id(8)]);
    expect(ids(whole?.checks ?? [])).toEqual([id(11)]);
    expect([whole?.base, chip?.base, edge?.base]).toEqual(['bare-wood', 'bare-wood', 'sealed']);
    expect(shop.pieces.get(PIECE)?.coats).toHaveLength(3);
  });

  test('are found by the id of the zone, and gone with it when it is undone', () => {
    const entries = logbook(startPiece(), describeZone());
    expect(standById(CHIP, fold(entries))?.zone?.name).toBe('Lower edge');
    const undone = fold([...entries, entry(9, strike(id(2)))]);
    expect(standById(CHIP, undone)).toBeUndefined();
    expect(stands(undone)).toHaveLength(1);
  });

  test('go by the newest description; undone, by the one before', () => {
    const entries = logbook(startPiece(), describeZone(), describeZone(CHIP, { name: 'Upper edge' }));
    const zone = (shop: Shop) => standById(CHIP, shop)?.zone;
    expect(zone(fold(entries))).toMatchObject({
      name: 'Upper edge',
      markedMs: Date.parse(entries[1]?.at ?? ''),
    });
    expect(zone(fold([...entries, entry(9, strike(id(3)))]))?.name).toBe('Lower edge');
  });
});

describe('the outlook of a piece with zones', () => {
  const ready = (rubOutS: number, more = {}): Outlook =>
    ({
      state: 'ready',
      startMs: 0,
      stale: false,
      estimate: { milestones: { rubOut: { likelyS: rubOutS } } },
      ...more,
    }) as unknown as Outlook;
  const shop = fold(
    logbook(startPiece(), fillJar(), describeZone(), describeZone(EDGE), layCoat(), on(layCoat())),
  );

  test.each([
    { whole: ready(5), chip: ready(9), says: ready(9) },
    { whole: ready(9), chip: ready(5), says: ready(9) },
    { whole: ready(9, { stale: true }), chip: ready(12), says: ready(12, { stale: true }) },
    { whole: { state: 'computing' }, chip: ready(12), says: ready(12, { stale: true }) },
    { whole: { state: 'computing' }, chip: { state: 'computing' }, says: { state: 'computing' } },
    { whole: ready(9), chip: { state: 'failed', message: 'x' }, says: { state: 'failed', message: 'x' } },
  ] as { whole: Outlook; chip: Outlook; says: Outlook }[])(
    'is that of the place that is ready last',
    ({ whole, chip, says }) => {
      const own = new Map([
        [PIECE, whole],
        [CHIP, chip],
      ]);
      const all = published(shop, own);
      expect(all.get(PIECE)).toEqual(says);
      expect(all.get(CHIP)).toBe(chip);
      expect(all.get(wholeKey(PIECE))).toBe(whole);
    },
  );

  test('stays as it is where there are no zones', () => {
    const plain = fold(logbook(startPiece(), fillJar(), layCoat()));
    const own = new Map([[PIECE, ready(5)]]);
    expect([...published(plain, own)]).toEqual([...own]);
  });
});
