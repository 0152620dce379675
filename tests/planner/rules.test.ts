import { expect, test } from 'vitest';
import type { Plan } from '../../src/planner/plan';
import { planBench } from '../../src/planner/plan-bench';
import type { Piece, Step } from '../../src/planner/step';
import type { WorkingTimes } from '../../src/planner/windows/working-times';
import { bench, coat, dateTime, hours, piece, utc, wait, window, working } from './a-bench';
import { largeBench } from './best/large-bench';

const MONDAY = utc('2026-03-02 09:00');
const OPEN = working(9, 17);

function planned(pieces: readonly Piece[], where: WorkingTimes = OPEN, now = MONDAY): Plan {
  const plan = planBench({ now, working: where, pieces });
  if (!plan.ok) throw new Error(JSON.stringify(plan.failure));
  return plan.value;
}
const starts = ({ steps }: Plan, ...ids: string[]) =>
  ids.map((id) => dateTime(steps.find(({ stepId }) => stepId === id)?.start ?? 0));
const boundOf = ({ steps }: Plan, id: string) => steps.find(({ stepId }) => stepId === id)?.bound;

test('never splits a window across closing time', () => {
  // The second coat may begin 4 h after the first at the earliest: not today any more at 14:00, so the first waits too.
  const plan = planned([piece('a', [coat('1'), window('w', 240, 300), coat('2')])], OPEN, MONDAY + 300);
  expect(starts(plan, '1', '2')).toEqual(['2026-03-03 09:00', '2026-03-03 13:10']);
  expect(boundOf(plan, '1')).toEqual({ by: 'window' });
});

test('keeps to the coats a day and counts those already laid', () => {
  const done = { from: MONDAY, to: MONDAY + 10 };
  const steps = [coat('1', { done }), wait('w1', 60), coat('2'), wait('w2', 60), coat('3')];
  const plan = planned([piece('a', steps, { coatsADay: 2 })], OPEN, MONDAY + 30);
  expect(starts(plan, '2', '3')).toEqual(['2026-03-02 10:10', '2026-03-03 09:00']);
  expect(boundOf(plan, '3')).toEqual({ by: 'coats-a-day', coatsADay: 2 });
});

test('counts a coat at two in the morning to the day that has begun', () => {
  const nights = working(20, 27); // 20:00 to 03:00
  const steps = [coat('1'), wait('w1', 180), coat('2'), wait('w2', 30), coat('3')];
  const plan = planned([piece('a', steps, { coatsADay: 1 })], nights, utc('2026-03-02 22:50'));
  expect(starts(plan, '1', '2', '3')).toEqual(['2026-03-02 22:50', '2026-03-03 02:00', '2026-03-04 00:00']);
  expect(boundOf(plan, '3')).toEqual({ by: 'coats-a-day', coatsADay: 1 });
});

test('works in the hours of the night in which the clocks jump', () => {
  const newYork = (minute: number): number => (minute >= utc('2026-03-08 07:00') ? -240 : -300);
  const nights: WorkingTimes = { ...working(22, 28), zone: newYork }; // 22:00 to 04:00: five hours of real time that night
  const plan = planned([piece('a', [bench('1', 290), bench('2', 300)])], nights, utc('2026-03-08 00:00'));
  expect(starts(plan, '1', '2')).toEqual(['2026-03-08 03:00', '2026-03-09 02:00']);
});

test('does not spray in quiet hours but works at the bench', () => {
  const quiet: WorkingTimes = { ...OPEN, quiet: { open: 12 * 60, close: 14 * 60 } };
  const plan = planned([piece('a', [coat('1')]), piece('b', [bench('2', 30)])], quiet, MONDAY + 175);
  expect(starts(plan, '1', '2')).toEqual(['2026-03-02 14:00', '2026-03-02 11:55']);
});

test('holds a coat until the air is fit, and only that coat', () => {
  const unfit: WorkingTimes = {
    ...OPEN,
    unfitAir: [{ from: MONDAY - 60, to: MONDAY + 120, because: 'blush' }],
  };
  const hold: Step = { id: 'h', kind: 'hold', against: 'blush' };
  const plan = planned([piece('a', [hold, coat('1')]), piece('b', [coat('2')])], unfit);
  expect(starts(plan, '1', '2')).toEqual(['2026-03-02 11:00', '2026-03-02 09:00']);
  expect(boundOf(plan, '1')).toEqual({ by: 'hold', against: 'blush' });
});

test('does nothing on free days', () => {
  const week = [...Array.from({ length: 5 }, () => hours(9, 17)), { work: [] }, { work: [] }];
  const plan = planned(
    [piece('a', [coat('1'), wait('w', 3 * 1440), bench('2', 30)])],
    { ...OPEN, week },
    utc('2026-03-05 16:00'),
  );
  expect(starts(plan, '2')).toEqual(['2026-03-09 09:00']);
  expect(boundOf(plan, '2')).toEqual({ by: 'closed' });
});

