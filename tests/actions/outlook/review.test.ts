import { describe, expect, test } from 'vitest';
import { inputsOf } from '../../../src/actions/outlook/inputs';
import { checksOf } from '../../../src/actions/outlook/request';
import { firstOf, type Reviewed, review } from '../../../src/actions/outlook/review';
import { workKey } from '../../../src/actions/verdicts/kept-standings';
import type { EntryBody } from '../../../src/logbook/entry';
import { fold } from '../../../src/logbook/fold/fold';
import { DAY_1_MS, entry, fillJar, id, JAR, layCoat, startPiece } from '../../logbook/entries';
import { anOutlook } from '../../parts/an-outlook';

const HOUR_MS = 3_600_000;
const [BOX, CHAIR, TRAY] = [id(0xa1), id(0xa2), id(0xa3)];
const close = (piece: string): EntryBody => ({ kind: 'piece-closed', piece });
const check = (piece: string, test: 'print' | 'blush' = 'print'): EntryBody => ({
  kind: 'checked',
  piece,
  test,
  result: 'passes',
});
const shopOf = (...bodies: EntryBody[]) =>
  fold([fillJar(), ...bodies].map((body, n) => entry(n + 1, body, DAY_1_MS + n * HOUR_MS)));
const ready = anOutlook();
const at = (shop: ReturnType<typeof shopOf>, more: Partial<Reviewed> = {}): Reviewed => ({
  shop,
  nowMs: DAY_1_MS + 100 * HOUR_MS,
  outlooks: new Map(),
  cards: new Map(),
  worked: new Map(),
  looked: undefined,
  ...more,
});
/** As if all that is wanted had been worked out at that hour. */
function workedAt(hour: number, now: Reviewed): Partial<Reviewed> {
  const atMs = DAY_1_MS + hour * HOUR_MS;
  const { wanted } = review(now);
  return {
    worked: new Map([...wanted].map(([stand, inputs]) => [stand, { inputs, atMs }])),
    outlooks: new Map([...wanted].map(([stand]) => [stand, ready])),
  };
}

describe('what is worked out', () => {
  const coated = shopOf(startPiece(BOX), layCoat(BOX), startPiece(CHAIR));

  test('is a piece with a coat; one without has none', () => {
    const { outlooks, wanted } = review(at(coated));
    expect([...wanted.keys()]).toEqual([BOX]);
    expect(outlooks.get(BOX)).toEqual({ state: 'computing' });
    expect(outlooks.get(CHAIR)).toEqual({ state: 'no-coats' });
  });

  test('is not worked out again within the hour, and is after it', () => {
    const known = workedAt(99, at(coated));
    expect(review(at(coated, known)).wanted.size).toBe(0);
    const { wanted, outlooks } = review(at(coated, { ...known, nowMs: DAY_1_MS + 100 * HOUR_MS + 1 }));
    expect([...wanted.keys()]).toEqual([BOX]);
    expect(outlooks.get(BOX)).toBe(ready); // the clock alone makes it no staler
  });

  test('is stale from the entry that changes it, and what failed is computed anew', () => {
    const known = workedAt(99, at(coated));
    const more = shopOf(startPiece(BOX), layCoat(BOX), startPiece(CHAIR), layCoat(BOX));
    expect(review(at(more, known)).outlooks.get(BOX)).toEqual({ ...ready, stale: true });
    const failed = { state: 'failed', message: '' } as const;
    expect(review(at(more, { ...known, outlooks: new Map([[BOX, failed]]) })).outlooks.get(BOX)).toEqual({
      state: 'computing',
    });
    expect(review(at(coated, { ...known, outlooks: new Map([[BOX, failed]]) })).outlooks.get(BOX)).toBe(
      failed,
    );
  });

  test('what was kept stands until it is worked out, as long as the work is the same', () => {
    const piece = coated.pieces.get(BOX) ?? expect.unreachable();
    const kept = { ...ready, state: 'kept', key: workKey(piece) } as never;
    const other = { ...ready, state: 'kept', key: 'other' } as never;
    expect(review(at(coated, { outlooks: new Map([[BOX, kept]]) })).outlooks.get(BOX)).toBe(kept);
    expect(review(at(coated, { outlooks: new Map([[BOX, other]]) })).outlooks.get(BOX)).toEqual({
      state: 'computing',
    });
  });

  test('of closed pieces is only the one that is looked at', () => {
    const closed = shopOf(startPiece(BOX), layCoat(BOX), close(BOX));
    expect(review(at(closed)).wanted.size).toBe(0);
    expect([...review(at(closed, { looked: BOX })).wanted.keys()]).toEqual([BOX]);
    expect(review(at(closed, { outlooks: new Map([[BOX, ready]]) })).outlooks.get(BOX)).toBe(ready);
  });

  describe('finished pieces that teach', () => {
    const finished = (piece: string, test?: 'print' | 'blush') => [
      startPiece(piece),
      layCoat(piece),
      ...(test ? [check(piece, test)] : []),
      close(piece),
    ];
    const open = [startPiece(TRAY), layCoat(TRAY)];
    const wanted = (...bodies: EntryBody[]) => [...review(at(shopOf(...bodies, ...open))).wanted.keys()];

    test('are those with a check of the film, of a product that is on the bench', () => {
      expect(wanted(...finished(BOX, 'print'))).toEqual([BOX, TRAY]);
      expect(wanted(...finished(BOX))).toEqual([TRAY]);
      expect(wanted(...finished(BOX, 'blush'))).toEqual([TRAY]);
      const other = [
        {
          ...fillJar(id(0xb2)),
          product: { finish: 'acrylic', volumeSolids: { text: '22', unit: '%' } },
        } as EntryBody,
      ];
      const inOther = [startPiece(BOX), layCoat(BOX, id(0xb2)), check(BOX), close(BOX)];
      expect(wanted(...other, ...inOther)).toEqual([TRAY]);
    });

    test('are the four closed last, and worked out once', () => {
      const five = [1, 2, 3, 4, 5].map((n) => id(0x500 + n));
      const shop = shopOf(...five.flatMap((piece) => finished(piece, 'print')), ...open);
      const known = review(at(shop)).wanted;
      expect([...known.keys()]).toEqual([...five.slice(1), TRAY]);
      const outlooks = new Map(five.map((piece) => [piece, { state: 'failed', message: '' } as const]));
      expect([...review(at(shop, { outlooks })).wanted.keys()]).toEqual([TRAY]);
    });
  });
});

