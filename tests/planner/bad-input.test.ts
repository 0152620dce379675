import { expect, test } from 'vitest';
import { planBench } from '../../src/planner/plan-bench';
import { faultSentence } from '../../src/planner/say';
import type { GateStep, Piece } from '../../src/planner/step';
import type { WorkingTimes } from '../../src/planner/windows/working-times';
import { bench, coat, piece, utc, wait, window, working } from './a-bench';

const NOW = utc('2026-03-02 09:00');
const gate = (more: Partial<GateStep>): GateStep => ({
  id: 'g',
  kind: 'gate',
  check: 'powders',
  minutes: 2,
  againAfterMinutes: 1440,
  failedAt: [],
  mostFailures: 3,
  ...more,
});
const OPEN = working(9, 17);
const coats = (between: Piece['steps'][number], more: Partial<Piece> = {}) =>
  piece('a', [coat('1'), between, coat('2')], more);

interface Row {
  readonly what: string;
  readonly pieces: readonly Piece[];
  readonly working?: WorkingTimes;
  readonly faults: readonly string[];
  readonly says: RegExp;
}
const ROWS: readonly Row[] = [
  {
    what: 'a working week of zero hours',
    pieces: [piece('a', [coat('1')])],
    working: working(9, 9),
    faults: ['no-working-hours'],
    says: /at least one day/,
  },
  {
    what: 'a booth that is never open',
    pieces: [piece('a', [coat('1')])],
    working: { ...OPEN, week: OPEN.week.map(({ work }) => ({ work, booth: [] })) },
    faults: ['no-booth-hours'],
    says: /booth is never open/,
  },
  {
    what: 'a booth open only when nobody works',
    pieces: [piece('a', [coat('1')])],
    working: { ...OPEN, quiet: { open: 8 * 60, close: 18 * 60 } },
    faults: ['no-booth-hours'],
    says: /booth is never open/,
  },
  {
    what: 'a window shorter than the move',
    pieces: [coats(window('w', 45, 48))],
    faults: ['window-too-short'],
    says: /3 min long and moving the piece takes 5 min/,
  },
  {
    what: 'a window less than a minute shorter than the move',
    pieces: [coats(window('w', 45, 49.6))],
    faults: ['window-too-short'],
    says: /4 min long and moving the piece takes 5 min/,
  },
  {
    what: 'a window that opens after closing time',
    pieces: [coats(window('w', 10 * 60, 11 * 60))],
    faults: ['window-never-fits'],
    says: /no day on which the coats on both sides/,
  },
  {
    what: 'a window with one coat a day',
    pieces: [coats(window('w', 45, 240), { coatsADay: 1 })],
    faults: ['window-never-fits'],
    says: /coats a day/,
  },
  {
    what: 'a gate that never passes',
    pieces: [piece('a', [gate({ failedAt: [NOW - 3000, NOW - 2000, NOW - 1000] })])],
    faults: ['gate-never-passes'],
    says: /not passed 3 times/,
  },
  {
    what: 'a gate that is asked again at once for ever',
    pieces: [piece('a', [gate({ failedAt: [NOW - 1000], againAfterMinutes: 0 })])],
    faults: ['gate-never-passes'],
    says: /not passed 1 time,/,
  },
  {
    what: 'a step longer than any day',
    pieces: [piece('a', [bench('1', 600)])],
    faults: ['step-too-long'],
    says: /takes 10 h.*is 8 h/,
  },
  {
    what: 'a step a minute longer than any day',
    pieces: [piece('a', [bench('1', 481)])],
    faults: ['step-too-long'],
    says: /takes 8 h 1 min, .*is 8 h\./,
  },
  {
    what: 'a step longer than the few minutes of a day',
    pieces: [piece('a', [bench('1', 46)])],
    working: working(9, 9.5),
    faults: ['step-too-long'],
    says: /takes 46 min, .*is 30 min\./,
  },
  {
    what: 'a wait whose late end comes before its early one',
    pieces: [piece('a', [wait('w', 60, 90, 120)])],
    faults: ['band-out-of-order'],
    says: /in that order/,
  },
  {
    what: 'a wait that is not a number',
    pieces: [piece('a', [wait('w', Number.NaN)])],
    faults: ['band-out-of-order'],
    says: /in that order/,
  },
  {
    what: 'a wait that never ends',
    pieces: [piece('a', [wait('w', Number.POSITIVE_INFINITY)])],
    faults: ['band-out-of-order'],
    says: /in that order/,
  },
  {
    what: 'a wait of less than no time',
    pieces: [piece('a', [wait('w', 5, -5)])],
    faults: ['band-out-of-order'],
    says: /in that order/,
  },
  {
    what: 'a wait that is late before it is likely',
    pieces: [piece('a', [wait('w', 60, 30, 50)])],
    faults: ['band-out-of-order'],
    says: /in that order/,
  },
  {
    what: 'a check longer than any day',
    pieces: [piece('a', [gate({ minutes: 600 })])],
    faults: ['step-too-long'],
    says: /takes 10 h.*is 8 h/,
  },
  {
    what: 'no coats a day',
    pieces: [piece('a', [coat('1')], { coatsADay: 0 })],
    faults: ['no-coats-a-day'],
    says: /at least one/,
  },
  {
    what: 'a shop closed for years',
    pieces: [piece('a', [coat('1')])],
    working: { ...OPEN, closures: [{ from: NOW - 1, to: NOW + 2e6, closes: 'everything' }] },
    faults: ['never-open'],
    says: /closures/,
  },
  {
    what: 'several faults at once',
    pieces: [coats(window('w', 45, 48)), piece('b', [bench('1', 600)])],
    faults: ['window-too-short', 'step-too-long'],
    says: /./,
  },
];

