import { useSignal } from '@preact/signals';
import type { FinishName } from '../../../estimator/finishes/traits';
import type { Shop } from '../../../logbook/fold/fold';
import type { PiecePlan } from '../../../logbook/fold/shop/plans';
import { Button } from '../../../parts/blocks/button';
import { SelectField } from '../../../parts/fields/select-field';
import { useShop } from '../../../parts/frame/shop-context';
import { withStepAfter } from '../../../shop/plan/edit-plan';
import { PIECE_PLAN } from '../../../words/plan/plan';
import { useNames } from '../use-plan';
import { newStep, newSteps } from './new-step';
import { useEditPlan } from './use-edit-plan';

const FINISH_OF_JOB: Readonly<Record<string, FinishName>> = {
  waterborne: 'waterborne',
  shellac: 'shellac',
  catalysed: 'conversion',
};

/** The finish that a plan is for: of the newest coat, else of its job. */
function planFinish({ piece, job }: PiecePlan, { pieces, jars }: Shop): FinishName | undefined {
  const coat = pieces.get(piece)?.coats.at(-1);
  return (coat && jars.get(coat.jar)?.product.finish) ?? FINISH_OF_JOB[job ?? ''];
}

const BEGINNING = 'beginning';

/** Puts a step into a plan, where it belongs. */
export function AddStep({ plan }: { readonly plan: PiecePlan }) {
  const { needs, shop } = useShop();
  const finish = planFinish(plan, shop.value);
  const offered = newSteps(finish);
  const keep = useEditPlan(plan);
  const names = useNames();
  const what = useSignal(offered[0]?.value ?? '');
  const after = useSignal(plan.steps.at(-1)?.id ?? BEGINNING);
  const places = [
    { value: BEGINNING, label: PIECE_PLAN.atBeginning },
    ...plan.steps.map(({ id }, index) => ({ value: id, label: `${index + 1}. ${names.step(id)}` })),
  ];

  function add(event: Event): void {
    event.preventDefault();
    const added = newStep(what.value, needs.newId(), finish);
    const label = offered.find(({ value }) => value === what.value)?.label ?? '';
    const isThere = places.some(({ value }) => value === after.value);
    void keep(
      { steps: withStepAfter(plan.steps, isThere ? after.value : undefined, added) },
      PIECE_PLAN.added(label),
    );
    after.value = added.id;
  }

  return (
    <details class="folded">
      <summary>{PIECE_PLAN.add}</summary>
      <form class="stack" onSubmit={add}>
        <SelectField
          label={PIECE_PLAN.addWhat}
          options={offered}
          value={what.value}
          onChange={(value) => {
            what.value = value;
          }}
        />
        <SelectField
          label={PIECE_PLAN.addAfter}
          options={places}
          value={after.value}
          onChange={(value) => {
            after.value = value;
          }}
        />
        <div class="acts">
          <Button icon="add" isSubmit>
            {PIECE_PLAN.addIt}
          </Button>
        </div>
      </form>
    </details>
  );
}
