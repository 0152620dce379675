import { DateField } from '../../../parts/fields/time/date-field';
import type { StretchDraft } from './hours-draft';

interface SpanFieldsProps {
  readonly from: string;
  readonly to: string;
  readonly span: StretchDraft;
  readonly onSpan: (span: StretchDraft) => void;
  readonly problem: string | undefined;
}

/** From and to by the clock, beside each other. */
export function SpanFields({ from, to, span: { open, close }, onSpan, problem }: SpanFieldsProps) {
  return (
    <div class="two-fields">
      <DateField
        kind="time"
        label={from}
        day={open}
        onDay={(changed) => onSpan({ open: changed, close })}
        problem={problem}
      />
      <DateField kind="time" label={to} day={close} onDay={(changed) => onSpan({ open, close: changed })} />
    </div>
  );
}
