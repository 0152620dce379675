import type { PiecePlan } from '../../../logbook/fold/shop/plans';
import { Button } from '../../../parts/blocks/button';
import { Icon, type IconName } from '../../../parts/blocks/icons';
import { JudgedLine } from '../../../parts/verdict/judged-line';
import { toInstantMs } from '../../../planner/local-day';
import type { PlannedStep } from '../../../planner/plan';
import { boundWords, stepName } from '../../../planner/say';
import type { Band, WaitStep } from '../../../planner/step';
import { withoutStep, withStep, withStepMoved } from '../../../shop/plan/edit-plan';
import { MINUTE_MS } from '../../../units';
import type { Verdict } from '../../../verdicts/verdict';
import { PIECE_PLAN } from '../../../words/plan/plan';
import { spanWords, whenWords } from '../../../words/times';
import { planTimes } from '../planned-time';
import { useNames } from '../use-plan';
import { StepActs } from './step-acts';
import { StepForm } from './step-form';
import { useEditPlan } from './use-edit-plan';

interface StepItemProps {
  readonly plan: PiecePlan;
  readonly planned: PlannedStep;
  /** All steps of its piece, in their order. */
  readonly steps: readonly PlannedStep[];
  readonly isNext: boolean;
  readonly isEstimated: boolean;
  /** What the judge says of it, where it is the first work to do. */
  readonly verdict: Verdict | undefined;
  readonly now: number;
}

const STATES = {
  done: { icon: 'check', word: PIECE_PLAN.done, kind: 'quiet' },
  over: { icon: 'next', word: PIECE_PLAN.skipped, kind: 'quiet' },
  next: { icon: 'ready', word: PIECE_PLAN.next, kind: 'ready' },
  planned: { icon: 'waiting', word: PIECE_PLAN.planned, kind: 'wait' },
} as const satisfies Record<string, { icon: IconName; word: string; kind: string }>;

/** One step of a plan: when it is, why then, and everything that can be changed of it. */
export function StepItem({ plan, planned, steps, isNext, isEstimated, verdict, now }: StepItemProps) {
  const names = useNames();
  const { step, stepId, isDone, bound, closes } = planned;
  const nowMs = toInstantMs(now);
  const own = plan.steps.find(({ id }) => id === stepId);
  const name = stepName(step);
  const isPassedOver = isDone && !step.done;
  const state = STATES[isPassedOver ? 'over' : isDone ? 'done' : isNext ? 'next' : 'planned'];
  const isRunning = step.kind === 'wait' && bound.by === 'now'; // nobody chooses when it begins
  const says = (
    <div class="plan-step-says">
      <p class="plan-step-name">
        <Icon name={state.icon} />
        <span class="heard">{state.word}: </span>
        <strong>{name}</strong>
      </p>
      <p class="digits">{isPassedOver ? PIECE_PLAN.passedOver : planTimes(planned, steps, nowMs)}</p>
      {step.kind === 'wait' && !isDone && (
        <p class="quiet">
          {bandText(step.minutes)}, {PIECE_PLAN.origin[originOf(own, step, isEstimated)]}
        </p>
      )}
      {closes !== undefined && !isDone && (
        <p class="digits">{PIECE_PLAN.closes(whenWords(toInstantMs(closes), nowMs))}</p>
      )}
      {!isDone && bound.by !== 'step' && bound.by !== 'done' && !isRunning && (
        <p class="quiet">{boundWords(bound, names)}</p>
      )}
      <JudgedLine verdict={verdict} />
      {!own && <p class="quiet">{PIECE_PLAN.byApp}</p>}
    </div>
  );
  return (
    <li class="plan-step" data-state={isDone ? 'done' : isNext ? 'next' : 'planned'}>
      {own && !isDone ? (
        <details class="step-open">
          <summary>
            {says}
            <span class="plan-change">
              {PIECE_PLAN.change}
              <span class="heard"> {name}</span>
            </span>
          </summary>
          <Change {...{ plan, planned, isEstimated, name }} />
        </details>
      ) : (
        says
      )}
      {isNext && own && <StepActs piece={plan.piece} step={step} />}
    </li>
  );
}

const bandText = ({ earliest, likely, late }: Band): string =>
  PIECE_PLAN.takes(
    spanWords(likely * MINUTE_MS),
    spanWords(earliest * MINUTE_MS),
    spanWords(late * MINUTE_MS),
  );

function originOf(own: PiecePlan['steps'][number] | undefined, { ends }: WaitStep, isEstimated: boolean) {
  if (own?.kind === 'wait' && own.isOwn) return 'own';
  if (isEstimated) return 'estimate';
  return ends ? 'logged' : 'practice';
}

function Change({
  plan,
  planned: { step, stepId },
  isEstimated,
  name,
}: Pick<StepItemProps, 'plan' | 'planned' | 'isEstimated'> & { readonly name: string }) {
  const keep = useEditPlan(plan);
  const own = plan.steps.find(({ id }) => id === stepId);
  if (!own) return null;
  const shown = step.kind === 'wait' && isEstimated ? step.minutes : undefined;
  return (
    <div class="stack">
      <StepForm
        key={JSON.stringify(own)}
        step={own}
        shown={own.kind === 'wait' && own.isOwn ? undefined : shown}
        isEstimated={isEstimated}
        onSave={(changed) => keep({ steps: withStep(plan.steps, changed) }, PIECE_PLAN.saved(name))}
      />
      <div class="acts">
        <Button
          icon="up"
          onClick={() => void keep({ steps: withStepMoved(plan.steps, stepId, -1) }, PIECE_PLAN.saved(name))}
        >
          {PIECE_PLAN.moveUp}
        </Button>
        <Button
          icon="down"
          onClick={() => void keep({ steps: withStepMoved(plan.steps, stepId, 1) }, PIECE_PLAN.saved(name))}
        >
          {PIECE_PLAN.moveDown}
        </Button>
        <Button
          kind="danger"
          icon="remove"
          onClick={() => void keep({ steps: withoutStep(plan.steps, stepId) }, PIECE_PLAN.removed(name))}
        >
          {PIECE_PLAN.remove}
        </Button>
      </div>
    </div>
  );
}
