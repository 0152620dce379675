import { describe, expect, test } from 'vitest';
import { planBench } from '../../src/planner/plan-bench';
import type { Step } from '../../src/planner/step';
import type { WorkingTimes } from '../../src/planner/windows/working-times';
import { bench, coat, dateTime, hours, piece, utc, wait, window, working } from './a-bench';

// 6 March 2026 is a Friday. Monday to Friday, nine to five.
const WEEK = { week: Array.from({ length: 7 }, (_, day) => (day < 5 ? hours(9, 17) : { work: [] })) };
const scuff = bench('scuff', 30, { task: 'scuff' });

function planned(steps: readonly Step[], now: string, more: Partial<WorkingTimes> = WEEK) {
  const plan = planBench({ now: utc(now), working: working(9, 17, more), pieces: [piece('a', steps)] });
  if (!plan.ok) throw new Error(JSON.stringify(plan.failure));
  return plan.value;
}
const startOf = (plan: ReturnType<typeof planned>, id: string) =>
  dateTime(plan.steps.find(({ stepId }) => stepId === id)?.start ?? 0);

describe('a scuff', () => {
  test('is planned beside its coat, not before a weekend', () => {
    const plan = planned([scuff, coat('c')], '2026-03-06 16:29');
    expect(startOf(plan, 'scuff')).toBe('2026-03-09 09:00');
    expect(startOf(plan, 'c')).toBe('2026-03-09 09:30');
  });

  test('that cannot be kept close is planned all the same', () => {
    const booth = Array.from({ length: 7 }, (_, day) => ({
      work: day < 5 ? [{ open: 540, close: 1020 }] : [],
      ...(day === 0 ? { booth: [{ open: 540, close: 560 }] } : { booth: [] }),
    }));
    const now = utc('2026-03-06 09:00');
    const pieces = [piece('z', [bench('y', 20)]), piece('a', [bench('b', 20), scuff, coat('c')])];
    const plan = planBench({ now, working: working(9, 17, { week: booth }), pieces });
    if (!plan.ok) throw new Error(JSON.stringify(plan.failure));
    expect(startOf(plan.value, 'c')).toBe('2026-03-09 09:00');
    expect(startOf(plan.value, 'scuff') < '2026-03-09').toBe(true);
  });

  // Twelve hours: common practice, no source. Half an hour of scuffing from six o'clock on.
  test.each([
    { what: 'a coat', next: coat('c'), booth: 1110, begins: '06:00' },
    { what: 'a coat a minute later', next: coat('c'), booth: 1111, begins: '06:01' },
    {
      what: 'a flash coat',
      next: coat('c', { task: 'flash-coat', isCoat: false }),
      booth: 1111,
      begins: '06:01',
    },
    {
      what: 'what is no coat',
      next: coat('c', { task: 'other', isCoat: false }),
      booth: 1111,
      begins: '06:00',
    },
  ])('lies at most twelve hours before $what', ({ next, booth, begins }) => {
    const day = { work: [{ open: 360, close: 1440 }], booth: [{ open: booth, close: 1440 }] };
    const plan = planned([scuff, next], '2026-03-06 06:00', {
      week: Array.from({ length: 7 }, () => day),
    });
    expect(startOf(plan, 'scuff')).toBe(`2026-03-06 ${begins}`);
  });
});

test('where keeping a scuff close is not what stands in the way, the window that does is named', () => {
  // Eight hours after a coat the shop is closed, whenever it was laid.
  const done = { from: utc('2026-03-05 09:00'), to: utc('2026-03-05 09:10') };
  const over = { ...window('v', 45, 240), done };
  const steps = [coat('b', { done }), over, scuff, coat('c'), window('w', 480, 500), coat('d')];
  const plan = planBench({
    now: utc('2026-03-06 09:00'),
    working: working(9, 17, WEEK),
    pieces: [piece('a', steps)],
  });
  expect(plan).toEqual({
    ok: false,
    failure: [{ kind: 'window-never-fits', pieceId: 'a', stepId: 'w' }],
  });
});

test('a window that is open and cannot be kept is given up also where a scuff is still to come', () => {
  const done = { from: utc('2026-03-06 16:40'), to: utc('2026-03-06 16:50') };
  const steps = [coat('b', { done }), window('w', 45, 60), coat('c'), wait('v', 60), scuff, coat('d')];
  const plan = planned(steps, '2026-03-06 16:55');
  expect(plan.pieces[0]?.missedWindows).toEqual(['w']);
  expect(startOf(plan, 'w:scuff')).toBe('2026-03-09 09:00');
});

describe('a wait that ends at a moment', () => {
  const till = (ends: string): Step => ({
    kind: 'wait',
    id: 'w',
    until: 'rub-out',
    minutes: { earliest: 0, likely: 0, late: 0 },
    ends: { earliest: utc(ends) - 1440, likely: utc(ends), late: utc(ends) + 1440 },
  });

  test('ends then, however late it began', () => {
    const plan = planned(
      [bench('b', 60), till('2026-03-11 11:00'), bench('r', 60, { task: 'rub-out' })],
      '2026-03-06 09:00',
    );
    expect(startOf(plan, 'r')).toBe('2026-03-11 11:00');
  });

  test('that is over by then holds nothing up', () => {
    const plan = planned(
      [bench('b', 60), till('2026-03-05 11:00'), bench('r', 60, { task: 'rub-out' })],
      '2026-03-06 09:00',
    );
    expect(startOf(plan, 'r')).toBe('2026-03-06 10:00');
  });

  test('ends the piece where nothing comes after it', () => {
    const plan = planned([bench('b', 60), till('2026-03-11 11:00')], '2026-03-06 09:00');
    expect(dateTime(plan.pieces[0]?.likely ?? 0)).toBe('2026-03-11 11:00');
    expect(dateTime(plan.pieces[0]?.earliest ?? 0)).toBe('2026-03-10 11:00');
  });

  test('costs a day when it ends a day later', () => {
    const plan = planned(
      [bench('b', 60), till('2026-03-11 11:00'), bench('r', 60, { task: 'rub-out' })],
      '2026-03-06 09:00',
    );
    expect(plan.pieces[0]?.dominant).toMatchObject({ stepId: 'w', costOfADay: 1440 });
  });
});

test('a day more that a weekend swallows says so', () => {
  const plan = planned([coat('c'), wait('w', 1440), bench('r', 60)], '2026-03-06 09:00');
  expect(plan.pieces[0]?.dominant).toMatchObject({
    stepId: 'w',
    costOfADay: 0,
    absorbedBy: { by: 'closed' },
  });
});

test('so does one that a weekend swallows further on', () => {
  const steps = [coat('c'), wait('w', 3 * 1440), bench('l', 60), wait('v', 2 * 1440), bench('r', 60)];
  const plan = planned(steps, '2026-03-02 09:00');
  expect(startOf(plan, 'r')).toBe('2026-03-09 09:00');
  expect(plan.pieces[0]?.dominant).toMatchObject({
    stepId: 'w',
    costOfADay: 0,
    absorbedBy: { by: 'closed' },
  });
});

test('a promise beside something held stands open, whenever it is for', () => {
  const asked = piece('a', [coat('c')], { promised: utc('2026-04-01 17:00'), isHeld: true });
  const plan = planBench({ now: utc('2026-03-06 09:00'), working: working(9, 17, WEEK), pieces: [asked] });
  expect(plan.ok && plan.value.pieces[0]?.promiseState).toBe('held');
});
