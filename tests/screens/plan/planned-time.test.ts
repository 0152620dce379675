import { expect, test } from 'vitest';
import { toInstantMs } from '../../../src/planner/local-day';
import type { PlannedStep } from '../../../src/planner/plan';
import type { Step } from '../../../src/planner/step';
import { planTimes, startWords } from '../../../src/screens/plan/planned-time';

const NOW = Math.floor(new Date(2026, 0, 5, 9).getTime() / 60_000); // a Monday at nine, where the test runs; no clocks are changed in January
const [HOUR, DAY] = [60, 1440];
let ids = 0;
const planned = (step: Partial<Step> & Pick<Step, 'kind'>, start: number, end: number): PlannedStep =>
  ({
    pieceId: 'box',
    stepId: `s${ids++}`,
    kind: step.kind,
    step,
    start: NOW + start,
    end: NOW + end,
    isDone: false,
    bound: { by: 'step', stepId: '' },
  }) as unknown as PlannedStep;
const work = (start: number, end: number) => planned({ kind: 'work' }, start, end);
const wait = (earliest: number, likely: number, late: number, start: number) =>
  planned({ kind: 'wait', minutes: { earliest, likely, late } } as never, start, start + likely);

const STEPS = [
  work(0, 10),
  wait(45, HOUR, 2 * HOUR, 10),
  work(HOUR + 10, HOUR + 20),
  wait(14 * DAY, 21 * DAY, 28 * DAY, HOUR + 20),
  work(21 * DAY + HOUR + 20, 21 * DAY + 3 * HOUR),
  wait(45, HOUR, 2 * HOUR, 21 * DAY + 3 * HOUR),
];

test.each([
  { what: 'a coat of this morning, to the minute', at: 0, says: 'today 09:00 – 09:10' },
  { what: 'an hour to recoat', at: 1, says: 'today 09:10 – today 10:10' },
  { what: 'the coat after it', at: 2, says: 'today 10:10 – 10:20' },
  { what: 'weeks to harden, with no minute at their end', at: 3, says: 'today 10:20 – 26 Jan' },
  { what: 'the sanding after them, by its day', at: 4, says: '26 Jan' },
  { what: 'an hour behind weeks, by its day', at: 5, says: '26 Jan' },
])('$what', ({ at, says }) => {
  expect(planTimes(STEPS[at] as PlannedStep, STEPS, toInstantMs(NOW))).toBe(says);
});

test('what is done makes nothing uncertain, nor does another piece', () => {
  const weeks = STEPS[3] as PlannedStep;
  const coat = work(21 * DAY, 21 * DAY + 10);
  const now = toInstantMs(NOW);
  const minute = /^26 Jan 09:00/;
  expect(startWords(coat, [weeks, coat], now)).toBe('26 Jan');
  expect(startWords(coat, [{ ...weeks, isDone: true }, coat], now)).toMatch(minute);
  expect(startWords(coat, [{ ...weeks, pieceId: 'other' }, coat], now)).toMatch(minute);
});
