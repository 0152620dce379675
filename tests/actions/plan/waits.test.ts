import { expect, test } from 'vitest';
import { estimatedWaits } from '../../../src/actions/plan/waits';
import type { Step } from '../../../src/planner/step';
import { DAY_1_MS, layCoat } from '../../logbook/entries';
import { anOutlook, aShop } from '../../parts/an-outlook';

// The outlook of the helper: recoat 1, 2, 3 h after the first coat, level 100, 200, 300 h, rub out 200, 300, 400 h.
const LAID = { hour: 0, body: layCoat() };
const HOUR = 60;
const start = DAY_1_MS / 60_000;
const coat = (id: string, done?: number): Step => ({
  kind: 'work',
  id,
  task: 'coat',
  place: 'booth',
  minutes: 10,
  isCoat: true,
  ...(done !== undefined && { done: { from: done - 10, to: done } }),
});
const wait = (id: string, until: 'recoat' | 'level-sand' | 'rub-out' | 'rest'): Step => ({
  kind: 'wait',
  id,
  until,
  minutes: { earliest: 1, likely: 2, late: 3 },
});
const STEPS = [
  coat('a', start),
  wait('b', 'recoat'),
  coat('c'),
  wait('d', 'level-sand'),
  wait('e', 'rub-out'),
  wait('f', 'rest'),
];

function bandsOf(
  steps: readonly Step[],
  isOwn: (id: string) => boolean = () => false,
  oneMoreCoat?: { levelS: number; rubOutS: number },
) {
  const { piece } = aShop(LAID);
  const made = anOutlook();
  const outlook = { ...made, estimate: { ...made.estimate, ...(oneMoreCoat && { oneMoreCoat }) } };
  const worked = estimatedWaits(steps, { piece, outlook, isOwn, nowMs: DAY_1_MS });
  return Object.fromEntries(
    worked.flatMap((step) =>
      step.kind === 'wait'
        ? [[step.id, [step.minutes.earliest, step.minutes.likely, step.minutes.late]]]
        : [],
    ),
  );
}

test('waits come from the estimate, each from the coat before it', () => {
  expect(bandsOf(STEPS)).toEqual({
    b: [HOUR, 2 * HOUR, 3 * HOUR],
    d: [100 * HOUR, 200 * HOUR, 300 * HOUR],
    // what is left to rub-out when level-sanding may begin, 200 h after the coat
    e: [0, 100 * HOUR, 200 * HOUR],
    f: [1, 2, 3],
  });
});

test('a further coat makes the waits for hardness longer by what it adds', () => {
  const added = bandsOf(STEPS, () => false, { levelS: 50 * 3600, rubOutS: 80 * 3600 });
  expect(added).toMatchObject({
    b: [HOUR, 2 * HOUR, 3 * HOUR],
    d: [150 * HOUR, 250 * HOUR, 350 * HOUR],
    e: [30 * HOUR, 130 * HOUR, 230 * HOUR],
  });
});

test('a wait set by hand stays', () => {
  expect(bandsOf(STEPS, (id) => id === 'b')['b']).toEqual([1, 2, 3]);
});

test('without an estimate all waits stay as they are', () => {
  const { piece } = aShop(LAID);
  expect(
    estimatedWaits(STEPS, { piece, outlook: { state: 'computing' }, isOwn: () => false, nowMs: DAY_1_MS }),
  ).toEqual(STEPS);
});