test.each(ROWS)('explains $what', ({ pieces, faults, says, ...row }) => {
  const plan = planBench({ now: NOW, working: row.working ?? OPEN, pieces });
  const failures = plan.ok ? [] : plan.failure;
  expect(failures.map(({ kind }) => kind)).toEqual(faults);
  for (const failure of failures) expect(faultSentence(failure)).toMatch(says);
});

test.each<{ what: string; pieces: readonly Piece[] }>([
  { what: 'a window just as long as the move', pieces: [coats(window('w', 45, 50))] },
  { what: 'a window that nothing comes after', pieces: [piece('a', [coat('1'), window('w', 45, 240)])] },
  { what: 'a wait that cannot run over', pieces: [piece('a', [wait('w', 0)])] },
  { what: 'a check as long as a day', pieces: [piece('a', [gate({ minutes: 480 })])] },
  {
    what: 'a check asked again at once that has not failed',
    pieces: [piece('a', [gate({ againAfterMinutes: 0 })])],
  },
  { what: 'a check one failure short', pieces: [piece('a', [gate({ failedAt: [NOW - 9, NOW - 5] })])] },
  {
    what: 'a fault in what is done',
    pieces: [piece('a', [bench('1', 600, { done: { from: NOW - 600, to: NOW } }), coat('2')])],
  },
])('plans $what', ({ pieces }) => {
  expect(planBench({ now: NOW, working: OPEN, pieces }).ok).toBe(true);
});

test.each([
  { promised: NOW - 60, state: 'past' },
  { promised: NOW + 5, state: 'missed' },
  { promised: NOW + 100, state: 'tight' },
  { promised: NOW + 400, state: 'kept' },
  { promised: undefined, state: 'none' },
])('still plans a piece whose promise is $state', ({ promised, state }) => {
  // Likely end: coat to 09:10, wait 60 min: 10:10. The wait may run 60 min late: reserve 60 min, promise 11:10.
  const steps = [coat('1'), wait('w', 60, 30, 120)];
  const plan = planBench({
    now: NOW,
    working: OPEN,
    pieces: [piece('a', steps, promised === undefined ? {} : { promised })],
  });
  const planned = plan.ok ? plan.value.pieces[0] : undefined;
  expect(planned).toMatchObject({
    earliest: NOW + 40,
    likely: NOW + 70,
    reserveMinutes: 60,
    promise: NOW + 130,
    promiseState: state,
  });
});