test('waits go on day and night, over a month end and a leap day', () => {
  const steps = [coat('1'), wait('w', 14 * 1440), bench('2', 30)];
  const plan = planned([piece('a', steps)], OPEN, utc('2028-02-20 09:00'));
  expect(starts(plan, '2')).toEqual(['2028-03-05 09:10']);
});

test('asks a check again a day after it did not pass', () => {
  const gate: Step = {
    id: 'g',
    kind: 'gate',
    check: 'powders',
    minutes: 2,
    againAfterMinutes: 1440,
    failedAt: [MONDAY - 60],
    mostFailures: 7,
  };
  const plan = planned([piece('a', [gate])]);
  expect(starts(plan, 'g')).toEqual(['2026-03-03 09:00']);
});

test('asks again after the last of several failures, in whatever order they are kept', () => {
  const gate = (failedAt: readonly number[]): Step => ({
    id: 'g',
    kind: 'gate',
    check: 'powders',
    minutes: 2,
    againAfterMinutes: 1440,
    failedAt,
    mostFailures: 7,
  });
  const failures = [MONDAY - 2 * 1440, MONDAY - 30, MONDAY - 1440];
  // Half an hour ago, so tomorrow half past eight, when the shop is closed for another half hour; the first was two days before.
  expect(starts(planned([piece('a', [gate(failures)])]), 'g')).toEqual(['2026-03-03 09:00']);
  expect(starts(planned([piece('a', [gate(failures.toReversed())])], OPEN, MONDAY + 120), 'g')).toEqual([
    '2026-03-03 09:00',
  ]);
  expect(starts(planned([piece('a', [gate([MONDAY + 45, MONDAY])])], OPEN, MONDAY + 60), 'g')).toEqual([
    '2026-03-03 09:45',
  ]);
});

test('names the step that dominates and what a day more of it costs', () => {
  const steps = [coat('1'), wait('rest', 3 * 1440), bench('2', 30)];
  const week = [...Array.from({ length: 5 }, () => hours(9, 17)), { work: [] }, { work: [] }];
  // Coat on Tuesday 09:00, rest to Friday 09:10, sand 09:10; a day more would be Saturday: Monday 09:00, less ten minutes.
  const plan = planned([piece('a', steps)], { ...OPEN, week }, utc('2026-03-03 09:00'));
  expect(plan.pieces[0]?.dominant).toEqual({ stepId: 'rest', minutes: 3 * 1440, costOfADay: 3 * 1440 - 10 });
});

test('never promises a day on which nobody works', () => {
  const week = [...Array.from({ length: 5 }, () => hours(9, 17)), { work: [] }, { work: [] }];
  const steps = [coat('1'), wait('w', 1440, 1440, 2 * 1440)];
  // Coat on Thursday 09:10, likely Friday 09:10, reserve a day: Saturday. Promised for Monday 09:00.
  const plan = planned([piece('a', steps)], { ...OPEN, week }, utc('2026-03-05 09:00'));
  expect(dateTime(plan.pieces[0]?.promise ?? 0)).toBe('2026-03-09 09:00');
});

test('serves the piece first that would miss its promise', () => {
  const pieces = [piece('a', [coat('1')]), piece('b', [coat('2')], { promised: MONDAY + 10 })];
  expect(starts(planned(pieces), '1', '2')).toEqual(['2026-03-02 09:15', '2026-03-02 09:00']);
});

test('gives one window up when two that are open cannot both be kept', () => {
  const late = { from: MONDAY - 20, to: MONDAY - 10 };
  const open = (name: string) =>
    piece(name, [coat(`${name}1`, { done: late }), window(`${name}w`, 5, 12), coat(`${name}2`)]);
  const plan = planned([open('a'), open('b')]);
  expect(plan.pieces.map(({ missedWindows }) => missedWindows)).toEqual([[], ['bw']]);
  expect(starts(plan, 'a2', 'bw:scuff')).toEqual(['2026-03-02 09:00', '2026-03-03 09:00']);
});

test('plans an empty bench and a finished piece', () => {
  const finished = piece('a', [coat('1', { done: { from: MONDAY - 60, to: MONDAY - 50 } })]);
  expect(planned([]).steps).toEqual([]);
  expect(planned([finished]).pieces[0]).toMatchObject({
    likely: MONDAY - 50,
    promise: MONDAY - 50,
    dominant: undefined,
  });
});

test('plans a full bench beside a finished piece', () => {
  const full = largeBench(3, 4);
  const done = { from: full.now - 60, to: full.now - 50 };
  const pieces = [piece('finished', [coat('1', { done })]), ...full.pieces];
  const plan = planBench({ ...full, pieces });
  const ends = plan.ok ? plan.value.pieces.map(({ likely }) => likely) : [];
  expect(ends).toHaveLength(5);
  expect(ends[0]).toBe(full.now - 50);
  expect(Math.min(...ends.slice(1))).toBeGreaterThan(full.now);
});
