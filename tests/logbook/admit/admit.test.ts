import { describe, expect, test } from 'vitest';
import { admit } from '../../../src/logbook/admit/admit';
import type { Entry, EntryBody } from '../../../src/logbook/entry';
import { fold } from '../../../src/logbook/fold/fold';
import {
  check,
  correct,
  DAY_1_MS,
  entry,
  fillJar,
  id,
  JAR,
  layCoat,
  MINUTE_MS,
  PIECE,
  sand,
  startPiece,
  strike,
} from '../entries';

const CLOSED = id(0xa2);
const air: EntryBody = {
  kind: 'air-read',
  temperature: { text: '21', unit: 'C' },
  humidity: { text: '50', unit: '%' },
  movement: 'gentle',
};
const shop = fold([
  entry(1, startPiece()),
  entry(2, fillJar()),
  entry(3, startPiece(CLOSED)),
  entry(4, { kind: 'piece-closed', piece: CLOSED }),
  entry(5, air),
  entry(6, layCoat()),
  entry(7, check()),
  entry(8, strike(id(7))),
]);
const nowMs = DAY_1_MS + 60 * MINUTE_MS;
const at = (minutes: number, body: EntryBody): Entry => entry(20, body, DAY_1_MS + minutes * MINUTE_MS);
const instant = (minutes: number): string => new Date(DAY_1_MS + minutes * MINUTE_MS).toISOString();
const coatIn = (airId: string): EntryBody => ({ ...layCoat(), air: airId }) as EntryBody;
const passes = (count: number, wetUm: string): EntryBody =>
  ({
    ...layCoat(),
    film: { by: 'passes', passes: count, perPass: { text: wetUm, unit: 'um' } },
  }) as EntryBody;
const closePiece: EntryBody = { kind: 'piece-closed', piece: PIECE };
const emptyJar: EntryBody = { kind: 'jar-emptied', jar: JAR };
const setAside = (piece: string): EntryBody => ({
  kind: 'hold-overridden',
  piece,
  rule: 'film-prints',
  act: 'level-sand',
  reason: 'Only the hidden edge printed.',
});
const filler = (piece: string): EntryBody => ({ kind: 'ground-laid', piece, ground: 'pore-filler' });
const change = (piece: string): EntryBody => ({ kind: 'piece-changed', piece, name: 'Box' });

describe('admits', () => {
  test.each([
    { what: 'a coat now', it: at(60, layCoat()) },
    { what: 'a coat 20 minutes ago', it: at(40, layCoat()) },
    { what: 'a coat the moment its piece was started', it: at(1, layCoat()) },
    { what: 'a coat with its air', it: at(60, coatIn(id(5))) },
    { what: 'two millimetres wet in all', it: at(60, passes(20, '100')) },
    {
      what: 'a coat by its usual build',
      it: at(60, { ...layCoat(), film: { by: 'usual', dryFilm: { text: '12', unit: 'um' } } } as EntryBody),
    },
    { what: 'a hold set aside', it: at(60, setAside(PIECE)) },
    { what: 'filler', it: at(60, filler(PIECE)) },
    { what: 'a sanding', it: at(60, sand()) },
    { what: 'a check', it: at(60, check()) },
    { what: 'a change of a closed piece', it: at(60, change(CLOSED)) },
    { what: 'a piece closed', it: at(60, closePiece) },
    { what: 'a jar emptied', it: at(60, emptyJar) },
    { what: 'a second piece', it: at(60, startPiece(id(0xa3))) },
    { what: 'a strike of the newest coat', it: at(60, strike(id(6))) },
    { what: 'a strike of a strike', it: at(60, strike(id(8))) },
    { what: 'a strike of an air reading', it: at(60, strike(id(5))) },
    { what: 'a strike of a piece with nothing on it', it: at(60, strike(id(3))) },
    { what: 'a coat corrected to an hour ago', it: at(60, correct(id(6), { at: instant(2) })) },
    {
      what: 'a coat corrected to another piece, finished meanwhile',
      it: at(60, correct(id(6), { piece: CLOSED, at: instant(30) })),
    },
    { what: 'a piece corrected to have begun before', it: at(60, correct(id(1), { at: instant(-9) })) },
    {
      what: 'a piece corrected to have begun right at its first coat',
      it: at(60, correct(id(1), { at: instant(6) })),
    },
  ])('$what', ({ it }) => expect(admit(it, shop, nowMs)).toEqual({ ok: true, value: it }));
});