describe('the first to be worked out', () => {
  const shop = shopOf(
    startPiece(BOX),
    startPiece(CHAIR),
    startPiece(TRAY),
    layCoat(BOX),
    layCoat(CHAIR),
    layCoat(TRAY),
    check(TRAY),
    close(TRAY),
  );
  const UNTAUGHT = { diffusivity: undefined, law: undefined };
  const TAUGHT = { ...UNTAUGHT, diffusivity: { mean: 0.5, spread: 0.3 } };
  const inputs = (piece: string, taught: Parameters<typeof inputsOf>[2], of = shop) =>
    inputsOf(of.pieces.get(piece) ?? expect.unreachable(), of, taught);
  const wanted = new Map([BOX, CHAIR, TRAY].map((piece) => [piece, inputs(piece, TAUGHT)]));
  interface Case {
    readonly what: string;
    readonly looked?: string;
    readonly failed?: readonly string[];
    /** What was worked out before, with what others had taught by then. */
    readonly taughtMore?: readonly string[];
    /** What was worked out before its own last coat. */
    readonly coated?: readonly string[];
    readonly is: string;
  }
  const before = shopOf(startPiece(BOX), startPiece(CHAIR), startPiece(TRAY));

  test.each<Case>([
    { what: 'the one on screen', looked: BOX, is: BOX },
    { what: 'else the open one worked on last', is: CHAIR },
    { what: 'not one that failed, though it is on screen', looked: BOX, failed: [BOX], is: CHAIR },
    { what: 'a closed one after all that is open', failed: [CHAIR], is: BOX },
    { what: 'what failed after what is closed', failed: [BOX, CHAIR], is: TRAY },
    { what: 'not one that was only taught more', taughtMore: [CHAIR], is: BOX },
    { what: 'nor the one on screen where it was', looked: BOX, taughtMore: [BOX], is: CHAIR },
    { what: 'a closed one that teaches before those that were', taughtMore: [BOX, CHAIR], is: TRAY },
    { what: 'the one on screen of all that were', looked: BOX, taughtMore: [BOX, CHAIR, TRAY], is: BOX },
    { what: 'one with more work on it at once', looked: BOX, coated: [BOX], is: BOX },
  ])('is $what', ({ looked, failed = [], taughtMore = [], coated = [], is }) => {
    const worked = new Map([
      ...taughtMore.map((piece) => [piece, { inputs: inputs(piece, UNTAUGHT), atMs: 0 }] as const),
      ...coated.map((piece) => [piece, { inputs: inputs(piece, TAUGHT, before), atMs: 0 }] as const),
    ]);
    expect(firstOf(wanted, { shop, looked, worked, failed: new Set(failed) })).toBe(is);
  });

  test('is none where nothing is wanted', () => {
    const none = { shop, looked: BOX, worked: new Map(), failed: new Set<string>() };
    expect(firstOf(new Map(), none)).toBeUndefined();
  });
});

test('what is told of tries is what was found since the first coat; blush tells nothing of drying', () => {
  const bodies = [startPiece(BOX), check(BOX), layCoat(BOX, JAR), check(BOX, 'blush'), check(BOX)];
  const piece = shopOf(...bodies).pieces.get(BOX) ?? expect.unreachable();
  const startMs = piece.coats[0]?.atMs ?? 0;
  expect(checksOf(piece, startMs)).toEqual([{ atS: 7200, test: 'print', passes: true }]);
  expect(checksOf({ checks: piece.checks }, startMs + 2 * HOUR_MS)).toHaveLength(1); // at its very instant
});
