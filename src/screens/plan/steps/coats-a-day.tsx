import { useSignal } from '@preact/signals';
import { parseNumber } from '../../../logbook/as-typed';
import type { PiecePlan } from '../../../logbook/fold/shop/plans';
import { COUNTS } from '../../../logbook/limits';
import { Button } from '../../../parts/blocks/button';
import { NumberField } from '../../../parts/fields/number-field';
import { PIECE_PLAN } from '../../../words/plan/plan';
import { useEditPlan } from './use-edit-plan';

/** How many coats a day at most, as the person sets it. */
export function CoatsADay({ plan }: { readonly plan: PiecePlan }) {
  const keep = useEditPlan(plan);
  const text = useSignal(String(plan.coatsADay));
  const count = parseNumber(text.value);
  const { lowest, highest } = COUNTS.coatsADay;
  const isCount = count !== undefined && Number.isInteger(count) && count >= lowest && count <= highest;
  const isChanged = isCount && count !== plan.coatsADay;

  function save(event: Event): void {
    event.preventDefault();
    if (isChanged) void keep({ coatsADay: count }, `${PIECE_PLAN.coatsADay}: ${count}.`);
  }
  return (
    <form class="stack" onSubmit={save} noValidate>
      <NumberField
        label={PIECE_PLAN.coatsADay}
        text={text.value}
        onText={(typed) => {
          text.value = typed;
        }}
        hint={PIECE_PLAN.coatsHint}
        problem={isCount || text.value === '' ? undefined : PIECE_PLAN.coatsProblem}
      />
      {isChanged && (
        <div class="acts">
          <Button icon="check" isSubmit>
            {PIECE_PLAN.save}
          </Button>
        </div>
      )}
    </form>
  );
}
