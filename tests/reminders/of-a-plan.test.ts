import { expect, test } from 'vitest';
import type { Plan, PlannedStep } from '../../src/planner/plan';
import type { Step } from '../../src/planner/step';
import { planReminders } from '../../src/reminders/plan-reminders';
import { promiseReminders } from '../../src/reminders/shop-reminders';
import { bench, coat, dateTime, utc, wait, window } from '../planner/a-bench';

// Reminders of plans as they are, each step where a test puts it.
const NOW = utc('2026-03-02 09:00');

const at = (step: Step, start: number, end: number, more: Partial<PlannedStep> = {}): PlannedStep => ({
  pieceId: 'a',
  stepId: step.id,
  kind: step.kind,
  step,
  start: NOW + start,
  end: NOW + end,
  isDone: false,
  bound: { by: 'now' },
  ...more,
});
const reminded = (...steps: PlannedStep[]) =>
  planReminders({ now: NOW, steps, pieces: [], isProved: true }, () => 0).map(
    ({ id, at: when, until }) =>
      `${id} ${dateTime(when).slice(5)}${until === undefined ? '' : ` until ${dateTime(until).slice(5)}`}`,
  );
const laid = at(coat('1', { moveMinutes: 0 }), -10, 0, { isDone: true });

test('a window is told as long as it can still be met, each time until it closes', () => {
  const open = (end: number) => reminded(laid, at(window('w', 45, 240), 0, end, { closes: NOW + 240 }));
  const until = 'until 03-02 13:00';
  const [hour, half, ten] = ['03-02 12:00', '03-02 12:30', '03-02 12:50'].map((time, n) =>
    [`window-closing:w:${[60, 30, 10][n]}`, `${time} ${until}`].join(' '),
  );
  expect(open(180)).toEqual([hour, half, ten]); // it opens an hour before it closes
  expect(open(181)).toEqual([half, ten]);
  expect(open(231)).toEqual([]);
});

test('a window behind a coat that is not laid, or is of another piece, is not told', () => {
  const opened = at(window('w', 45, 240), 0, 45, { closes: NOW + 240 });
  expect(reminded({ ...laid, isDone: false }, opened).filter((line) => line.includes('window'))).toEqual([]);
  expect(reminded({ ...laid, pieceId: 'b' }, opened)).toEqual([]);
  expect(reminded(opened)).toEqual([]);
  expect(reminded(laid, { ...opened, closes: undefined } as unknown as PlannedStep)).toEqual([]);
});

test('a rest of a day is told until it is over, one that is shorter, or is over, is not', () => {
  const rest = (minutes: number, isDone = false) => reminded(at(wait('w', minutes), 0, minutes, { isDone }));
  expect(rest(1440)).toEqual(['rest-day:w 03-02 09:00 until 03-03 09:00']);
  expect(rest(1439)).toEqual([]);
  expect(rest(1440, true)).toEqual([]);
  expect(reminded(at(bench('b', 1440), 0, 1440)).some((line) => line.startsWith('rest'))).toBe(false);
});

test('a coat by gun is moved, and looked at for blush where it waited for that', () => {
  const hold = (against: 'blush' | 'cold') => at({ id: 'h', kind: 'hold', against }, 0, 0);
  const after = (...before: PlannedStep[]) =>
    reminded(...before, at(coat('1'), 0, 10)).filter((line) => !line.startsWith('next-coat'));
  const move = 'move-piece:1 03-02 09:10 until 03-02 09:40';
  expect(after()).toEqual([move]);
  expect(after(hold('cold'))).toEqual([move]);
  expect(after(hold('blush'))).toEqual([move, 'check-blush:1 03-02 09:20 until 03-02 10:10']);
  expect(reminded(at(coat('1', { place: 'bench' }), 0, 10))).toEqual(['next-coat:1 03-02 09:00']);
  expect(reminded(at(coat('1', { moveMinutes: 0 }), 0, 10))).toEqual(['next-coat:1 03-02 09:00']);
});

test('the last coat of the day is the one before on the same piece, told until the day is over', () => {
  const bound = { by: 'coats-a-day', coatsADay: 1 } as const;
  const next = at(coat('3', { moveMinutes: 0 }), 1440, 1450, { bound });
  const stops = (...earlier: PlannedStep[]) =>
    reminded(...earlier, next).filter((line) => line.startsWith('stop'));
  const own = at(coat('1', { moveMinutes: 0 }), 0, 10);
  const other = at(coat('2'), 20, 30, { pieceId: 'b' });
  const stop = 'stop-for-today:3 03-02 09:10 until 03-03 00:00';
  expect(stops(own, other, at(bench('b', 5), 40, 45), at(wait('w', 60), 10, 70))).toEqual([stop]);
  expect(stops(other)).toEqual([]);
  expect(reminded(own, { ...next, bound: { by: 'closed' } }).some((line) => line.startsWith('stop'))).toBe(
    false,
  );
});

test.each([
  { task: 'clean', kind: undefined },
  { task: 'other', kind: undefined },
  { task: 'spirit-off', kind: 'next-step' },
  { task: 'pore-fill', kind: 'next-step' },
  { task: 'filler-paste', kind: 'next-step' },
  { task: 'grain-seal', kind: 'next-step' },
  { task: 'glue', kind: 'next-step' },
  { task: 'drop-fill', kind: 'next-drop' },
  { task: 'scuff', kind: 'scuff' },
  { task: 'level-sand', kind: 'level-sand' },
  { task: 'rub-out', kind: 'rub-out' },
  { task: 'pad', kind: 'next-coat' },
  { task: 'toner-coat', kind: 'next-coat' },
] as const)('$task is reminded of as $kind, and not once it is done', ({ task, kind }) => {
  const step = bench('b', 10, { task });
  expect(reminded(at(step, 0, 10))).toEqual(kind ? [`${kind}:b 03-02 09:00`] : []);
  expect(reminded(at(step, 0, 10, { isDone: true }))).toEqual([]);
});

test('of the checks only the one for sinking is reminded of', () => {
  const gate = (check: 'sink' | 'powders') =>
    at(
      { id: 'g', kind: 'gate', check, minutes: 2, againAfterMinutes: 1, failedAt: [], mostFailures: 7 },
      0,
      2,
    );
  expect(reminded(gate('sink'))).toEqual(['sink-check:g 03-02 09:00']);
  expect(reminded(gate('powders'))).toEqual([]);
});

test.each([
  { state: 'missed', told: true },
  { state: 'past', told: true },
  { state: 'tight', told: false },
  { state: 'held', told: false },
  { state: 'kept', told: false },
] as const)('of a promise that is $state the owner is to be told: $told', ({ state, told }) => {
  const pieces = [{ pieceId: 'a', promiseState: state }] as unknown as Plan['pieces'];
  const plan: Plan = { now: NOW, steps: [], pieces, isProved: true };
  expect(promiseReminders(plan, new Map([['a', NOW]]))).toHaveLength(told ? 1 : 0);
  expect(promiseReminders(plan, new Map([['b', NOW]]))).toEqual([]);
});
