import { describe, expect, test } from 'vitest';
import type { EntryBody } from '../../../src/logbook/entry';
import { fold } from '../../../src/logbook/fold/fold';
import { tonerOn } from '../../../src/shop/zone/toner';
import { entry, fillJar, id, JAR, layCoat, PIECE, startPiece } from '../../logbook/entries';

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
  return tonerOn(PIECE, RAIL, fold(bodies.map((body, n) => entry(n + 1, body))));
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
