import { expect, test } from 'vitest';
import { sinceWhen } from '../../../src/actions/plan/since-when';
import type { Plan } from '../../../src/planner/plan';
import { planBench } from '../../../src/planner/plan-bench';
import { planReminders } from '../../../src/reminders/plan-reminders';
import { clock, coat, piece, utc, wait, working } from '../../planner/a-bench';

const at = (time: string): number => utc(`2026-03-02 ${time}`);
const done = { from: at('09:00'), to: at('09:10') };
function planAt(time: string): Plan {
  const steps = [coat('a', { done }), wait('b', 60), coat('c'), wait('d', 60), coat('e')];
  const plan = planBench({ now: at(time), working: working(9, 17), pieces: [piece('box', steps)] });
  if (!plan.ok) throw new Error(JSON.stringify(plan.failure));
  return plan.value;
}
const nextCoats = (time: string): string[] => {
  const live = planAt(time);
  const found = sinceWhen(
    planReminders(live, () => 0),
    planReminders(planAt('09:10'), () => 0),
    live,
  );
  return found.filter(({ kind }) => kind === 'next-coat').map((one) => `${one.stepId} ${clock(one.at)}`);
};

test('what follows a coat that is not laid yet has not come due', () => {
  const live = planAt('12:00');
  const found = sinceWhen(
    planReminders(live, () => 0),
    planReminders(planAt('09:10'), () => 0),
    live,
  );
  const moves = found.filter(({ kind, stepId }) => kind === 'move-piece' && stepId === 'c');
  expect(moves.map((one) => clock(one.at))).toEqual(['12:10']);
});

// The coat ended at 09:10 and the wait is an hour; the last entry was the coat.
test.each([
  { now: '09:30', coats: ['c 10:10', 'e 11:20'] },
  { now: '10:10', coats: ['c 10:10', 'e 11:20'] },
  { now: '12:00', coats: ['c 10:10', 'e 13:10'] },
])(
  'at $now the coat that waits is due since it was ready, and the one after it follows it',
  ({ now, coats }) => {
    expect(nextCoats(now)).toEqual(coats);
  },
);

test('behind a look that is still to be made nothing waits: it has not come due', () => {
  const gate = {
    kind: 'gate',
    id: 'look',
    check: 'look-over',
    minutes: 2,
    againAfterMinutes: 60,
    failedAt: [],
    mostFailures: 3,
  } as const;
  const planned = (time: string): Plan => {
    const steps = [coat('a', { done }), wait('b', 60), gate, coat('c')];
    const plan = planBench({ now: at(time), working: working(9, 17), pieces: [piece('box', steps)] });
    return plan.ok ? plan.value : expect.unreachable();
  };
  const [live, then] = [planned('12:00'), planned('09:10')];
  const found = sinceWhen(
    planReminders(live, () => 0),
    planReminders(then, () => 0),
    live,
  );
  const coats = found
    .filter(({ kind }) => kind === 'next-coat')
    .map((one) => `${one.stepId} ${clock(one.at)}`);
  expect(coats).toEqual(['c 12:02']);
});
