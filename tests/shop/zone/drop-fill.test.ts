import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { EntryBody } from '../../../src/logbook/entry';
import { fold } from '../../../src/logbook/fold/fold';
import { DROPS_A_DAY, dropFillOf, lastDropDay } from '../../../src/shop/zone/drop-fill';
import { standById } from '../../../src/shop/zone/stands';
import { fillJar, id, inTurn, layCoat, PIECE, startPiece } from '../../logbook/entries';

const CHIP = id(0xc1);
const mm = (text: string) => ({ text, unit: 'mm' }) as const;
/** A chip on a lower edge, 14 x 6 mm, 0.18 mm deep (worked by hand; common practice, no source). */
const chip = (more = {}): EntryBody => ({
  kind: 'zone-described',
  piece: PIECE,
  zoneId: CHIP,
  name: 'Lower edge',
  is: 'chip',
  length: mm('14'),
  width: mm('6'),
  depth: mm('0.18'),
  ...more,
});
const fillWith = (solids: number, drops = 0, zone = chip()) => {
  const drop = { ...layCoat(), how: 'brush-fill', zoneId: CHIP } as EntryBody;
  const bodies = [startPiece(), fillJar(), zone, ...Array.from({ length: drops }, () => drop)];
  const shop = fold(bodies.map(inTurn));
  return dropFillOf(standById(CHIP, shop) ?? expect.unreachable(), solids);
};

describe('the drop fill of a chip', () => {
  // ln(0.05)/ln(1 - m s) at 25 % solids: 10.41 level, 7.99 at a mound of 1.25, 6.37 at 1.5.
  test('takes 7 to 11 drops of brush lacquer, about 8', () => {
    expect(fillWith(0.25)?.drops).toEqual({ few: 7, usual: 8, many: 11 });
  });

  test('is of about 15 mm3: the smallest pool', () => {
    expect((fillWith(0.25)?.voidM3 ?? 0) * 1e9).toBeCloseTo(15.12, 2);
    expect((fillWith(0.25)?.wetM3 ?? 0) * 1e9).toBeCloseTo(57.5, 0);
  });

  test('counts the drops that are in, and the next fills a share of what is still open', () => {
    const third = fillWith(0.25, 3);
    expect(third?.done).toBe(3);
    expect((third?.nextDryM ?? 0) * 1e6).toBeCloseTo(180 * 0.6875 ** 3 * 0.3125, 3);
  });

  test('goes by the area where it is no rectangle', () => {
    const round = chip({ area: { text: '60', unit: 'mm2' } });
    expect((fillWith(0.25, 0, round)?.voidM3 ?? 0) * 1e9).toBeCloseTo(10.8, 2);
  });

  test.each([
    { what: 'depth', zone: chip({ depth: undefined }) },
    { what: 'width', zone: chip({ width: undefined }) },
  ])('is not known without its $what', ({ zone }) => {
    expect(fillWith(0.25, 0, JSON.parse(JSON.stringify(zone)))).toBeUndefined();
  });
});

// Day 0 is Monday 2 March 2026; the shop works Monday to Friday.
const isWeekday = (day: number): boolean => day % 7 < 5;

describe('the last drop', () => {
  test.each([
    { drops: 7, aDay: DROPS_A_DAY.many, day: 2, is: 'Wednesday 4 March' },
    { drops: 11, aDay: DROPS_A_DAY.few, day: 7, is: 'Monday 9 March' },
    { drops: 8, aDay: DROPS_A_DAY.many, day: 2, is: 'Wednesday 4 March' },
    { drops: 1, aDay: 2, day: 0, is: 'today' },
  ])('of $drops at $aDay a day goes in on $is', ({ drops, aDay, day }) => {
    expect(lastDropDay(drops, aDay, 0, 0, isWeekday)).toBe(day);
  });

  test('counts those that are in today, and a weekend', () => {
    expect(lastDropDay(2, 3, 4, 2, isWeekday)).toBe(7); // one more on Friday, one on Monday
    expect(lastDropDay(1, 3, 5, 0, isWeekday)).toBe(7); // a Saturday
    expect(lastDropDay(1, 2, 0, 5, isWeekday)).toBe(1); // more went in today than usual
  });

  test('is looked for a year, where no day is a working day', () => {
    expect(lastDropDay(1, 2, 10, 0, () => false)).toBe(376);
  });

  test('is on a working day, with room for every drop until then and none to spare', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 40 }), fc.integer({ min: 1, max: 5 }), (drops, aDay) => {
        const last = lastDropDay(drops, aDay, 0, 0, isWeekday);
        const days = Array.from({ length: last + 1 }, (_, day) => day).filter(isWeekday);
        expect(isWeekday(last)).toBe(true);
        expect(days.length * aDay).toBeGreaterThanOrEqual(drops);
        expect((days.length - 1) * aDay).toBeLessThan(drops);
      }),
    );
  });
});
