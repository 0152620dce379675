import { expect, test } from 'vitest';
import { planBench } from '../../src/planner/plan-bench';
import type { Piece } from '../../src/planner/step';
import { bench, coat, dateTime, piece, utc, wait, working } from './a-bench';

const NOW = utc('2026-03-02 09:00');

function planned(...pieces: readonly Piece[]) {
  const plan = planBench({ now: NOW, working: working(9, 17), pieces });
  if (!plan.ok) throw new Error(JSON.stringify(plan.failure));
  const { steps } = plan.value;
  return {
    ...plan.value,
    startOf: (id: string) => dateTime(steps.find(({ stepId }) => stepId === id)?.start ?? 0),
  };
}

test('of a piece that is left out only what is done stands in the plan, and its move keeps the person busy', () => {
  const done = { from: NOW - 10, to: NOW };
  const out = piece('out', [wait('v', 30), coat('1', { done }), wait('w', 30), coat('2')], {
    isLeftOut: true,
  });
  const plan = planned(out, piece('b', [bench('3', 30)]));
  expect(plan.steps.map(({ stepId }) => stepId)).toEqual(['v', '1', '3']);
  expect(plan.pieces.map(({ pieceId }) => pieceId)).toEqual(['b']);
  expect(plan.startOf('3')).toBe('2026-03-02 09:05');
});

test('a step before one that is done counts as done, when that began', () => {
  const done = { from: NOW - 60, to: NOW - 50 };
  const { steps } = planned(piece('a', [bench('0', 30), coat('1', { done }), wait('w', 70), coat('2')]));
  expect(steps.map(({ isDone }) => isDone)).toEqual([true, true, false, false]);
  expect(steps[0]).toMatchObject({ start: NOW - 50, end: NOW - 50, bound: { by: 'done' } });
  expect(steps[2]).toMatchObject({ start: NOW - 50, end: NOW + 20, bound: { by: 'step', stepId: '1' } });
});

test('work that is going on keeps the person busy, a wait that is going on does not', () => {
  const goingOn = { from: NOW - 10, to: NOW + 20 };
  const working = planned(piece('a', [bench('1', 30, { done: goingOn })]), piece('b', [bench('2', 30)]));
  expect(working.startOf('2')).toBe('2026-03-02 09:20');
  const waiting = planned(
    piece('a', [{ ...wait('1', 30), done: goingOn }, bench('3', 30)]),
    piece('b', [bench('2', 30)]),
  );
  expect(waiting.startOf('2')).toBe('2026-03-02 09:00');
  expect(waiting.startOf('3')).toBe('2026-03-02 09:30');
});

test('only coats count among the coats a day: neither other work that is done nor other work to come', () => {
  const done = { from: NOW - 60, to: NOW - 50 };
  const steps = [bench('1', 10, { done }), coat('2'), bench('3', 10), wait('w', 30), coat('4')];
  const plan = planned(piece('a', steps, { coatsADay: 1 }));
  expect(plan.startOf('2')).toBe('2026-03-02 09:00');
  expect(plan.startOf('3')).toBe('2026-03-02 09:15');
  expect(plan.startOf('4')).toBe('2026-03-03 09:00');
});