describe('refuses', () => {
  test.each([
    { what: 'more than two millimetres wet in all', it: at(60, passes(21, '100')), kind: 'too-wet' },
    { what: 'a coat on a piece not started', it: at(60, layCoat(id(0xff))), kind: 'unknown-piece' },
    { what: 'a coat from a jar not filled', it: at(60, layCoat(PIECE, id(0xff))), kind: 'unknown-jar' },
    { what: 'a coat in air not read', it: at(60, coatIn(id(0xff))), kind: 'unknown-air' },
    { what: 'a coat in air that is a jar', it: at(60, coatIn(id(2))), kind: 'unknown-air' },
    { what: 'a coat on a closed piece', it: at(60, layCoat(CLOSED)), kind: 'piece-closed' },
    { what: 'a sanding of a closed piece', it: at(60, sand(CLOSED)), kind: 'piece-closed' },
    { what: 'a check of a closed piece', it: at(60, check(CLOSED)), kind: 'piece-closed' },
    {
      what: 'closing a closed piece',
      it: at(60, { kind: 'piece-closed', piece: CLOSED }),
      kind: 'piece-closed',
    },
    { what: 'setting aside a hold on a closed piece', it: at(60, setAside(CLOSED)), kind: 'piece-closed' },
    { what: 'setting aside a hold on no piece', it: at(60, setAside(id(0xff))), kind: 'unknown-piece' },
    { what: 'filler on a closed piece', it: at(60, filler(CLOSED)), kind: 'piece-closed' },
    { what: 'a change of no piece', it: at(60, change(id(0xff))), kind: 'unknown-piece' },
    { what: 'emptying no jar', it: at(60, { kind: 'jar-emptied', jar: id(0xff) }), kind: 'unknown-jar' },
    { what: 'a piece started twice', it: at(60, startPiece()), kind: 'piece-there-already' },
    { what: 'a jar filled twice', it: at(60, fillJar()), kind: 'jar-there-already' },
    {
      what: 'a correction of nothing',
      it: at(60, correct(id(0xff), { at: instant(1) })),
      kind: 'unknown-entry',
    },
    {
      what: 'a correction of what is undone',
      it: at(60, correct(id(7), { at: instant(1) })),
      kind: 'already-struck',
    },
    {
      what: 'a correction of an undoing',
      it: at(60, correct(id(8), { at: instant(1) })),
      kind: 'not-correctable',
    },
    {
      what: 'a correction to a jar not filled',
      it: at(60, correct(id(6), { jar: id(0xff) })),
      kind: 'unknown-jar',
    },
    {
      what: 'a correction to no piece',
      it: at(60, correct(id(6), { piece: id(0xff) })),
      kind: 'unknown-piece',
    },
    { what: 'a strike at nothing', it: at(60, strike(id(0xff))), kind: 'unknown-entry' },
    { what: 'a second strike at one entry', it: at(60, strike(id(7))), kind: 'already-struck' },
    { what: 'a strike of a piece with a coat on it', it: at(60, strike(id(1))), kind: 'still-used' },
    { what: 'a strike of a jar with a coat from it', it: at(60, strike(id(2))), kind: 'still-used' },
  ])('$what: $kind', ({ it, kind }) =>
    expect(admit(it, shop, nowMs)).toEqual({ ok: false, failure: { kind } }),
  );

  test('a coat in the future, with the latest time accepted', () => {
    expect(admit(at(61, layCoat()), shop, nowMs)).toEqual({
      ok: false,
      failure: { kind: 'in-the-future', latestMs: nowMs },
    });
  });

  test.each([
    { what: 'a coat before its piece', it: at(0, layCoat()), startedAt: 1 },
    { what: 'a sanding before its piece', it: at(0, sand()), startedAt: 1 },
    { what: 'a jar emptied before it was filled', it: at(1, emptyJar), startedAt: 2 },
  ])('$what, with the range accepted', ({ it, startedAt }) => {
    expect(admit(it, shop, nowMs)).toEqual({
      ok: false,
      failure: { kind: 'too-early', earliestMs: DAY_1_MS + startedAt * MINUTE_MS, latestMs: nowMs },
    });
  });
});

describe('corrects no time into what cannot be', () => {
  const latestMs = nowMs;
  test.each([
    {
      what: 'a coat into the future',
      it: correct(id(6), { at: instant(61) }),
      failure: { kind: 'in-the-future', latestMs },
    },
    {
      what: 'a coat before its piece',
      it: correct(id(6), { at: instant(0) }),
      failure: { kind: 'too-early', earliestMs: DAY_1_MS + MINUTE_MS, latestMs },
    },
    {
      what: 'a piece to after its first coat',
      it: correct(id(1), { at: instant(7) }),
      failure: { kind: 'after-its-work', latestMs: DAY_1_MS + 6 * MINUTE_MS },
    },
  ])('$what', ({ it, failure }) => expect(admit(at(60, it), shop, nowMs)).toEqual({ ok: false, failure }));
});

