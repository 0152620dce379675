import { expect, test } from 'vitest';
import type { Entry, EntryBody } from '../../../src/logbook/entry';
import { fold } from '../../../src/logbook/fold/fold';
import { firstPageOf } from '../../../src/logbook/storage/write-first-page';
import { entry, fillJar, id, JAR, layCoat, PIECE, startPiece, strike } from '../entries';

// What a cold start reads first of a long logbook; the limits of 5,000 entries and 60 days are judgement, no source.
const NOW_MS = Date.UTC(2026, 2, 1, 8);
const DAY_MS = 86_400_000;
const CLOSED = id(0xa2);
const OLD_MS = NOW_MS - 100 * DAY_MS;
const RECENT_MS = NOW_MS - 60 * DAY_MS;
const air: EntryBody = {
  kind: 'air-read',
  temperature: { text: '21', unit: 'C' },
  humidity: { text: '50', unit: '%' },
  movement: 'gentle',
};
const note = (piece: string): EntryBody => ({
  kind: 'piece-noted',
  piece,
  text: 'A chip.',
  isPrivate: false,
});
const coat = { ...layCoat(), air: id(5) } as EntryBody;

const some: readonly Entry[] = [
  entry(1, startPiece(), OLD_MS),
  entry(2, startPiece(CLOSED), OLD_MS),
  entry(3, fillJar(), OLD_MS),
  entry(4, air, OLD_MS), // named by no coat
  entry(5, air, OLD_MS),
  entry(6, coat, OLD_MS + 1),
  entry(7, note(PIECE), OLD_MS + 1),
  entry(8, note(CLOSED), OLD_MS + 1),
  entry(9, { kind: 'piece-closed', piece: CLOSED }, OLD_MS + 2),
  entry(10, note(PIECE), OLD_MS + 1),
  entry(11, strike(id(10)), OLD_MS + 3),
  entry(12, note(CLOSED), RECENT_MS), // just young enough
  entry(13, note(CLOSED), RECENT_MS - 1),
  entry(14, air, RECENT_MS),
  entry(15, note(id(0xa9)), OLD_MS + 1), // its piece is still on another phone
  entry(16, { kind: 'jar-emptied', jar: JAR }, OLD_MS + 4),
];
/** A shop with so many entries, the others old readings that nobody asks for. */
const shopOf = (count: number) =>
  fold([...some, ...Array.from({ length: count - some.length }, (_, n) => entry(0x1000 + n, air, OLD_MS))]);

test('a logbook of fewer than 5,000 entries is read whole', () => {
  expect(firstPageOf(shopOf(4_999), NOW_MS)).toBeUndefined();
  expect(firstPageOf(shopOf(5_000), NOW_MS)).toBeDefined();
});

test('it holds what is young, what belongs to open pieces or to none, and the air that their coats name', () => {
  const page = firstPageOf(shopOf(5_000), NOW_MS);
  const numbers = page?.entries.map((one) => Number.parseInt(one.id.slice(-4), 16));
  expect(numbers).toEqual([5, 1, 3, 6, 7, 15, 11, 16, 12, 14]);
  expect(page?.after).toBe(id(0x1000 + 5_000 - some.length - 1));
});

test('a reading that is young and named stands in it once', () => {
  const young = [
    entry(0x500, air, NOW_MS),
    entry(0x501, { ...layCoat(), air: id(0x500) } as EntryBody, NOW_MS),
  ];
  const page = firstPageOf(fold([...shopOf(5_000).entries.values(), ...young]), NOW_MS);
  expect(page?.entries.filter((one) => one.id === id(0x500))).toHaveLength(1);
});
