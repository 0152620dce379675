import { describe, expect, test } from 'vitest';
import type { Plan } from '../../src/planner/plan';
import { planBench } from '../../src/planner/plan-bench';
import type { Piece, Step } from '../../src/planner/step';
import type { WorkingTimes } from '../../src/planner/windows/working-times';
import { bench, coat, dateTime, piece, utc, wait, window, working } from './a-bench';

const NINE = utc('2026-03-02 09:00');
const OPEN = working(9, 17);

function planned(pieces: readonly Piece[], where: WorkingTimes = OPEN, now = NINE): Plan {
  const plan = planBench({ now, working: where, pieces });
  if (!plan.ok) throw new Error(JSON.stringify(plan.failure));
  return plan.value;
}
const step = ({ steps }: Plan, id: string) => {
  const found = steps.find(({ stepId }) => stepId === id);
  return found && { start: dateTime(found.start), end: dateTime(found.end), bound: found.bound };
};
const hold = (against: 'blush' | 'damp'): Step => ({ id: `h-${against}`, kind: 'hold', against });
const unfit = (because: 'blush' | 'damp', from: string, to: string) => ({
  because,
  from: utc(`2026-03-02 ${from}`),
  to: utc(`2026-03-02 ${to}`),
});

describe('a hold', () => {
  const spells = [
    unfit('damp', '08:00', '12:00'),
    unfit('blush', '08:00', '10:00'),
    unfit('blush', '10:00', '11:00'),
  ];

  test('lasts through all spells of its own weather that follow one another, and no other', () => {
    const plan = planned([piece('a', [hold('blush'), coat('c')])], { ...OPEN, unfitAir: spells });
    expect(step(plan, 'h-blush')).toMatchObject({ start: '2026-03-02 09:00', end: '2026-03-02 11:00' });
    expect(step(plan, 'c')).toMatchObject({
      start: '2026-03-02 11:00',
      bound: { by: 'hold', against: 'blush' },
    });
  });

  test('of two, the one is named whose weather is in the way', () => {
    const steps = [hold('blush'), hold('damp'), coat('c')];
    const only = [unfit('damp', '08:00', '12:00'), unfit('blush', '13:00', '15:00')];
    const plan = planned([piece('a', steps)], { ...OPEN, unfitAir: only });
    expect(step(plan, 'c')).toMatchObject({
      start: '2026-03-02 12:00',
      bound: { by: 'hold', against: 'damp' },
    });
  });

  test('does not hold where it is the shop that is closed', () => {
    const plan = planned(
      [piece('a', [hold('blush'), coat('c')])],
      { ...OPEN, unfitAir: spells },
      NINE - 1440 + 500,
    );
    expect(step(plan, 'c')?.bound).toEqual({ by: 'hold', against: 'blush' });
    const fit = planned([piece('a', [hold('blush'), coat('c')])], OPEN, NINE - 60);
    expect(step(fit, 'c')).toMatchObject({ start: '2026-03-02 09:00', bound: { by: 'closed' } });
  });

  test('holds nothing at the bench', () => {
    const plan = planned([piece('a', [hold('blush'), bench('b', 30)])], { ...OPEN, unfitAir: spells });
    expect(step(plan, 'b')?.start).toBe('2026-03-02 09:00');
  });
});

describe('what a step waits for', () => {
  test('is its set date, the date of its piece, now, or the person', () => {
    const dated = piece('a', [bench('b', 30, { notBefore: NINE + 60 })]);
    expect(step(planned([dated]), 'b')).toMatchObject({
      start: '2026-03-02 10:00',
      bound: { by: 'set-date' },
    });
    const later = piece('a', [bench('b', 30)], { notBefore: NINE + 90 });
    expect(step(planned([later]), 'b')).toMatchObject({
      start: '2026-03-02 10:30',
      bound: { by: 'set-date' },
    });
    const two = planned([piece('a', [bench('b', 30)]), piece('c', [bench('d', 40)])]);
    expect(step(two, 'b')?.bound).toEqual({ by: 'now' });
    expect(step(two, 'd')).toMatchObject({
      start: '2026-03-02 09:30',
      bound: { by: 'person', pieceId: 'a', stepId: 'b' },
    });
  });

  test('is the move of a coat that was laid just now', () => {
    const laid = coat('1', { done: { from: NINE - 10, to: NINE } });
    const plan = planned([piece('a', [laid]), piece('b', [bench('2', 30)])]);
    expect(step(plan, '1')).toMatchObject({ end: '2026-03-02 09:00', bound: { by: 'done' } });
    expect(step(plan, '2')?.start).toBe('2026-03-02 09:05');
  });

  test('is a wait and a window together: the window is counted from the end of the wait', () => {
    const steps = [coat('1', { moveMinutes: 0 }), wait('v', 30), window('w', 45, 60), coat('2')];
    // From 09:10: the window is open from 10:25 to 10:40; spraying stands still until 10:40 in one shop, a minute longer in the other.
    const shut = (to: string): WorkingTimes => ({
      ...OPEN,
      closures: [{ from: NINE + 15, to: utc(`2026-03-02 ${to}`), closes: 'spraying' }],
    });
    expect(step(planned([piece('a', steps)]), '2')?.start).toBe('2026-03-02 10:25');
    expect(step(planned([piece('a', steps)], shut('10:40')), '1')?.start).toBe('2026-03-02 09:00');
    expect(step(planned([piece('a', steps)], shut('10:40')), '2')?.start).toBe('2026-03-02 10:40');
    expect(step(planned([piece('a', steps)], shut('10:41')), '1')).toMatchObject({
      start: '2026-03-02 09:01',
    });
  });
});