describe('what nothing was done to yet', () => {
  const fresh = fold([
    entry(1, startPiece()),
    entry(2, fillJar()),
    entry(3, startPiece(CLOSED)),
    entry(4, filler(PIECE)),
  ]);

  test('a piece with filler on it is still used', () => {
    expect(admit(at(60, strike(id(1))), fresh, nowMs)).toMatchObject({ failure: { kind: 'still-used' } });
    expect(admit(at(60, strike(id(3))), fresh, nowMs).ok).toBe(true);
    expect(admit(at(60, strike(id(2))), fresh, nowMs).ok).toBe(true);
  });

  test('a piece without work may be corrected to any time until now', () => {
    expect(admit(at(60, correct(id(3), { at: instant(60) })), fresh, nowMs).ok).toBe(true);
    expect(admit(at(60, correct(id(1), { at: instant(5) })), fresh, nowMs)).toMatchObject({
      failure: { kind: 'after-its-work' },
    });
  });
});

test('a coat is moved to no piece that was begun after it', () => {
  const two = fold([
    entry(1, startPiece()),
    entry(2, fillJar()),
    entry(3, layCoat()),
    entry(9, startPiece(CLOSED)),
  ]);
  expect(admit(at(60, correct(id(3), { piece: CLOSED })), two, nowMs)).toMatchObject({
    failure: { kind: 'too-early', earliestMs: DAY_1_MS + 9 * MINUTE_MS },
  });
});

test('a correction of anything but the time is not judged by it', () => {
  // A coat of before its piece, as only another phone can bring it: its film may be put right all the same.
  const early = fold([entry(5, startPiece()), entry(6, fillJar()), entry(7, layCoat(), DAY_1_MS)]);
  const film = { by: 'wet', wetFilm: { text: '90', unit: 'um' } } as const;
  expect(admit(at(60, correct(id(7), { film })), early, nowMs).ok).toBe(true);
  expect(admit(at(60, correct(id(7), { jar: JAR })), early, nowMs)).toMatchObject({
    failure: { kind: 'too-early' },
  });
});

describe('where the clock has been set back', () => {
  const ahead = fold([
    entry(1, startPiece()),
    entry(2, fillJar()),
    entry(3, layCoat(), DAY_1_MS + 365 * 24 * 60 * MINUTE_MS),
  ]);
  const aYearOnMs = DAY_1_MS + 365 * 24 * 60 * MINUTE_MS;

  test.each([layCoat(), sand(), check()])(
    '$kind is not let in before a coat that is still to come',
    (body) => {
      expect(admit(at(60, body), ahead, nowMs)).toEqual({
        ok: false,
        failure: { kind: 'ahead-of-clock', earliestMs: aYearOnMs, latestMs: nowMs },
      });
    },
  );

  test('a coat of another phone that is some minutes ahead holds nothing up', () => {
    const near = fold([
      entry(1, startPiece()),
      entry(2, fillJar()),
      entry(3, layCoat(), nowMs + 10 * MINUTE_MS),
    ]);
    expect(admit(at(60, layCoat()), near, nowMs).ok).toBe(true);
    expect(admit(at(60, layCoat()), near, nowMs - 1)).toMatchObject({ failure: { kind: 'in-the-future' } });
  });

  test('work that nothing has to lie on is let in, and so is work on another piece', () => {
    const sanded = fold([entry(1, startPiece()), entry(2, startPiece(CLOSED)), entry(3, sand(), aYearOnMs)]);
    expect(admit(at(60, sand()), sanded, nowMs)).toMatchObject({ failure: { kind: 'ahead-of-clock' } });
    expect(admit(at(60, filler(PIECE)), sanded, nowMs).ok).toBe(true);
    expect(admit(at(60, sand(CLOSED)), sanded, nowMs).ok).toBe(true);
  });

  test('what was begun just now and is said to be older is too early, and no fault of the clock', () => {
    expect(admit(at(0, layCoat()), shop, DAY_1_MS + MINUTE_MS)).toMatchObject({
      failure: { kind: 'too-early' },
    });
  });

  test('what was begun later than now gives no range that ends before it begins', () => {
    expect(admit(at(0, layCoat()), shop, DAY_1_MS)).toEqual({
      ok: false,
      failure: { kind: 'ahead-of-clock', earliestMs: DAY_1_MS + MINUTE_MS, latestMs: DAY_1_MS },
    });
  });

  test('the coat a year ahead can be corrected, and then today is let in', () => {
    const correction = at(60, correct(id(3), { at: instant(50) }));
    expect(admit(correction, ahead, nowMs).ok).toBe(true);
    const right = fold([...ahead.entries.values(), correction]);
    expect(admit(entry(21, layCoat(), nowMs), right, nowMs).ok).toBe(true);
  });
});
