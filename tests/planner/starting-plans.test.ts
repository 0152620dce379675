import { expect, test } from 'vitest';
import { planBench } from '../../src/planner/plan-bench';
import { stepName } from '../../src/planner/say';
import type { Job } from '../../src/planner/starting-plans/job';
import { STARTING_PLANS, startPlan } from '../../src/planner/starting-plans/start-plan';
import type { Band, Step } from '../../src/planner/step';
import { shop, utc } from './a-bench';

const jobs = Object.keys(STARTING_PLANS) as Job[];
function counter(): () => string {
  let count = 0;
  return () => `s${++count}`;
}

test('there is a plan for each of the seven common jobs', () => {
  expect(jobs).toEqual([
    'melt-in',
    'opaque-touch-up',
    'full-clear',
    'toner',
    'waterborne',
    'shellac',
    'catalysed',
  ]);
});

test.each(jobs)('%s can be planned as it stands', (job) => {
  const { coatsADay, steps } = startPlan(job, counter());
  const plan = planBench({
    now: utc('2026-03-02 09:00'),
    shop: shop(9, 17),
    pieces: [{ id: 'a', coatsADay, steps }],
  });
  expect(plan.ok).toBe(true);
  expect(new Set(steps.map(({ id }) => id)).size).toBe(steps.length);
  for (const step of steps) expect(stepName(step)).not.toBe('');
});

// Waits, "Timing" of the trade notes: common practice, no source. Days: low, typical, high.
const DAY = 1440;
test.each([
  { job: 'full-clear', until: 'recoat', band: [45, 60, 120] },
  { job: 'melt-in', until: 'level-sand', band: [3 * DAY, 5 * DAY, 7 * DAY] },
  { job: 'full-clear', until: 'level-sand', band: [14 * DAY, 21 * DAY, 28 * DAY] },
  { job: 'opaque-touch-up', until: 'shrink-back', band: [180, 240, 300] },
  { job: 'opaque-touch-up', until: 'level-sand', band: [7 * DAY, 14 * DAY, 30 * DAY] },
  { job: 'waterborne', until: 'recoat', band: [60, 90, 120] },
  { job: 'waterborne', until: 'cure', band: [7 * DAY, 14 * DAY, 21 * DAY] },
  { job: 'shellac', until: 'rest', band: [7 * DAY, 14 * DAY, 28 * DAY] },
] as const)('$job waits $band min until $until', ({ job, until, band }) => {
  const waits = startPlan(job, counter()).steps.filter(
    (step) => step.kind === 'wait' && step.until === until,
  );
  const numbers = ({ earliest, likely, late }: Band) => [earliest, likely, late];
  expect(waits.length).toBeGreaterThan(0);
  expect(waits[0]?.kind === 'wait' && numbers(waits[0].minutes)).toEqual(band);
});

// Scenario B: twelve coats, three a day. Scenario C: sealer and two topcoats within 45 min to 4 h.
test.each([
  { job: 'full-clear', coats: 12, coatsADay: 3 },
  { job: 'catalysed', coats: 3, coatsADay: 3 },
  { job: 'waterborne', coats: 4, coatsADay: 4 },
  { job: 'shellac', coats: 6, coatsADay: 2 },
] as const)('$job lays $coats coats, $coatsADay a day', ({ job, coats, coatsADay }) => {
  const plan = startPlan(job, counter());
  const isCoat = (step: Step) => step.kind === 'work' && step.isCoat === true;
  expect(plan.steps.filter(isCoat)).toHaveLength(coats);
  expect(plan.coatsADay).toBe(coatsADay);
});
