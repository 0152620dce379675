import type { Signal } from '@preact/signals';
import { useId } from 'preact/hooks';
import { Problem } from '../../parts/choice';

/** A time of day. */
export function ClockField({
  label,
  value,
  problem,
}: {
  readonly label: string;
  readonly value: Signal<string>;
  readonly problem: string | undefined;
}) {
  const id = useId();
  return (
    <div class="field">
      <label for={id}>{label}</label>
      <div class="entry">
        <input
          id={id}
          type="time"
          value={value.value}
          aria-invalid={problem !== undefined}
          aria-describedby={`${id}-problem`}
          onInput={(event) => {
            value.value = event.currentTarget.value;
          }}
        />
      </div>
      <Problem id={`${id}-problem`} text={problem} />
    </div>
  );
}
