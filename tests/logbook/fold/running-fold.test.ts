import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Entry, Kind } from '../../../src/logbook/entry';
import { asCorrected } from '../../../src/logbook/fold/corrections';
import { createFold, fold, foldAll } from '../../../src/logbook/fold/fold';
import { entryInSi, type Lines } from '../../../src/logbook/fold/in-si';
import { struckIds } from '../../../src/logbook/fold/strikes';
import { inOrder } from '../../../src/logbook/ids/order';
import { union } from '../../../src/logbook/union';
import {
  check,
  correct,
  entry,
  fillJar,
  id,
  layCoat,
  PIECE,
  SHIPPED,
  sand,
  startPiece,
  strike,
} from '../entries';

/** The whole fold from nothing, in the plainest way. */
function foldPlainly(logged: readonly Entry[]) {
  const all = [...union(logged).values()].sort(inOrder);
  const struck = struckIds(all);
  const corrected = new Map(all.flatMap((one) => correctedPlainly(one, all, struck)));
  const standing = all.map((one) => corrected.get(one.id)?.entry ?? one).sort(inOrder);
  const lines = {
    of: (kind: Kind) => standing.filter((one) => one.kind === kind && !struck.has(one.id)).map(entryInSi),
  } as unknown as Lines;
  return {
    entries: new Map(all.map((one) => [one.id, one])),
    last: standing.at(-1),
    newest:
      all
        .map((one) => one.id)
        .sort()
        .at(-1) ?? '',
    struck,
    corrected,
    records: recordsOf(standing),
    ...foldAll((part) => part(lines)),
  };
}

/** What stands of an entry after every correction of it, in the order of their ids. */
function correctedPlainly(one: Entry, all: readonly Entry[], struck: ReadonlySet<string>) {
  const sorted = [...all].sort((a, b) => (a.id < b.id ? -1 : 1));
  let entry = one;
  const by: string[] = [];
  for (const later of sorted) {
    if (later.kind !== 'corrected' || later.entry !== one.id || struck.has(later.id)) continue;
    const next = asCorrected(entry, later.to);
    if (!next) continue;
    entry = next;
    by.push(later.id);
  }
  return by.length > 0 ? [[one.id, { entry, by }] as const] : [];
}

function recordsOf(all: readonly Entry[]): Map<string, Entry[]> {
  const records = new Map<string, Entry[]>();
  for (const one of all)
    if ('piece' in one && one.piece !== undefined)
      records.set(one.piece, [...(records.get(one.piece) ?? []), one]);
  return records;
}

const shipped = SHIPPED as unknown as Entry[];
const MINUTE_MS = 60_000;
const DAY_1_MS = Date.parse('2026-03-01T08:00:00.000Z');
// Strikes at every shipped entry, at each other and at what is not there; work on a piece; contents forged under a known id.
const corrections = fc.constantFrom(
  { at: '2026-03-01T09:00:00.000Z' },
  { at: '2026-03-04T09:00:00.000Z', piece: PIECE },
  { piece: id(0xa7) },
  { jar: id(0xb7) },
  { removed: { text: '9', unit: 'um' } as const },
  { film: { by: 'wet', wetFilm: { text: '60', unit: 'um' } } as const },
);
const bodies = fc.oneof(
  fc.constantFrom(startPiece(), fillJar(), layCoat(), sand(), check()),
  fc.constantFrom(...shipped.map((one) => strike(one.id))),
  fc
    .tuple(fc.constantFrom(...shipped.map((one) => one.id)), corrections)
    .map(([one, to]) => correct(one, to)),
  fc.tuple(fc.integer({ min: 1, max: 12 }), corrections).map(([n, to]) => correct(id(n), to)),
  fc.integer({ min: 1, max: 12 }).map((n) => strike(id(n))),
);
const made = fc
  .record({ n: fc.integer({ min: 1, max: 12 }), body: bodies, minutes: fc.integer({ min: 0, max: 300 }) })
  .map(({ n, body, minutes }) => entry(n, body, DAY_1_MS + minutes * MINUTE_MS));
