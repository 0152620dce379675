import { describe, expect, test } from 'vitest';
import type { EntryBody } from '../../../src/logbook/entry';
import { fold } from '../../../src/logbook/fold/fold';
import { cautionsDue, sessionStartMs } from '../../../src/shop/cautions/cautions-due';
import { dayEndCautions } from '../../../src/shop/cautions/day-end';
import { isDayEndDue, isDayEndPressing } from '../../../src/shop/cautions/day-end-due';
import { CAUTIONS } from '../../../src/words/air/cautions';
import { DAY_1_MS, entry, fillJar, JAR, layCoat, startPiece } from '../../logbook/entries';

const HOUR_MS = 3_600_000;
const read = (cautions: readonly string[], act: 'spray' | 'end-day' = 'spray'): EntryBody => ({
  kind: 'cautions-read',
  act,
  cautions: [...cautions],
});
const shopOf = (...timed: readonly (readonly [hours: number, body: EntryBody])[]) =>
  fold(timed.map(([hours, body], n) => entry(n + 1, body, DAY_1_MS + hours * HOUR_MS)));
const jarIn = (shop: ReturnType<typeof shopOf>) => {
  const jar = shop.jars.get(JAR);
  if (!jar) throw new Error('no jar');
  return jar;
};
const due = (shop: ReturnType<typeof shopOf>, hours: number) =>
  cautionsDue(shop, jarIn(shop), 'spray', DAY_1_MS + hours * HOUR_MS).map(({ id }) => id);

const EVERY = CAUTIONS.map(({ id }) => id);

describe('before the first coat of a session', () => {
  test('all cautions of the jar stand; once confirmed, none', () => {
    expect(due(shopOf([0, fillJar()]), 1)).toEqual(
      expect.arrayContaining(['ignition', 'phone', 'overspray', 'mask']),
    );
    expect(due(shopOf([0, fillJar()], [1, read(EVERY)]), 1.1)).toEqual([]);
  });

  test('coats an hour apart keep the session open; a pause of more than four hours ends it', () => {
    const coats = [2, 4, 6].map((hours) => [hours, layCoat()] as const);
    const shop = shopOf([0, startPiece()], [0, fillJar()], [1, read(EVERY)], ...coats);
    expect(due(shop, 7)).toEqual([]);
    expect(due(shop, 10.5)).toContain('ignition');
  });

  test('what was not among the confirmed still stands', () => {
    expect(due(shopOf([0, fillJar()], [1, read(EVERY.filter((id) => id !== 'mask'))]), 1.1)).toEqual([
      'mask',
    ]);
  });

  test('confirming for the end of the day opens no spraying session', () => {
    expect(due(shopOf([0, fillJar()], [1, read(EVERY, 'end-day')]), 1.1)).toContain('ignition');
  });

  test('a silenced fire caution stands nevertheless', () => {
    const forged = { kind: 'caution-silenced', caution: 'ignition', silenced: true } as EntryBody;
    expect(due(shopOf([0, fillJar()], [0.5, forged]), 1)).toContain('ignition');
  });
});

describe('what was read once', () => {
  const act = (n: 'brush' | 'mix' | 'sand'): EntryBody => ({
    kind: 'cautions-read',
    act: n,
    cautions: [...EVERY],
  });

  test('before a drop need not be read again before spraying, before mixing it must', () => {
    expect(due(shopOf([0, fillJar()], [1, act('brush')]), 1.1)).toEqual([]);
    expect(due(shopOf([0, fillJar()], [1, act('mix')]), 1.1)).toContain('ignition');
    expect(due(shopOf([0, fillJar()], [1, act('sand')]), 1.1)).toContain('ignition');
  });

  test('four hours ago still holds, a minute longer ago it does not', () => {
    expect(due(shopOf([0, fillJar()], [1, read(EVERY)]), 5)).toEqual([]);
    expect(due(shopOf([0, fillJar()], [1, read(EVERY)]), 5.02)).toContain('ignition');
  });
});

