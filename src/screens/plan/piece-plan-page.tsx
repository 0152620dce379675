import { hasEstimate } from '../../actions/plan/waits';
import type { PiecePlan } from '../../logbook/fold/shop/plans';
import { LinkButton } from '../../parts/blocks/button';
import { Fold } from '../../parts/blocks/fold';
import { Page, Section } from '../../parts/blocks/page';
import { linkTo } from '../../parts/frame/route';
import { useShop } from '../../parts/frame/shop-context';
import type { PlannedStep } from '../../planner/plan';
import { PIECE_PLAN, PLAN_WORDS } from '../../words/plan/plan';
import { Faults } from './faults';
import { LeftOut } from './left-out';
import { Moved } from './moved';
import { PromiseSection } from './promise/promise-section';
import { Ready } from './ready';
import { AddStep } from './steps/add-step';
import { CoatsADay } from './steps/coats-a-day';
import { StepItem } from './steps/step-item';
import { firstJudged } from './steps/step-verdict';
import { usePlan, usePlannedPiece } from './use-plan';

/** The next steps stand open; the others are folded. */
const OPEN_STEPS = 5;

/** The plan of one piece: when it is ready, what was promised, and its steps, freely changed. */
export function PiecePlanPage() {
  const { shop } = useShop();
  const piece = usePlannedPiece();
  const plan = shop.value.plans.get(piece.id);
  if (!plan) return null;
  return (
    <Page
      title={PIECE_PLAN.title(piece.name)}
      backTo={linkTo('plan')}
      backLabel={PLAN_WORDS.toPlan}
      columns="two"
    >
      <div class="stack">
        <LeftOut pieceId={piece.id} />
        <Moved pieceId={piece.id} />
        <Ready piece={piece} />
        <div class="folds">
          <PromiseSection piece={piece} />
          <Fold title={PIECE_PLAN.coatsADay} brief={String(plan.coatsADay)}>
            <CoatsADay plan={plan} />
          </Fold>
        </div>
      </div>
      <Section title={PIECE_PLAN.steps}>
        <Steps plan={plan} />
        <AddStep plan={plan} />
        <div class="acts">
          <LinkButton icon="bench" href={linkTo('piece', piece.id)}>
            {PIECE_PLAN.toPiece}
          </LinkButton>
          <LinkButton icon="undo" href={linkTo('plan', piece.id, 'start')}>
            {PIECE_PLAN.job}
          </LinkButton>
        </div>
      </Section>
    </Page>
  );
}

function Steps({ plan }: { readonly plan: PiecePlan }) {
  const open = useShop();
  const piece = usePlannedPiece();
  const { bench, plan: made } = usePlan().planned.value;
  const outlook = open.outlooks.value.get(piece.id);
  const own = bench.pieces.find(({ id }) => id === piece.id);
  const steps =
    made.ok && !own?.isLeftOut
      ? made.value.steps.filter(({ pieceId }) => pieceId === piece.id)
      : withoutTimes(own?.steps ?? [], piece.id);
  const next = steps.find(({ isDone, kind }) => !isDone && kind !== 'hold' && kind !== 'window');
  const judged = firstJudged(open, steps);
  const items = (some: readonly PlannedStep[]) =>
    some.map((planned) => (
      <StepItem
        key={planned.stepId}
        {...{ plan, planned, steps }}
        isNext={made.ok && planned === next}
        verdict={planned.stepId === judged?.stepId ? judged.verdict : undefined}
        isEstimated={hasEstimate(
          planned.step,
          steps.map(({ step }) => step),
          piece,
          outlook,
        )}
        now={bench.now}
      />
    ));
  const toCome = steps.filter(({ isDone }) => !isDone);
  const done = steps.filter(({ isDone }) => isDone);
  const over = done.filter(({ step }) => !step.done).length;
  return (
    <>
      {!made.ok && <Faults faults={made.failure} />}
      {done.length > 0 && (
        <details class="folded">
          <summary>{PIECE_PLAN.doneSteps(done.length - over, over)}</summary>
          <ol class="plan-steps">{items(done)}</ol>
        </details>
      )}
      <ol class="plan-steps">{items(toCome.slice(0, OPEN_STEPS))}</ol>
      {toCome.length > OPEN_STEPS && (
        <details class="folded">
          <summary>{PIECE_PLAN.moreSteps(toCome.length - OPEN_STEPS)}</summary>
          <ol class="plan-steps">{items(toCome.slice(OPEN_STEPS))}</ol>
        </details>
      )}
    </>
  );
}

/** Where there is no plan the steps can be mended all the same. */
const withoutTimes = (steps: readonly PlannedStep['step'][], pieceId: string): PlannedStep[] =>
  steps.map((step) => ({
    pieceId,
    stepId: step.id,
    kind: step.kind,
    step,
    start: step.done?.from ?? Number.NaN,
    end: step.done?.to ?? Number.NaN,
    isDone: step.done !== undefined,
    bound: { by: 'done' },
  }));
