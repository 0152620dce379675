import { useSignal } from '@preact/signals';
import type { PiecePlan } from '../../../logbook/fold/plans';
import { SelectField } from '../../../parts/fields/select-field';
import { Button } from '../../../parts/frame/button';
import { useShop } from '../../../parts/frame/shop-context';
import { withStepAfter } from '../../../shop/plan/edit-plan';
import { PIECE_PLAN } from '../../../words/plan/plan';
import { useNames } from '../use-plan';
import { NEW_STEPS, newStep } from './new-step';
import { useEditPlan } from './use-edit-plan';

const BEGINNING = 'beginning';

/** Puts a step into a plan, where it belongs. */
export function AddStep({ plan }: { readonly plan: PiecePlan }) {
  const { needs } = useShop();
  const keep = useEditPlan(plan);
  const names = useNames();
  const what = useSignal(NEW_STEPS[0]?.value ?? '');
  const after = useSignal(plan.steps.at(-1)?.id ?? BEGINNING);
  const places = [
    { value: BEGINNING, label: PIECE_PLAN.atBeginning },
    ...plan.steps.map(({ id }, index) => ({ value: id, label: `${index + 1}. ${names.step(id)}` })),
  ];

  function add(event: Event): void {
    event.preventDefault();
    const added = newStep(what.value, needs.newId());
    const label = NEW_STEPS.find(({ value }) => value === what.value)?.label ?? '';
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
          options={NEW_STEPS}
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
