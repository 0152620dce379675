import type { Shop } from '../../logbook/fold/fold';
import type { Ground, Piece } from '../../logbook/fold/piece/pieces';
import type { PiecePlan } from '../../logbook/fold/shop/plans';
import { BESIDE_WAITS, SEALER_DRIES } from '../../planner/starting-plans/beside';
import type { Band, Task, WaitFor } from '../../planner/step';
import { MINUTE_MS } from '../../units';
import type { BandMs } from '../../words/times';

type Sort = Ground['ground'];

/** What is done with each, and what is waited for after it. */
export const GROUND_STEPS: Readonly<Record<Sort, { readonly task: Task; readonly until: WaitFor }>> = {
  'pore-filler': { task: 'pore-fill', until: 'filler-dry' },
  'filler-paste': { task: 'filler-paste', until: 'paste-soft' },
  'grain-sealer': { task: 'grain-seal', until: 'rest' },
  glue: { task: 'glue', until: 'clamped' },
};

/** An application of something beside the finish, with the wait that it has. */
export interface GroundOn {
  readonly id: string;
  readonly atMs: number;
  readonly ground: Sort;
  /** Undefined where it was marked as a step of the plan, and no more said. */
  readonly logged: Ground | undefined;
  readonly until: BandMs;
  /** Its own sheet says so, or the plan in the person's own words; else common practice. */
  readonly isSaid: boolean;
}

/** What was filled, sealed and glued on a piece, in time order: as it was logged, or marked as done in its plan. */
export function groundsOn(
  { id: pieceId, grounds }: Pick<Piece, 'id' | 'grounds'>,
  { plans, stepMarks }: Pick<Shop, 'plans' | 'stepMarks'>,
): readonly GroundOn[] {
  const plan = plans.get(pieceId);
  const logged = grounds.map((one) => groundOn(one, one.ground, plan, one));
  const marked = plan
    ? stepMarks.flatMap((mark) => {
        const step = plan.steps.find(({ id }) => id === mark.step);
        const sort = step?.kind === 'work' && mark.as === 'done' ? sortOf(step.task) : undefined;
        return sort ? [groundOn(mark, sort, plan)] : [];
      })
    : [];
  return [...logged, ...marked].sort((one, other) => one.atMs - other.atMs);
}

const sortOf = (task: Task): Sort | undefined =>
  (Object.keys(GROUND_STEPS) as Sort[]).find((sort) => GROUND_STEPS[sort].task === task);

function groundOn(
  { id, atMs }: { readonly id: string; readonly atMs: number },
  ground: Sort,
  plan: PiecePlan | undefined,
  logged?: Ground,
): GroundOn {
  const { until } = GROUND_STEPS[ground];
  const said = logged?.waits && logged.waits.si * 1000;
  const own = said === undefined ? ownWait(plan, until) : undefined;
  const band = (ms: (of: Band) => number): number => atMs + (said ?? ms(own ?? usualWait(until)) * MINUTE_MS);
  return {
    id,
    atMs,
    ground,
    logged,
    until: {
      earliestMs: band(({ earliest }) => earliest),
      likelyMs: band(({ likely }) => likely),
      lateMs: band(({ late }) => late),
    },
    isSaid: said !== undefined || own !== undefined,
  };
}

const usualWait = (until: WaitFor): Band => BESIDE_WAITS[until] ?? SEALER_DRIES;

/** The wait that the person set in the plan; a rest may be for anything. */
function ownWait(plan: PiecePlan | undefined, until: WaitFor): Band | undefined {
  const step = plan?.steps.find(
    (one) => one.kind === 'wait' && one.until === until && one.isOwn === true && until !== 'rest',
  );
  return step?.kind === 'wait' ? step.minutes : undefined;
}