describe('a jar that was padded with oil', () => {
  const padded = (more: object) => ({ ...layCoat(), how: 'pad', ...more }) as EntryBody;
  const brush = (...coats: EntryBody[]) => {
    const shop = shopOf([0, startPiece()], [0, fillJar()], ...coats.map((coat) => [1, coat] as const));
    return cautionsDue(shop, jarIn(shop), 'brush', DAY_1_MS + 9 * HOUR_MS).map(({ id }) => id);
  };

  test('calls for care of its rags, and no other does', () => {
    expect(brush(padded({ oil: true }))).toContain('rags');
    expect(brush(padded({ oil: false }))).not.toContain('rags');
    expect(brush(padded({}))).not.toContain('rags');
    expect(brush()).not.toContain('rags');
    const OTHER = '019caa01-0000-7000-9000-0000000000b2';
    const shop = shopOf(
      [0, startPiece()],
      [0, fillJar()],
      [0, fillJar(OTHER)],
      [1, padded({ oil: true, jar: OTHER })],
    );
    expect(cautionsDue(shop, jarIn(shop), 'brush', DAY_1_MS + 9 * HOUR_MS).map(({ id }) => id)).not.toContain(
      'rags',
    );
  });
});

test('what may be put away stays away once the person said so', () => {
  const silence: EntryBody = { kind: 'caution-silenced', caution: 'skin', silenced: true };
  expect(due(shopOf([0, fillJar()]), 1)).toContain('skin');
  expect(due(shopOf([0, fillJar()], [0, silence]), 1)).not.toContain('skin');
});

test('a session begins at the first of what was done without a long pause', () => {
  const shop = shopOf([0, startPiece()], [0, fillJar()], [1, layCoat()], [8, layCoat()], [10, layCoat()]);
  expect(sessionStartMs(shop, DAY_1_MS + 11 * HOUR_MS)).toBe(DAY_1_MS + 8 * HOUR_MS);
  expect(sessionStartMs(shop, DAY_1_MS + 20 * HOUR_MS)).toBe(DAY_1_MS + 20 * HOUR_MS);
});

describe('at the end of the day', () => {
  const laid = shopOf([0, startPiece()], [0, fillJar()], [2, layCoat()]);

  test('rags stand always, overspray where nitrocellulose was used', () => {
    expect(dayEndCautions(laid, DAY_1_MS + 9 * HOUR_MS).map(({ id }) => id)).toEqual(['rags', 'overspray']);
    expect(dayEndCautions(shopOf(), DAY_1_MS).map(({ id }) => id)).toEqual(['rags']);
  });

  test('what was laid sixteen hours ago belongs to this day, longer ago it does not', () => {
    const at = (hours: number) => DAY_1_MS + hours * HOUR_MS;
    expect([isDayEndDue(laid, at(17.9)), isDayEndDue(laid, at(18))]).toEqual([true, false]);
    expect(dayEndCautions(laid, at(18)).map(({ id }) => id)).toEqual(['rags']);
    const first = shopOf(
      [0, startPiece()],
      [0, fillJar()],
      [2, layCoat()],
      [8, layCoat()],
      [9, read(['rags'], 'end-day')],
    );
    expect(isDayEndDue(first, at(10))).toBe(false);
    const sprayed = shopOf([0, startPiece()], [0, fillJar()], [2, layCoat()], [3, read(['rags'])]);
    expect(isDayEndDue(sprayed, at(4))).toBe(true); // read before spraying, not for the end of the day
  });

  test('it is due after a coat until it is confirmed, and again after the next coat', () => {
    const at = (hours: number) => DAY_1_MS + hours * HOUR_MS;
    expect(isDayEndDue(shopOf(), at(9))).toBe(false);
    expect(isDayEndDue(laid, at(9))).toBe(true);
    expect(isDayEndPressing(laid, at(3))).toBe(false);
    expect(isDayEndPressing(laid, at(4))).toBe(true);
    const confirmed = [
      [0, startPiece()],
      [0, fillJar()],
      [2, layCoat()],
      [8, read(['rags'], 'end-day')],
    ] as const;
    expect(isDayEndDue(shopOf(...confirmed), at(9))).toBe(false);
    expect(isDayEndDue(shopOf(...confirmed, [10, layCoat()]), at(11))).toBe(true);
  });
});
