import { expect, test } from 'vitest';
import { planBench } from '../../../src/planner/plan-bench';
import { recoatWindow } from '../../../src/planner/windows/recoat-window';
import { coat, dateTime, piece, utc, window, working } from '../a-bench';

// Worked scenario C of the trade notes: coat ends 10:00, window 45 min to 4 h: next 10:45 to 14:00; 14:01 means scuff tomorrow.
// Pot life 8 h from 09:30 at 20 C, shop 30 C: about 13:30.
const at = (time: string): number => utc(`2026-03-02 ${time}`);

const WINDOW = { fromMinutes: 45, untilMinutes: 240 };

test('opens the window from 10:45 to 14:00', () => {
  expect(recoatWindow(at('10:00'), WINDOW)).toEqual({ opens: at('10:45'), closes: at('14:00') });
});

const done = { from: at('09:50'), to: at('10:00') };
const plannedAt = (now: string) =>
  planBench({
    now: at(now),
    working: working(8, 17),
    pieces: [piece('box', [coat('seal', { done }), window('w', 45, 240), coat('top')])],
  });

test.each([
  { now: '10:05', steps: ['w 2026-03-02 10:00', 'top 2026-03-02 10:45'], missed: [] },
  { now: '14:00', steps: ['w 2026-03-02 10:00', 'top 2026-03-02 14:00'], missed: [] },
  { now: '14:01', steps: ['w:scuff 2026-03-03 08:00', 'top 2026-03-03 08:30'], missed: ['w'] },
])('plans the topcoat from $now on', ({ now, steps, missed }) => {
  const plan = plannedAt(now);
  if (!plan.ok) throw new Error(JSON.stringify(plan.failure));
  const open = plan.value.steps.filter(({ isDone }) => !isDone);
  expect(open.map(({ stepId, start }) => `${stepId} ${dateTime(start)}`)).toEqual(steps);
  expect(plan.value.pieces[0]?.missedWindows).toEqual(missed);
});

test('shows when the window closes', () => {
  const plan = plannedAt('10:05');
  expect(plan.ok && plan.value.steps[1]?.closes).toBe(at('14:00'));
});
