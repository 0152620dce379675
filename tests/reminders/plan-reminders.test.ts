import { expect, test } from 'vitest';
import { planBench } from '../../src/planner/plan-bench';
import type { Bench, GateStep, Step } from '../../src/planner/step';
import { remindersOf } from '../../src/reminders/reminders';
import type { Surroundings } from '../../src/reminders/shop-reminders';
import { bench, coat, dateTime, piece, utc, wait, window, working } from '../planner/a-bench';

const NOW = utc('2026-03-02 09:00');
const NOTHING: Surroundings = { jars: [], cartridges: [], cards: [], updates: [] };
const hold: Step = { id: 'h', kind: 'hold', against: 'blush' };
const sink: GateStep = {
  id: 'g',
  kind: 'gate',
  check: 'sink',
  minutes: 2,
  againAfterMinutes: 1440,
  failedAt: [],
  mostFailures: 7,
};

function reminded(
  steps: readonly Step[],
  more: Partial<Bench['pieces'][number]> = {},
  around = NOTHING,
  now = NOW,
): string[] {
  const it: Bench = { now, working: working(9, 17), pieces: [piece('a', steps, more)] };
  const plan = planBench(it);
  if (!plan.ok) throw new Error(JSON.stringify(plan.failure));
  return remindersOf(plan.value, it, around).map(({ id, at }) => `${dateTime(at).slice(5)} ${id}`);
}

// An hour after the last work (common practice, no source: more may come). Day 20514 is 2026-03-02.
const RAGS = '03-02 10:10 rags:20514';
const done = { from: NOW - 10, to: NOW };
const ROWS: readonly {
  what: string;
  steps: readonly Step[];
  coatsADay?: number;
  expected: readonly string[];
}[] = [
  {
    what: 'a coat and its move',
    steps: [coat('1')],
    expected: ['03-02 09:00 next-coat:1', '03-02 09:10 move-piece:1', RAGS],
  },
  {
    what: 'blush, when it was to be feared',
    steps: [hold, coat('1', { moveMinutes: 0 })],
    expected: ['03-02 09:00 next-coat:1', '03-02 09:20 check-blush:1', RAGS],
  },
  {
    what: 'a window that is open, and not one that is not yet',
    steps: [
      coat('1', { done, moveMinutes: 0 }),
      window('w', 45, 240),
      coat('2', { moveMinutes: 0 }),
      window('v', 45, 240),
      coat('3', { moveMinutes: 0 }),
    ],
    expected: [
      '03-02 09:45 next-coat:2',
      '03-02 10:40 next-coat:3',
      '03-02 11:50 rags:20514',
      '03-02 12:00 window-closing:w:60',
      '03-02 12:30 window-closing:w:30',
      '03-02 12:50 window-closing:w:10',
    ],
  },
  {
    what: 'the last coat of the day',
    steps: [coat('1', { moveMinutes: 0 }), wait('w', 60), coat('2', { moveMinutes: 0 })],
    coatsADay: 1,
    expected: [
      '03-02 09:00 next-coat:1',
      '03-02 09:10 stop-for-today:2',
      RAGS,
      '03-03 09:00 next-coat:2',
      '03-03 10:10 rags:20515',
    ],
  },
  {
    what: 'a rest, a check for sinking and the work after it',
    steps: [
      wait('w', 2 * 1440),
      sink,
      bench('s', 30),
      bench('r', 30, { task: 'rub-out' }),
      bench('c', 30, { task: 'scuff' }),
    ],
    expected: [
      '03-02 09:00 rest-day:w',
      '03-04 09:00 sink-check:g',
      '03-04 09:02 level-sand:s',
      '03-04 09:32 rub-out:r',
      '03-04 10:02 scuff:c',
      '03-04 11:32 rags:20516',
    ],
  },
  {
    what: 'the next drop',
    steps: [bench('1', 10, { task: 'drop-fill' })],
    expected: ['03-02 09:00 next-drop:1', RAGS],
  },
];

test.each(ROWS)('reminds of $what', ({ steps, coatsADay = 3, expected }) => {
  expect(reminded(steps, { coatsADay })).toEqual(expected);
});

test('does not remind of coats that are laid, but of rags until then and of moving the piece', () => {
  expect(reminded([coat('1', { done })])).toEqual(['03-02 09:00 move-piece:1', '03-02 10:00 rags:20514']);
});

