import { describe, expect, test } from 'vitest';
import type { EntryBody } from '../../../src/logbook/entry';
import { fold } from '../../../src/logbook/fold/fold';
import { tonerOn } from '../../../src/shop/zone/toner';
import { fillJar, id, inTurn, JAR, layCoat, PIECE, startPiece } from '../../logbook/entries';

const RAIL = id(0xc1);
const TONER = id(0xe1);
const ratio = (value: number) => ({ text: String(value), unit: 'ratio' }) as const;
const zone: EntryBody = {
  kind: 'zone-described',
  piece: PIECE,
  zoneId: RAIL,
  name: 'Rail',
  is: 'colour-loss',
};
const described: EntryBody = {
  kind: 'toner-described',
  piece: PIECE,
  zoneId: RAIL,
  toner: TONER,
  jar: JAR,
  white: 'D65/10',
};
const read = (of: object, [L, a, b]: readonly [number, number, number]): EntryBody =>
  ({
    kind: 'colour-read',
    match: TONER,
    piece: PIECE,
    zoneId: RAIL,
    of,
    white: 'D65/10',
    isDry: true,
    readings: [{ as: 'lab', L: ratio(L), a: ratio(a), b: ratio(b) }],
  }) as EntryBody;
const passes = (count: number): EntryBody =>
  ({
    ...layCoat(),
    zoneId: RAIL,
    film: { by: 'passes', passes: count, perPass: { text: '12', unit: 'um' } },
  }) as EntryBody;
const railWith = (...more: EntryBody[]) => {
  const bodies = [startPiece(), fillJar(), zone, described, ...more];
  return tonerOn(PIECE, RAIL, fold(bodies.map(inTurn)));
};
const TARGET = read({ as: 'target' }, [72, 14, 38]);
const GROUND = read({ as: 'on-piece' }, [82, 4, 24]);
const AFTER_2 = read({ as: 'on-piece', passes: 2 }, [76, 10, 33]);

describe('a toner on a chair rail', () => {
  const rail = railWith(TARGET, GROUND, passes(1), passes(1), AFTER_2);
  const dE = (count: number): number => rail?.rows.find((row) => row.passes === count)?.dE00 ?? Number.NaN;

  // Worked by hand from the readings, D65/10 (common practice, no source).
  test.each([
    { count: 3, low: 1.1, high: 1.3 },
    { count: 3.5, low: 0.15, high: 0.3 },
    { count: 4, low: 1.5, high: 1.6 },
  ])('is $low to $high from its target after $count passes', ({ count, low, high }) => {
    expect(dE(count)).toBeGreaterThanOrEqual(low);
    expect(dE(count)).toBeLessThanOrEqual(high);
  });

  test('has 2 on and 1.5 to go: one full pass, then one at half strength', () => {
    expect(rail?.passesOn).toBe(2);
    expect(rail?.plan).toMatchObject({ kind: 'passes', fullPasses: 1, endsWithHalfPass: true });
  });

  test('counts half passes, and reads the piece again without doubling anything', () => {
    const later = railWith(TARGET, GROUND, AFTER_2, passes(3), passes(0.5), AFTER_2);
    expect(later?.passesOn).toBe(3.5);
    expect(later?.plan).toEqual(rail?.plan);
  });

  test('counts the passes of its own jar at its own place, and a coat by film as one', () => {
    const elsewhere = { ...passes(1), zoneId: id(0xc2) } as EntryBody;
    const other = { ...passes(1), jar: id(0xb9) } as EntryBody;
    const byFilm = { ...layCoat(), zoneId: RAIL } as EntryBody;
    expect(railWith(passes(2), elsewhere, other, byFilm)?.passesOn).toBe(3);
  });

  test('is told pass by pass: as read, then in halves from the newest reading', () => {
    const after1 = read({ as: 'on-piece', passes: 1 }, [79, 7, 28]);
    const rows = railWith(TARGET, GROUND, AFTER_2, after1)?.rows ?? [];
    expect(rows.map(({ passes, isRead }) => [passes, isRead])).toEqual([
      [0, true],
      [1, true],
      [2, true],
      [2.5, false],
      [3, false],
      [3.5, false],
      [4, false],
    ]);
    expect(rows.slice(0, 3).map(({ lab }) => [lab.L, lab.a, lab.b])).toEqual([
      [82, 4, 24],
      [79, 7, 28],
      [76, 10, 33],
    ]);
  });

  test('has no row for a pass that was read wet alone', () => {
    const wet = { ...read({ as: 'on-piece', passes: 1 }, [79, 7, 28]), isDry: false } as EntryBody;
    const rows = railWith(TARGET, GROUND, AFTER_2, wet)?.rows ?? [];
    expect(rows.map(({ passes }) => passes)).toEqual([0, 2, 2.5, 3, 3.5, 4]);
  });

  test('goes by the readings of its own place and name, dry and by an instrument', () => {
    const others = [{ match: id(0xe2) }, { zoneId: id(0xc2), match: id(0xe2) }, { isDry: false }];
    for (const other of others)
      expect(railWith({ ...TARGET, ...other } as EntryBody, GROUND, AFTER_2)?.target).toBeUndefined();
    expect(railWith(TARGET, GROUND, AFTER_2)?.target).toMatchObject({ L: 72 });
  });

  test.each([
    { without: 'its target', said: [GROUND, AFTER_2] },
    { without: 'its ground', said: [TARGET, AFTER_2] },
    { without: 'a toned reading', said: [TARGET, GROUND] },
  ])('foretells nothing without $without', ({ said }) => {
    const state = railWith(...said);
    expect(state?.rows).toEqual([]);
    expect(state?.plan).toBeUndefined();
  });

  test('is not there where none was described for the place', () => {
    const bodies = [startPiece(), fillJar(), zone, described];
    const shop = fold(bodies.map(inTurn));
    expect(tonerOn(PIECE, undefined, shop)).toBeUndefined();
    expect(tonerOn(PIECE, RAIL, shop)?.toner.toner).toBe(TONER);
  });

  test('passes within the tolerance that was said, 1 where none was', () => {
    const near = read({ as: 'on-piece', passes: 2 }, [72.9, 14, 38]); // 0.7 off
    expect(railWith(TARGET, GROUND, near)?.plan?.kind).toBe('already-there');
    const strict = { ...described, tolerance: ratio(0.5) } as EntryBody;
    expect(railWith(strict, TARGET, GROUND, near)?.plan?.kind).not.toBe('already-there');
    const far = read({ as: 'on-piece', passes: 2 }, [73.6, 14, 38]); // 1.2 off
    expect(railWith(TARGET, GROUND, far)?.plan?.kind).not.toBe('already-there');
  });

  test('says so when it is too dark already', () => {
    const dark = railWith(TARGET, GROUND, read({ as: 'on-piece', passes: 5 }, [66, 18, 42]));
    expect(dark?.plan).toEqual({ kind: 'cannot-be-made-lighter' });
  });

  test('keeps readings of a card apart from those of the piece', () => {
    const card = railWith(TARGET, GROUND, read({ as: 'toned', passes: 2 }, [76, 10, 33]));
    expect(card?.rows).toEqual([]);
    expect(card?.plan).toBeUndefined();
  });
});
