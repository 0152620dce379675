import type { PlanStep } from '../../logbook/kinds/shop/plan';
import type { Step } from '../../planner/step';

/** A step of a starting plan as an entry holds it: without what was logged of it, for that is in the logbook already. */
export function asPlanned(step: Step): PlanStep {
  const { done: _, ...plain } = step;
  if (plain.kind === 'gate') {
    const { failedAt: __, ...gate } = plain;
    return gate;
  }
  if (plain.kind !== 'work') return plain;
  const { notBefore: __, ...work } = plain;
  return work;
}
