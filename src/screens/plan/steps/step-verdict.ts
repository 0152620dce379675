import { actOf } from '../../../actions/verdicts/facts-of';
import { verdictFor } from '../../../actions/verdicts/verdict-for';
import type { PlannedStep } from '../../../planner/plan';
import type { Verdict } from '../../../verdicts/verdict';

/** The first work of a plan that the judge speaks of, with the verdict on it; what comes after it is a film that is not there yet. */
export function firstJudged(
  open: Parameters<typeof verdictFor>[0],
  steps: readonly PlannedStep[],
): { readonly stepId: string; readonly verdict: Verdict | undefined } | undefined {
  for (const { step, stepId, pieceId, isDone } of steps) {
    const act = !isDone && step.kind === 'work' ? actOf(step.task) : undefined;
    if (act !== undefined) return { stepId, verdict: verdictFor(open, pieceId, { act }) };
  }
  return undefined;
}
