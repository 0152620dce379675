import { expect, test } from 'vitest';
import type { PlanStep } from '../../../src/logbook/kinds/shop/plan';
import { withoutStep, withStep, withStepAfter, withStepMoved } from '../../../src/shop/plan/edit-plan';

const steps = ['a', 'b', 'c'].map(
  (id) => ({ kind: 'hold', id, against: 'blush' }) as const satisfies PlanStep,
);

test.each([
  { id: 'a', by: 1, order: 'bac' },
  { id: 'c', by: -1, order: 'acb' },
  // At an end it stays where it is, and what is not there moves nothing.
  { id: 'a', by: -1, order: 'abc' },
  { id: 'c', by: 1, order: 'abc' },
  { id: 'z', by: 1, order: 'abc' },
] as const)('$id moved by $by gives $order', ({ id, by, order }) => {
  expect(
    withStepMoved(steps, id, by)
      .map((step) => step.id)
      .join(''),
  ).toBe(order);
});

const order = (some: readonly PlanStep[]): string => some.map(({ id }) => id).join('');

test('one step is changed and no other', () => {
  const changed: PlanStep = { kind: 'hold', id: 'b', against: 'cold' };
  expect(withStep(steps, changed)).toEqual([steps[0], changed, steps[2]]);
});

test('one step is taken out and no other', () => {
  expect(order(withoutStep(steps, 'b'))).toBe('ac');
  expect(order(withoutStep(steps, 'z'))).toBe('abc');
});

test.each([
  { after: 'a', is: 'anbc' },
  { after: 'c', is: 'abcn' },
  { after: undefined, is: 'nabc' },
])('a new step stands after $after: $is', ({ after, is }) => {
  expect(order(withStepAfter(steps, after, { kind: 'hold', id: 'n', against: 'cold' }))).toBe(is);
});
