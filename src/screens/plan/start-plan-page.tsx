import { useSignal } from '@preact/signals';
import { planPiece } from '../../actions/plan/plan-piece';
import { Page, Section } from '../../parts/blocks/page';
import { Choice } from '../../parts/fields/choice';
import { Send } from '../../parts/fields/form/form-fields';
import { useForm } from '../../parts/fields/form/use-form';
import { fromHere, linkTo } from '../../parts/frame/route';
import { useShop } from '../../parts/frame/shop-context';
import { showToast } from '../../parts/frame/toast';
import { undoWithToast } from '../../parts/frame/undo';
import { JOBS as ALL_JOBS, type Job } from '../../planner/starting-plans/job';
import { STARTING_PLANS, startPlan } from '../../planner/starting-plans/start-plan';
import { asPlanned } from '../../shop/plan/as-planned';
import { PLAN_WORDS, START_PLAN } from '../../words/plan/plan';
import { JOB_WORDS } from '../../words/plan/planner';
import { usePlannedPiece } from './use-plan';

const JOBS = ALL_JOBS.map((value) => {
  const { steps } = STARTING_PLANS[value];
  const coats = steps.filter(
    (step) => step.kind === 'work' && 'isCoat' in step && step.isCoat === true,
  ).length;
  return { value, label: JOB_WORDS[value], hint: START_PLAN.steps(steps.length, coats) };
});
const PORES = [
  { value: 'closed', ...START_PLAN.closed },
  { value: 'open', ...START_PLAN.open },
] as const;
const COUNTED = [
  { value: 'count', ...START_PLAN.count },
  { value: 'afresh', ...START_PLAN.afresh },
] as const;

/** Chooses the job that a plan starts from. */
export function StartPlanPage() {
  const { needs, actions } = useShop();
  const piece = usePlannedPiece();
  const form = useForm();
  const job = useSignal<Job | undefined>(undefined);
  const pores = useSignal<'closed' | 'open'>('closed');
  const isBare = piece.base === 'bare-wood' && piece.coats.length === 0;
  const counted = useSignal<'count' | 'afresh'>('count');

  async function start(event: Event): Promise<void> {
    const goOn = fromHere();
    event.preventDefault();
    const chosen = job.value ?? 'full-clear';
    const { coatsADay, steps } = startPlan(chosen, needs.newId, isBare && pores.value === 'open');
    const made = await form.send(job.value !== undefined, () =>
      planPiece(needs, {
        piece: piece.id,
        job: chosen,
        coatsADay,
        steps: steps.map(asPlanned),
        ...(counted.value === 'afresh' && { since: new Date(needs.now()).toISOString() }),
      }),
    );
    if (!made) return;
    showToast({
      text: START_PLAN.made,
      onUndo: () => void undoWithToast(actions, made.id, PLAN_WORDS.title),
    });
    goOn(linkTo('plan', piece.id));
  }

  return (
    <Page title={START_PLAN.title(piece.name)} backTo={linkTo('plan')} backLabel={PLAN_WORDS.toPlan}>
      <Section title={START_PLAN.job}>
        <p class="quiet">{START_PLAN.text}</p>
        <form class="stack wide-tiles" onSubmit={(event) => void start(event)} noValidate>
          <Choice
            label={START_PLAN.job}
            options={JOBS}
            value={job.value}
            onChange={(value) => {
              job.value = value;
            }}
            problem={form.isTried.value && job.value === undefined ? START_PLAN.choose : undefined}
          />
          {isBare && (
            <Choice
              label={START_PLAN.pores}
              options={PORES}
              value={pores.value}
              onChange={(value) => {
                pores.value = value;
              }}
            />
          )}
          {piece.coats.length > 0 && (
            <Choice
              label={START_PLAN.already(piece.coats.length)}
              options={COUNTED}
              value={counted.value}
              onChange={(value) => {
                counted.value = value;
              }}
            />
          )}
          <Send form={form} icon="plan">
            {START_PLAN.start}
          </Send>
        </form>
      </Section>
    </Page>
  );
}
