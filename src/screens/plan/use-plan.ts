import { type FollowedPlan, followPlan } from '../../actions/plan/follow-plan';
import type { Piece } from '../../logbook/fold/piece/pieces';
import { route } from '../../parts/frame/route';
import { useShop } from '../../parts/frame/shop-context';
import { type Names, stepName } from '../../planner/say';
import type { Step } from '../../planner/step';

/** The plan of the shop on screen. */
export const usePlan = (): FollowedPlan => followPlan(useShop());

/** Names of steps and pieces, for sentences about the plan. */
export function useNames(): Names {
  const { pieces } = useShop().shop.value;
  const { bench, plan } = usePlan().planned.value;
  const steps = new Map<string, Step>(
    [
      ...bench.pieces.flatMap((piece) => piece.steps),
      ...(plan.ok ? plan.value.steps.map(({ step }) => step) : []),
    ].map((step) => [step.id, step]),
  );
  return {
    step: (id) => {
      const step = steps.get(id);
      return step ? stepName(step) : '';
    },
    piece: (id) => pieces.get(id)?.name ?? '',
  };
}

/** The piece that the address names. Shown only where there is one. */
export function usePlannedPiece(): Piece {
  const [id = ''] = route.value.rest;
  const piece = useShop().shop.value.pieces.get(id);
  if (!piece) throw new Error('A page of a plan was shown without its piece.');
  return piece;
}
