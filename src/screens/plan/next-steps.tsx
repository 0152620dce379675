import { Row } from '../../parts/blocks/row';
import { linkTo } from '../../parts/frame/route';
import { toInstantMs } from '../../planner/local-day';
import type { Bound, Plan, PlannedStep } from '../../planner/plan';
import { boundWords, stepName } from '../../planner/say';
import { PIECE_PLAN, PLAN_WORDS } from '../../words/plan/plan';
import { startWords } from './planned-time';
import { useNames } from './use-plan';

const OPEN = 3;
const MOST_SHOWN = 8;

/** The next things to do, in the order in which they come. */
export function NextSteps({ plan }: { readonly plan: Plan }) {
  const names = useNames();
  const coming = plan.steps
    .filter(({ kind, isDone }) => !isDone && (kind === 'work' || kind === 'gate'))
    .sort((one, other) => one.start - other.start)
    .slice(0, MOST_SHOWN);
  if (coming.length === 0) return <p class="quiet">{PLAN_WORDS.nothingNext}</p>;
  const rows = (some: readonly PlannedStep[]) => (
    <ul class="rows">
      {some.map((planned) => (
        <Row
          key={planned.stepId}
          href={linkTo('plan', planned.pieceId)}
          title={`${stepName(planned.step)}: ${names.piece(planned.pieceId)}`}
          face={
            <span class="when-face digits">{startWords(planned, plan.steps, toInstantMs(plan.now))}</span>
          }
        >
          <p class="quiet">{boundWords(plainBound(planned, plan.steps), names)}</p>
        </Row>
      ))}
    </ul>
  );
  return (
    <>
      {rows(coming.slice(0, OPEN))}
      {coming.length > OPEN && (
        <details class="folded">
          <summary>{PIECE_PLAN.moreSteps(coming.length - OPEN)}</summary>
          {rows(coming.slice(OPEN))}
        </details>
      )}
    </>
  );
}

/** What really holds a step up: a hold that nothing holds, or a window that is open, passes on what it waited for itself. */
function plainBound({ bound }: PlannedStep, steps: readonly PlannedStep[]): Bound {
  if (bound.by !== 'step') return bound;
  const before = steps.find(({ stepId }) => stepId === bound.stepId);
  const isEmpty = before !== undefined && before.kind === 'hold' && before.start === before.end;
  return isEmpty ? plainBound(before, steps) : bound;
}
