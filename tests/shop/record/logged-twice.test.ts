import { expect, test } from 'vitest';
import type { Entry, EntryBody } from '../../../src/logbook/entry';
import { fold } from '../../../src/logbook/fold/fold';
import { loggedTwice } from '../../../src/shop/record/logged-twice';
import {
  DAY_1_MS,
  entry,
  fillJar,
  id,
  layCoat,
  MINUTE_MS,
  PIECE,
  startPiece,
  strike,
} from '../../logbook/entries';

const [BOOTH, BENCH] = ['b0071b0071', 'be7c4be7c4'];
const OTHER_JAR = id(0xb2);
const COAT_MS = DAY_1_MS + 60 * MINUTE_MS;

/** An entry as a phone logs it: its mark ends the id. */
const by = (phone: string, n: number, body: EntryBody, atMs?: number): Entry => {
  const logged = entry(n, body, atMs);
  return { ...logged, id: logged.id.slice(0, -12) + n.toString(16).padStart(2, '0') + phone };
};
const named = (phone: string, n: number): Entry =>
  by(phone, n, { kind: 'phone-named', phone, name: `Phone ${n}` });
const PHONES = [named(BOOTH, 1), named(BENCH, 2)];
const EDGE: EntryBody = {
  kind: 'zone-described',
  piece: PIECE,
  zoneId: id(0xc1),
  name: 'Edge',
  is: 'chip',
};
const SHOP = [entry(3, startPiece()), entry(4, fillJar()), entry(5, fillJar(OTHER_JAR)), entry(6, EDGE)];
const first = by(BOOTH, 10, layCoat(), COAT_MS);
const second = by(BENCH, 11, layCoat(), COAT_MS + 60_000);

const asked = (...more: Entry[]) => {
  const shop = fold([...SHOP, ...PHONES, ...more]);
  const piece = shop.pieces.get(PIECE);
  return piece && loggedTwice(piece, shop)?.map((coat) => coat.id);
};

test('a coat that two phones logged within a minute is asked about, the same two on every phone', () => {
  expect(asked(first, second)).toEqual([first.id, second.id]);
  expect(asked(second, first)).toEqual([first.id, second.id]);
});

test.each([
  { what: 'a second more than a minute later', other: by(BENCH, 11, layCoat(), COAT_MS + 61_000) },
  { what: 'on the same phone', other: by(BOOTH, 11, layCoat(), COAT_MS + 60_000) },
  { what: 'from another jar', other: by(BENCH, 11, layCoat(PIECE, OTHER_JAR), COAT_MS) },
  {
    what: 'on one place only',
    other: by(BENCH, 11, { ...layCoat(), zoneId: id(0xc1) } as EntryBody, COAT_MS),
  },
  { what: 'on a phone that has no name in this shop', other: by('aaaaaaaaaa', 11, layCoat(), COAT_MS) },
])('a coat $what is another coat', ({ other }) => {
  expect(asked(first, other)).toBeUndefined();
});

test('on a phone that works alone nothing is asked, however its ids end', () => {
  const shop = fold([...SHOP, first, second]);
  expect(loggedTwice(shop.pieces.get(PIECE) as never, shop)).toBeUndefined();
});

test('what was said to be one is one coat, and bringing it back asks again', () => {
  const undone = by(BENCH, 12, strike(second.id));
  expect(asked(first, second, undone)).toBeUndefined();
  expect(asked(first, second, undone, by(BOOTH, 13, strike(undone.id)))).toEqual([first.id, second.id]);
});

test('what was said to be two is not asked again, on any phone; a third coat is', () => {
  const apart = by(BENCH, 12, { kind: 'coat-apart', piece: PIECE, coat: second.id });
  expect(asked(first, second, apart)).toBeUndefined();
  const third = by(BOOTH, 14, layCoat(), COAT_MS + 62_000);
  expect(asked(first, second, apart, third)).toEqual([second.id, third.id]);
  expect(asked(first, second, apart, by(BOOTH, 13, strike(apart.id)))).toEqual([first.id, second.id]);
});