test.each([
  { what: 'at closing time, if that comes sooner', ended: '2026-03-02 16:30', at: '03-02 17:00 rags:20514' },
  { what: 'an hour after it, out of hours too', ended: '2026-03-02 20:00', at: '03-02 21:00 rags:20514' },
  { what: 'of the day on which the work ended', ended: '2026-03-03 10:00', at: '03-03 11:00 rags:20515' },
])('reminds of rags $what', ({ ended, at }) => {
  const laid = coat('1', { moveMinutes: 0, done: { from: NOW, to: utc(ended) } });
  expect(reminded([laid]).filter((line) => line.includes('rags'))).toEqual([at]);
});

test('keeps the rags of the last working day before today', () => {
  const two = [1, 2].map((ago) =>
    coat(`d${ago}`, { moveMinutes: 0, done: { from: NOW - ago * 1440, to: NOW - ago * 1440 + 10 } }),
  );
  expect(reminded(two.reverse()).filter((line) => line.includes('rags'))).toEqual(['03-01 10:10 rags:20513']);
});

test('past midnight the rags of earlier days stand until those of the night are due', () => {
  const ended = (to: string) => coat(to, { moveMinutes: 0, done: { from: utc(to) - 10, to: utc(to) } });
  const steps = ['2026-02-28 12:00', '2026-03-01 12:00', '2026-03-02 23:58'].map(ended);
  const ragsAt = (now: string) =>
    reminded(steps, {}, NOTHING, utc(now)).filter((line) => line.includes('rags'));
  const [before, night] = ['03-01 13:00 rags:20513', '03-03 00:58 rags:20514'];
  expect(ragsAt('2026-03-02 23:59')).toEqual([before, night]);
  expect(ragsAt('2026-03-03 00:57')).toEqual([before, night]);
  expect(ragsAt('2026-03-03 00:58')).toEqual([night]);
});

test('reminds to tell the owner when the promise will not be kept', () => {
  expect(reminded([wait('w', 1440 - 1)], { promised: NOW + 60 })).toEqual([
    `02-28 10:00 customer-update:a:promise:${NOW + 60}`,
  ]);
  expect(reminded([wait('w', 30)], { promised: NOW + 60 })).toEqual([]);
});

test('reminds of nothing of a promise that was not made, and once of one that is past', () => {
  expect(reminded([wait('w', 1440 - 1)])).toEqual([]);
  expect(reminded([wait('w', 60)], { promised: NOW - 60 })).toEqual([
    `02-28 08:00 customer-update:a:promise:${NOW - 60}`,
  ]);
});

test('rags of days further ahead than a week are not reminded of', () => {
  const far = (days: number) =>
    reminded([wait('w', days * 1440), coat('1', { moveMinutes: 0 })]).filter((line) => line.includes('rags'));
  expect(far(7)).toEqual(['03-09 10:10 rags:20521']);
  expect(far(8)).toEqual([]);
});

test('all that there is to be reminded of comes soonest first', () => {
  const around: Surroundings = {
    jars: [],
    cartridges: [{ id: 'c', changeAt: NOW + 5 }],
    cards: [{ id: 'k', weighed: 2, at: NOW + 15 }],
    updates: [],
  };
  expect(reminded([coat('1')], {}, around)).toEqual([
    '03-02 09:00 next-coat:1',
    '03-02 09:05 cartridge:c',
    '03-02 09:10 move-piece:1',
    '03-02 09:15 weigh-card:k:2',
    '03-02 10:10 rags:20514',
  ]);
});

test('reminds of jars, cartridges and owners', () => {
  const around: Surroundings = {
    jars: [
      { id: 'pot', madeAt: NOW, endsAt: NOW + 480 }, // pot life 8 h: an hour before
      { id: 'warm', madeAt: NOW, endsAt: NOW + 240 }, // 4 h: half an hour before
      { id: 'brief', madeAt: NOW, endsAt: NOW + 120 }, // half an hour before
      { id: 'old', madeAt: NOW - 180 * 1440, endsAt: NOW + 20 * 1440 }, // a fortnight before
    ],
    cartridges: [{ id: 'c', changeAt: NOW + 600 }],
    cards: [],
    updates: [{ pieceId: 'a', at: NOW + 700 }],
  };
  expect(reminded([], {}, around)).toEqual([
    '03-02 10:30 jar-end:brief',
    '03-02 12:30 jar-end:warm',
    '03-02 16:00 jar-end:pot',
    '03-02 19:00 cartridge:c',
    `03-02 20:40 customer-update:a:${NOW + 700}`,
    '03-08 09:00 jar-end:old',
  ]);
});

test('keeps the name of a reminder when the plan moves', () => {
  const names = (recoat: number) =>
    reminded([coat('1'), wait('w', recoat), coat('2')]).map((line) => line.slice(12));
  expect(names(60)).toEqual(names(90));
});
