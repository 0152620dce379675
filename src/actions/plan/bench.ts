import type { Shop } from '../../logbook/fold/fold';
import type { Piece } from '../../logbook/fold/piece/pieces';
import type { PiecePlan } from '../../logbook/fold/shop/plans';
import { SPRAYING } from '../../planner/bench-times';
import { toMinute } from '../../planner/local-day';
import type { Bench, Piece as PlannerPiece, Step } from '../../planner/step';
import { planSteps } from '../../shop/plan/plan-steps';
import { workingTimes } from '../../shop/plan/working-times';
import { groundsOn } from '../../shop/stack/grounds';
import { DAY_MS } from '../../units';
import type { Facts } from '../../verdicts/facts';
import { holdsOf, verdictOn } from '../../verdicts/verdict';
import type { Outlook, PieceId } from '../outlook/outlook';
import { factsOf } from '../verdicts/facts-of';
import { groundWaits } from './ground-waits';
import { asksTheModel, estimatedWaits } from './waits';

export interface BenchNow {
  readonly shop: Shop;
  readonly outlooks: ReadonlyMap<PieceId, Outlook>;
  readonly nowMs: number;
  readonly zone: string;
}

/** Coats of longer ago leave no rags to think of (judgement, no source). */
const RECENT_MS = 8 * DAY_MS;

/** The bench as the planner reads it: every open piece with a plan, and what was laid lately on those without one. */
export function benchNow({ shop, outlooks, nowMs, zone }: BenchNow): Bench {
  const pieces = [...shop.pieces.values()].filter(({ closedMs }) => closedMs === undefined);
  return {
    now: toMinute(nowMs),
    working: workingTimes(shop, nowMs, zone),
    pieces: pieces.flatMap((piece) => {
      const plan = shop.plans.get(piece.id);
      if (!plan) return unplanned(piece, nowMs);
      return [planned(piece, plan, { shop, outlooks, nowMs, zone })];
    }),
  };
}

function planned(piece: Piece, plan: PiecePlan, { shop, outlooks, nowMs }: BenchNow): PlannerPiece {
  const outlook = outlooks.get(piece.id);
  const facts = factsOf({ shop, piece, outlook, nowMs });
  const own = new Set(plan.steps.flatMap((step) => (step.kind === 'wait' && step.isOwn ? [step.id] : [])));
  const isOwn = (stepId: string): boolean => own.has(stepId);
  const promisedMs = shop.promises.get(piece.id);
  const asked = groundWaits(planSteps(plan, piece, shop), groundsOn(piece, shop), nowMs);
  const steps = estimatedWaits(asked, { piece, outlook, moments: facts.moments, isOwn, nowMs });
  return {
    id: piece.id,
    coatsADay: plan.coatsADay,
    steps,
    ...(asksTheModel(asked, isOwn) && awaits(facts)),
    ...(holdsOf(verdictOn({ act: 'promise' }, facts)).length > 0 && { isHeld: true }),
    ...(promisedMs !== undefined && { promised: toMinute(promisedMs) }),
  };
}

const awaits = ({ clock }: Facts): Partial<PlannerPiece> => ({
  ...(clock === 'failed' && { isLeftOut: true }),
  ...(clock === 'computing' && { isAwaited: true }),
});

/** A piece without a plan has only its past: its rags are thought of all the same. */
function unplanned({ id, coats }: Piece, nowMs: number): PlannerPiece[] {
  const recent = coats.filter(({ atMs }) => nowMs - atMs < RECENT_MS);
  if (recent.length === 0) return [];
  const steps = recent.map(({ id: coatId, how, atMs }): Step => {
    const to = toMinute(atMs);
    const isSprayed = how === 'spray' || how === 'flash';
    return {
      kind: 'work',
      id: coatId,
      task: how === 'flash' ? 'flash-coat' : 'coat',
      place: isSprayed ? 'booth' : 'bench',
      minutes: SPRAYING.minutes,
      ...(isSprayed && { moveMinutes: SPRAYING.moveMinutes }),
      done: { from: to - SPRAYING.minutes, to },
    };
  });
  return [{ id, coatsADay: 1, steps }];
}
