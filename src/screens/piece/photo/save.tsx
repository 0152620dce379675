import { Button } from '../../../parts/blocks/button';
import { Refusal } from '../../../parts/fields/form/refusal';
import type { Form } from '../../../parts/fields/form/use-form';

interface SaveProps {
  readonly form: Form;
  readonly onSave: () => Promise<void>;
  readonly disabled: boolean;
  readonly children: string;
}

/** The button that keeps what was drawn or marked, and why it was not kept. */
export const Save = ({ form, onSave, disabled, children }: SaveProps) => (
  <>
    <Refusal refused={form.refused.value} />
    <div class="acts">
      <Button kind="main" icon="check" isWide onClick={() => void onSave()} disabled={disabled}>
        {children}
      </Button>
    </div>
  </>
);
