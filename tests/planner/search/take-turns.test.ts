import fc from 'fast-check';
import { expect, test } from 'vitest';
import { compile } from '../../../src/planner/compile';
import { createTurns } from '../../../src/planner/search/take-turns';
import { timeOrder } from '../../../src/planner/search/time-order';
import type { Bench, Piece } from '../../../src/planner/step';
import { createOpeningTimes } from '../../../src/planner/windows/opening-times';
import { bench, clock, coat, dateTime, piece, utc, wait, window, working } from '../a-bench';
import { slotBench, toBench } from '../best/slots';

const NINE = utc('2026-03-02 09:00');
const problemOf = (asked: Bench) => compile(asked, createOpeningTimes(asked.working, asked.now), 'likely');
const listed = (index: number) => -index;

/** When each operation begins, pieces wanted in the order of the list. */
function turns(pieces: readonly Piece[], now = NINE, tell = clock): string[] | undefined {
  const problem = problemOf({ now, working: working(9, 17), pieces });
  const starts = new Float64Array(problem.operations.length);
  return createTurns(problem)(listed, starts) ? Array.from(starts, tell) : undefined;
}

test('serves whoever can begin while the others rest, and the most wanted of those that can', () => {
  const resting = piece('a', [bench('1', 10), wait('w', 30), bench('2', 10)]);
  const quick = piece('b', [bench('3', 25)]);
  // The first rests from 09:10 to 09:40 and comes before the third piece as soon as the person is free.
  expect(turns([resting, quick, piece('c', [bench('4', 20)])])).toEqual(['09:00', '09:55', '09:10', '09:35']);
  expect(turns([resting, piece('b', [bench('3', 30)]), piece('c', [bench('4', 20)])])).toEqual([
    '09:00',
    '09:40',
    '09:10',
    '09:50',
  ]);
});

test('nobody stands idle longer than until the first of those that rest is ready', () => {
  const resting = (name: string, minutes: number) =>
    piece(name, [bench(`${name}1`, 10), wait(`${name}w`, minutes), bench(`${name}2`, 10)]);
  // Ready again at 09:40 and 10:20, whichever stands first in the list.
  expect(turns([resting('a', 30), resting('b', 60)])).toEqual(['09:00', '09:40', '09:10', '10:20']);
  expect(turns([resting('a', 70), resting('b', 20)])).toEqual(['09:00', '10:20', '09:10', '09:40']);
});

test('lets a shorter work go before one that no longer fits before closing time', () => {
  const late = utc('2026-03-02 16:40');
  const pieces = [piece('a', [bench('1', 30)]), piece('b', [bench('2', 20)]), piece('c', [bench('3', 40)])];
  expect(turns(pieces, late, dateTime)).toEqual(['2026-03-03 09:00', '2026-03-02 16:40', '2026-03-03 09:30']);
});

test('begins coats joined by a window only where an hour is left to keep it', () => {
  const joined = (name: string) =>
    piece(name, [coat(`${name}1`), window(`${name}w`, 45, 240), coat(`${name}2`)]);
  // Both coats and the wait take 65 minutes, and an hour is to be left: at 14:55 they are begun, at 14:56 they wait for the next day.
  expect(turns([joined('a')], utc('2026-03-02 14:55'))).toEqual(['14:55', '15:50']);
  expect(turns([joined('a')], utc('2026-03-02 14:56'), dateTime)).toEqual([
    '2026-03-03 09:00',
    '2026-03-03 09:55',
  ]);
});

test('coats joined by a window are tried again half an hour after there was too little left to keep it', () => {
  const joined = piece('a', [coat('1'), window('w', 45, 240), coat('2')]);
  // An hour after nine the booth is shut, an hour after half past it is open again.
  const closures = [{ from: NINE + 55, to: NINE + 80, closes: 'spraying' } as const];
  const problem = problemOf({ now: NINE, working: working(9, 17, { closures }), pieces: [joined] });
  const starts = new Float64Array(2);
  expect(createTurns(problem)(listed, starts)).toBe(true);
  expect(Array.from(starts, clock)).toEqual(['09:30', '10:25']);
});

test('a window that is open comes before what is wanted more; one that cannot be kept is told', () => {
  const done = { from: NINE - 20, to: NINE - 10 };
  const open = (until: number) => piece('b', [coat('1', { done }), window('w', 5, until), coat('2')]);
  const wanted = piece('a', [bench('3', 60)]);
  expect(turns([wanted, open(60)])).toEqual(['09:15', '09:00']);
  expect(turns([wanted, open(10)])).toEqual(['09:15', '09:00']);
  expect(turns([wanted, open(9)])).toBeUndefined();
});

test('what it gives keeps every rule: taken in the order of its starts nothing can begin later than it says', () => {
  let kept = 0;
  fc.assert(
    fc.property(slotBench, fc.array(fc.nat(100), { minLength: 3, maxLength: 3 }), (slots, wishes) => {
      const problem = problemOf(toBench(slots));
      const starts = new Float64Array(problem.operations.length);
      if (!createTurns(problem)((index) => wishes[index] as number, starts)) return;
      kept++;
      const order = Array.from(starts.keys()).sort((a, b) => (starts[a] as number) - (starts[b] as number));
      const soonest = new Float64Array(starts.length);
      expect(timeOrder(problem, order, soonest, new Float64Array(starts.length))).toBe(true);
      expect(soonest.every((start, id) => start <= (starts[id] as number))).toBe(true);
    }),
    { numRuns: 1000 },
  );
  expect(kept).toBeGreaterThan(300);
});
