import { describe, expect, test } from 'vitest';
import { planBench } from '../../../src/planner/plan-bench';
import { stepName } from '../../../src/planner/say';
import type { Job } from '../../../src/planner/starting-plans/job';
import { STARTING_PLANS, startPlan } from '../../../src/planner/starting-plans/start-plan';
import type { Band, Step } from '../../../src/planner/step';
import { dateTime, hours, utc, working } from '../a-bench';

const jobs = Object.keys(STARTING_PLANS) as Job[];
function counter(): () => string {
  let count = 0;
  return () => `s${++count}`;
}

test('there is a plan for each of the common jobs', () => {
  expect(jobs).toEqual([
    'melt-in',
    'opaque-touch-up',
    'full-clear',
    'toner',
    'waterborne',
    'shellac',
    'catalysed',
    'drop-fill',
    'coats-on',
  ]);
});

test.each(jobs)('%s can be planned as it stands', (job) => {
  const { coatsADay, steps } = startPlan(job, counter());
  const plan = planBench({
    now: utc('2026-03-02 09:00'),
    working: working(9, 17),
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
  { job: 'waterborne', until: 'level-sand', band: [7 * DAY, 14 * DAY, 21 * DAY] },
  { job: 'drop-fill', until: 'level-sand', band: [7 * DAY, 14 * DAY, 30 * DAY] },
  { job: 'catalysed', until: 'level-sand', band: [3 * DAY, 5 * DAY, 10 * DAY] },
  { job: 'shellac', until: 'rest', band: [DAY, DAY, 2 * DAY] },
  { job: 'shellac', until: 'recoat', band: [180, 300, 720] },
  { job: 'toner', until: 'recoat', band: [20, 30, 60] },
  { job: 'toner', until: 'rest', band: [120, 240, DAY] },
  { job: 'opaque-touch-up', until: 'recoat', band: [45, 60, 120] },
] as const)('$job waits $band min until $until', ({ job, until, band }) => {
  const waits = startPlan(job, counter()).steps.filter(
    (step) => step.kind === 'wait' && step.until === until,
  );
  const numbers = ({ earliest, likely, late }: Band) => [earliest, likely, late];
  expect(waits.length).toBeGreaterThan(0);
  expect(waits[0]?.kind === 'wait' && numbers(waits[0].minutes)).toEqual(band);
});

// Twelve coats, three a day, make an instrument; a sealer and two topcoats a catalysed film (common practice, no source). Between two coats
// of one sort lies one wait, none before the first; catalysed coats are held by a window instead, and days lie between a session of the pad and the next.
test.each([
  { job: 'melt-in', coatsADay: 3, coats: { coat: 2 }, recoats: 1 },
  { job: 'opaque-touch-up', coatsADay: 3, coats: { 'drop-fill': 3, 'opaque-coat': 2, coat: 2 }, recoats: 2 },
  { job: 'full-clear', coatsADay: 3, coats: { coat: 12 }, recoats: 11 },
  { job: 'toner', coatsADay: 4, coats: { 'toner-coat': 3, coat: 3 }, recoats: 4 },
  { job: 'waterborne', coatsADay: 3, coats: { coat: 5 }, recoats: 4 },
  { job: 'shellac', coatsADay: 1, coats: { pad: 7 }, recoats: 6 },
  { job: 'catalysed', coatsADay: 3, coats: { seal: 1, coat: 2 }, recoats: 0 },
  { job: 'drop-fill', coatsADay: 3, coats: { 'drop-fill': 8 }, recoats: 0 },
  { job: 'coats-on', coatsADay: 3, coats: {}, recoats: 0 },
] as const)('$job lays $coats, $coatsADay a day', ({ job, coatsADay, coats, recoats }) => {
  const plan = startPlan(job, counter());
  const laid: Record<string, number> = {};
  for (const step of plan.steps)
    if (step.kind === 'work' && step.isCoat) laid[step.task] = (laid[step.task] ?? 0) + 1;
  expect(laid).toEqual(coats);
  expect(plan.coatsADay).toBe(coatsADay);
  expect(plan.steps.filter((step) => step.kind === 'wait' && step.until === 'recoat')).toHaveLength(recoats);
  const first = plan.steps.findIndex((step) => step.kind === 'work' && step.isCoat);
  expect(plan.steps.slice(0, Math.max(0, first)).some(({ kind }) => kind === 'wait')).toBe(job === 'melt-in');
});

// A soft film is given a week before it is tried again, a colour or a sunken pore only until the next day (common practice, no source).
test.each(jobs)(
  '%s asks a film that is soft again after a week, what is looked at on the next day',
  (job) => {
    const gates = startPlan(job, counter()).steps.filter((step) => step.kind === 'gate');
    expect(gates.length).toBeGreaterThan(0);
    for (const { check, againAfterMinutes } of gates)
      expect(againAfterMinutes).toBe(check === 'powders' || check === 'no-print' ? 7 * DAY : DAY);
  },
);

test.each(['opaque-touch-up', 'toner'] as const)(
  '%s reads its colour once, before the clear goes over it',
  (job) => {
    const told = startPlan(job, counter()).steps.map((step) =>
      step.kind === 'work' ? step.task : step.kind === 'gate' ? step.check : step.kind,
    );
    expect(told.filter((one) => one === 'colour')).toHaveLength(1);
    const read = told.indexOf('colour');
    expect(read).toBeLessThan(told.indexOf('coat'));
    expect(read).toBeGreaterThan(told.lastIndexOf(job === 'toner' ? 'toner-coat' : 'opaque-coat'));
  },
);

describe('every starting plan', () => {
  const of = (job: Job): Step[] => startPlan(job, counter()).steps;
  const isCoat = (step: Step | undefined) => step?.kind === 'work' && step.isCoat === true;
  /** Whether such a step comes before this one, after the last coat. */
  const hasSinceCoat = (steps: Step[], at: number, is: (step: Step) => boolean): boolean =>
    steps.slice(steps.slice(0, at).findLastIndex(isCoat) + 1, at).some(is);
  const waits = (least: number) => (step: Step) => step.kind === 'wait' && step.minutes.likely >= least;

  test.each(jobs)('%s waits for levelling and for rubbing out', (job) => {
    const steps = of(job);
    steps.forEach((step, at) => {
      if (step.kind !== 'work' || (step.task !== 'level-sand' && step.task !== 'rub-out')) return;
      const { task } = step;
      expect(
        hasSinceCoat(steps, at, (one) => one.kind === 'wait' && (one.until === task || one.until === 'rest')),
      ).toBe(true);
    });
  });

  test.each(jobs)(
    '%s reads a colour when its film is dry, and looks for sinking days after levelling',
    (job) => {
      const steps = of(job);
      steps.forEach((step, at) => {
        if (step.kind !== 'gate') return;
        if (step.check === 'colour') expect(hasSinceCoat(steps, at, waits(4 * 60))).toBe(true);
        if (step.check !== 'sink') return;
        const levelled = steps
          .slice(0, at)
          .findLastIndex((one) => one.kind === 'work' && one.task === 'level-sand');
        expect(levelled).toBeGreaterThan(-1);
        expect(steps.slice(levelled, at).some(waits(3 * DAY))).toBe(true);
      });
    },
  );
});

// 2 March 2026 is a Monday; Monday to Friday, nine to five. Sessions, spirit and rest: common practice, no source.
test('shellac by pad: playable mid-March, comfortable from early April on', () => {
  const { coatsADay, steps } = startPlan('shellac', counter());
  const week = Array.from({ length: 7 }, (_, day) => (day < 5 ? hours(9, 17) : { work: [] }));
  const plan = planBench({
    now: utc('2026-03-02 09:00'),
    working: { ...working(9, 17), week },
    pieces: [{ id: 'a', coatsADay, steps, promised: utc('2026-04-06 17:00') }],
  });
  const [found] = plan.ok ? plan.value.pieces : [];
  const day = (minute = 0) => dateTime(minute).slice(0, 10);
  expect(day(found?.earliest) >= '2026-03-16' && day(found?.earliest) <= '2026-03-20').toBe(true);
  expect(day(found?.promise) >= '2026-03-30' && day(found?.promise) <= '2026-04-13').toBe(true);
  expect(found?.promiseState).toBe('soft');
});

test('open pores are filled after cleaning, dry 24 to 72 h and are sealed before the first coat; fine pores ask for nothing', () => {
  // Hours: pore filler by its sheet 24 to 72 h (common practice, no source).
  const tell = (step: Step): string =>
    step.kind === 'work'
      ? step.task
      : step.kind === 'wait'
        ? `${step.until} ${step.minutes.earliest / 60}-${step.minutes.late / 60} h`
        : step.kind;
  for (const job of ['full-clear', 'waterborne', 'shellac', 'catalysed'] as const) {
    const fine = startPlan(job, counter()).steps.map(tell);
    const open = startPlan(job, counter(), true).steps.map(tell);
    expect(open.slice(0, 6)).toEqual([
      'clean',
      'pore-fill',
      'filler-dry 24-72 h',
      'scuff',
      'grain-seal',
      'rest 1-4 h',
    ]);
    expect([open[0], ...open.slice(6)]).toEqual(fine);
  }
});
