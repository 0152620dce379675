import type { PlanStep } from '../../logbook/kinds/shop/plan';

type Steps = readonly PlanStep[];

/** The steps with one replaced by another of the same id. */
export const withStep = (steps: Steps, changed: PlanStep): Steps =>
  steps.map((step) => (step.id === changed.id ? changed : step));

/** The steps without one. */
export const withoutStep = (steps: Steps, id: string): Steps => steps.filter((step) => step.id !== id);

/** The steps with one more after another, or at the very beginning. */
export function withStepAfter(steps: Steps, id: string | undefined, added: PlanStep): Steps {
  const index = steps.findIndex((step) => step.id === id);
  return [...steps.slice(0, index + 1), added, ...steps.slice(index + 1)];
}

/** The steps with one moved by so many places; at an end it stays where it is. */
export function withStepMoved(steps: Steps, id: string, by: -1 | 1): Steps {
  const index = steps.findIndex((step) => step.id === id);
  const other = steps[index + by];
  const step = steps[index];
  if (!step || !other) return steps;
  return steps.map((one, at) => (at === index ? other : at === index + by ? step : one));
}
