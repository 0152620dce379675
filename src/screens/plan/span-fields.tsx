import { DateField } from '../../parts/date-field';
import { HOURS_WORDS } from '../../words/plan';
import { isSpanWhole, type SpanDraft } from './hours-draft';

interface SpanFieldsProps {
  readonly from: string;
  readonly to: string;
  readonly span: SpanDraft;
  readonly onSpan: (span: SpanDraft) => void;
  readonly isTried: boolean;
}

/** From and to by the clock, beside each other. */
export function SpanFields({ from, to, span, onSpan, isTried }: SpanFieldsProps) {
  const problem = isTried && !isSpanWhole(span) ? HOURS_WORDS.missing : undefined;
  return (
    <div class="two-fields">
      <DateField
        kind="time"
        label={from}
        day={span.open}
        onDay={(open) => onSpan({ ...span, open })}
        problem={problem}
      />
      <DateField kind="time" label={to} day={span.close} onDay={(close) => onSpan({ ...span, close })} />
    </div>
  );
}