describe('the hours', () => {
  test('a closure of everything shuts the bench too, one of spraying does not', () => {
    const shut = (closes: 'everything' | 'spraying'): WorkingTimes => ({
      ...OPEN,
      closures: [{ from: NINE, to: NINE + 120, closes }],
    });
    const pieces = [piece('a', [bench('b', 30)])];
    expect(step(planned(pieces, shut('everything')), 'b')?.start).toBe('2026-03-02 11:00');
    expect(step(planned(pieces, shut('spraying')), 'b')?.start).toBe('2026-03-02 09:00');
  });

  test('quiet hours that run past midnight are quiet on both sides of it', () => {
    const nights: WorkingTimes = { ...working(20, 27), quiet: { open: 23 * 60, close: 25 * 60 } };
    const at = (now: string) => step(planned([piece('a', [coat('c')])], nights, utc(now)), 'c')?.start;
    expect(at('2026-03-02 22:50')).toBe('2026-03-02 22:50');
    expect(at('2026-03-02 22:51')).toBe('2026-03-03 01:00');
    expect(at('2026-03-03 00:30')).toBe('2026-03-03 01:00');
  });

  test('quiet hours keep the small hours quiet that the evening before ran into, and those before the next morning', () => {
    const coatAt = (where: WorkingTimes, now: string) =>
      step(planned([piece('a', [coat('c')])], where, utc(now)), 'c')?.start;
    const early: WorkingTimes = { ...working(0, 8), quiet: { open: 22 * 60, close: 26 * 60 } };
    expect(coatAt(early, '2026-03-02 01:00')).toBe('2026-03-02 02:00');
    const late: WorkingTimes = { ...working(20, 30), quiet: { open: 5 * 60, close: 7 * 60 } };
    expect(coatAt(late, '2026-03-03 04:55')).toBe('2026-03-03 20:00');
  });

  test('stretches of a day are worked in by the clock, in whatever order they were set', () => {
    const week = OPEN.week.map(() => ({
      work: [
        { open: 780, close: 1020 },
        { open: 540, close: 720 },
      ],
    }));
    const plan = planned([piece('a', [bench('b', 120), bench('c', 120)])], { ...OPEN, week });
    expect(step(plan, 'b')?.start).toBe('2026-03-02 09:00');
    expect(step(plan, 'c')?.start).toBe('2026-03-02 13:00');
  });

  test('a step may be as long as the longest stretch, also one that midnight cuts, and no longer', () => {
    const lunch = {
      work: [
        { open: 540, close: 720 },
        { open: 780, close: 1020 },
      ],
    };
    const midnight = {
      work: [
        { open: 0, close: 240 },
        { open: 1200, close: 1440 },
      ],
    };
    const fits = (day: typeof lunch, minutes: number) =>
      planBench({
        now: NINE,
        working: { ...OPEN, week: OPEN.week.map(() => day) },
        pieces: [piece('a', [bench('b', minutes)])],
      }).ok;
    expect([fits(lunch, 240), fits(lunch, 241)]).toEqual([true, false]);
    expect([fits(midnight, 480), fits(midnight, 481)]).toEqual([true, false]);
  });

  test('coats already laid count on their own days, in whatever order they were marked', () => {
    const laid = (id: string, from: number) => coat(id, { done: { from, to: from + 10 } });
    const steps = [laid('1', NINE - 30), laid('2', NINE - 1440), coat('3'), wait('w', 30), coat('4')];
    const plan = planned([piece('a', steps, { coatsADay: 2 })]);
    expect(step(plan, '3')?.start).toBe('2026-03-02 09:00');
    expect(step(plan, '4')).toMatchObject({
      start: '2026-03-03 09:00',
      bound: { by: 'coats-a-day', coatsADay: 2 },
    });
  });
});
