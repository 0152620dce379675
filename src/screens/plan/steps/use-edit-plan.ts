import { planPiece } from '../../../actions/plan/plan-piece';
import type { PiecePlan } from '../../../logbook/fold/shop/plans';
import type { PlanStep } from '../../../logbook/kinds/shop/plan';
import { sayOutcome } from '../../../parts/frame/say-refused';
import { useShop } from '../../../parts/frame/shop-context';
import { undoWithToast } from '../../../parts/frame/undo';
import { PLAN_WORDS } from '../../../words/plan/plan';

/** Changes the plan of a piece, one thing at a time, each with its undo. */
export function useEditPlan(plan: PiecePlan) {
  const { needs, actions } = useShop();
  return async function keep(
    change: { readonly steps?: readonly PlanStep[]; readonly coatsADay?: number },
    said: string,
  ): Promise<void> {
    const { piece, job, since } = plan;
    const kept = await planPiece(needs, {
      piece,
      coatsADay: change.coatsADay ?? plan.coatsADay,
      steps: change.steps ?? plan.steps,
      ...(job && { job }),
      ...(since !== undefined && { since }),
    });
    sayOutcome(kept, ({ id }) => ({
      text: said,
      onUndo: () => void undoWithToast(actions, id, PLAN_WORDS.title),
    }));
  };
}