const chunks = fc
  .tuple(fc.subarray(shipped), fc.array(made, { maxLength: 14 }))
  .chain(([some, more]) => fc.shuffledSubarray([...some, ...more], { minLength: some.length + more.length }))
  .chain((log) =>
    fc
      .array(fc.integer({ min: 1, max: 6 }), { minLength: 1, maxLength: 20 })
      .map((sizes) => ({ log, sizes })),
  );

test('a shop that grows is at every step what a whole fold makes of the same entries', () => {
  fc.assert(
    fc.property(chunks, ({ log, sizes }) => {
      const grow = createFold();
      let taken = 0;
      for (let turn = 0; taken < log.length; turn++) {
        const next = taken + (sizes[turn % sizes.length] ?? 1);
        const grown = grow(log.slice(taken, next));
        taken = next;
        const plain = foldPlainly(log.slice(0, taken));
        expect(grown).toEqual(plain);
        expect([...grown.entries.keys()]).toEqual([...plain.entries.keys()]);
      }
    }),
    { numRuns: 150 },
  );
});

test('what another phone holds is taken in without changing the shop that was shown before', () => {
  const grow = createFold();
  const before = grow([entry(1, startPiece()), entry(2, fillJar()), entry(5, layCoat())]);
  const size = before.entries.size;
  grow([entry(3, layCoat()), entry(6, strike(id(5)))]);
  expect([before.entries.size, before.pieces.get(PIECE)?.coats.map((coat) => coat.id)]).toEqual([
    size,
    [id(5)],
  ]);
});

test('only what an entry touches is folded again', () => {
  const grow = createFold();
  const before = grow(shipped);
  const after = grow([entry(0xfff, check(), Date.parse('2027-01-01T00:00:00.000Z'))]);
  expect(after.jars).toBe(before.jars);
  expect(after.matches).toBe(before.matches);
  expect(after.pieces).not.toBe(before.pieces);
  expect(after.entries).not.toBe(before.entries);
});

test('what is undone or corrected leaves everything else the same object, so that nothing else is drawn again', () => {
  const grow = createFold();
  grow(shipped); // a correction of a check stands among them
  grow([entry(0xfe0, fillJar()), entry(0xfe1, strike(id(0xfe0)))]);
  const before = grow([entry(0xfef, startPiece()), entry(0xff0, check()), entry(0xff1, sand())]);
  const undone = grow([entry(0xff3, strike(id(0xff0)))]);
  expect(undone.pieces).not.toBe(before.pieces);
  expect(undone.records.get(PIECE)).toBe(before.records.get(PIECE));
  const corrected = grow([entry(0xff4, correct(id(0xff1), { removed: { text: '9', unit: 'um' } }))]);
  expect(corrected.records.get(PIECE)).not.toBe(before.records.get(PIECE));
  const first = [...before.corrected.keys()];
  expect(first).toHaveLength(1);
  for (const one of first) expect(corrected.corrected.get(one)).toBe(before.corrected.get(one));
  expect([...corrected.corrected.keys()]).toEqual([...first, id(0xff1)]);
  const air = grow([entry(0xff5, strike(id(0xff4)))]);
  for (const shop of [undone, corrected, air]) {
    expect([
      shop.jars === before.jars,
      shop.matches === before.matches,
      shop.plans === before.plans,
    ]).not.toContain(false);
  }
  expect(air.pieces.get(PIECE)?.sandings.map(({ id: one }) => one)).toEqual([id(0xff1)]);
});

test('what comes once more, and what is about no piece, changes no record', () => {
  const grow = createFold();
  const log = [entry(1, startPiece()), entry(2, fillJar()), entry(3, layCoat())];
  const before = grow(log);
  expect(grow(log)).toEqual(before);
  expect(grow(structuredClone(log)).last).toEqual(log[2]);
  expect(grow([entry(4, fillJar(id(0xb2)))]).records).toBe(before.records);
});

test('the shipped entries fold the same whole and one by one', () => {
  const grow = createFold();
  const grown = shipped.map((one) => grow([one])).at(-1);
  expect(grown).toEqual(fold(shipped));
});
