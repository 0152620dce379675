import { expect, test } from 'vitest';
import type { Bound } from '../../src/planner/plan';
import { planBench } from '../../src/planner/plan-bench';
import type { Piece, Step } from '../../src/planner/step';
import type { WorkingTimes } from '../../src/planner/windows/working-times';
import { bench, coat, dateTime, piece, utc, wait, working } from './a-bench';

const at = (time: string): number => utc(`2026-03-02 ${time}`);
const hold: Step = { id: 'h', kind: 'hold', against: 'blush' };
const blush = (from: string, to: string) => ({ because: 'blush', from: utc(from), to: utc(to) }) as const;
const laid = (from: string, to: string): Step => coat('0', { done: { from: at(from), to: at(to) } });

/** When the step named c begins, and why, in a shop open from nine to five. */
function toldOf(pieces: readonly Piece[], now: string, more: Partial<WorkingTimes> = {}) {
  const plan = planBench({ now: at(now), working: working(9, 17, more), pieces });
  const step = plan.ok ? plan.value.steps.find(({ stepId }) => stepId === 'c') : undefined;
  return step && [dateTime(step.start).slice(8), step.bound];
}

const CLOSED: Bound = { by: 'closed' };
test.each<{
  what: string;
  steps: readonly Step[];
  now?: string;
  unfitAir?: WorkingTimes['unfitAir'];
  is: unknown;
}>([
  {
    what: 'a wait that ended before now',
    steps: [laid('09:00', '09:10'), wait('w', 30), coat('c')],
    now: '12:00',
    is: ['02 12:00', { by: 'now' }],
  },
  {
    what: 'blush that is over when the shop opens',
    steps: [hold, coat('c')],
    now: '08:00',
    unfitAir: [blush('2026-03-02 07:00', '2026-03-02 09:00')],
    is: ['02 09:00', CLOSED],
  },
  {
    what: 'blush that comes when the coat is on',
    steps: [hold, coat('c')],
    now: '08:00',
    unfitAir: [blush('2026-03-02 09:10', '2026-03-02 12:00')],
    is: ['02 09:00', CLOSED],
  },
  {
    what: 'blush a minute before the coat is on',
    steps: [hold, coat('c')],
    now: '08:00',
    unfitAir: [blush('2026-03-02 09:09', '2026-03-02 12:00')],
    is: ['02 12:00', { by: 'hold', against: 'blush' }],
  },
  {
    what: 'blush that only the coat before waits for',
    steps: [hold, coat('b'), wait('w', 60), coat('c')],
    now: '16:30',
    unfitAir: [blush('2026-03-03 08:00', '2026-03-03 12:00')],
    is: ['03 09:00', CLOSED],
  },
  {
    what: 'blush before work at the bench',
    steps: [hold, bench('c', 60)],
    now: '16:30',
    unfitAir: [blush('2026-03-03 08:00', '2026-03-03 12:00')],
    is: ['03 09:00', CLOSED],
  },
])('after $what a step begins', ({ steps, now = '09:00', unfitAir = [], is }) => {
  expect(toldOf([piece('a', steps)], now, { unfitAir })).toEqual(is);
});

test('work at the bench does not wait for the air though the booth is shut when the bench opens', () => {
  const quiet = { open: 9 * 60, close: 10 * 60 };
  const unfitAir = [blush('2026-03-03 09:30', '2026-03-03 12:00')];
  expect(toldOf([piece('a', [hold, bench('c', 60)])], '16:30', { quiet, unfitAir })).toEqual([
    '03 09:00',
    CLOSED,
  ]);
});

test('where the person is free just as the wait ends, it is the wait that is named', () => {
  const pieces = [piece('a', [bench('1', 10), wait('w', 30), bench('c', 10)]), piece('b', [bench('2', 30)])];
  expect(toldOf(pieces, '09:00')).toEqual(['02 09:40', { by: 'step', stepId: 'w' }]);
});

test('a wait for a moment that is past ends when it begins', () => {
  const moment = at('08:00');
  const past: Step = { ...wait('w', 30), ends: { earliest: moment, likely: moment, late: moment } };
  const plan = planBench({
    now: at('09:00'),
    working: working(9, 17),
    pieces: [piece('a', [bench('1', 10), past, bench('c', 10)])],
  });
  expect(plan.ok && plan.value.steps[1]).toMatchObject({ start: at('09:10'), end: at('09:10') });
});
