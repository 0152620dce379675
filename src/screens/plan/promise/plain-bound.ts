import type { Bound, PlannedStep } from '../../../planner/plan';

/** What really holds a step up: a hold that nothing holds, or a window that is open, passes on what it waited for itself. */
export function plainBound({ bound }: PlannedStep, steps: readonly PlannedStep[]): Bound {
  if (bound.by !== 'step') return bound;
  const before = steps.find(({ stepId }) => stepId === bound.stepId);
  const isEmpty = before !== undefined && before.kind === 'hold' && before.start === before.end;
  return isEmpty ? plainBound(before, steps) : bound;
}
