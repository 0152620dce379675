import { expect, test } from 'vitest';
import type { PlanStep } from '../../../src/logbook/kinds/shop/plan';
import { withStepMoved } from '../../../src/shop/plan/edit-plan';

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
