import { type Signal, useSignal } from '@preact/signals';
import { overrideHolds } from '../../actions/verdicts/override-hold';
import { COUNTS } from '../../logbook/limits';
import { holdsOf, type Verdict } from '../../verdicts/verdict';
import { OVERRIDE_WORDS as WORDS } from '../../words/verdicts/reasons';
import { Button } from '../blocks/button';
import { Refusal } from '../fields/form/refusal';
import { useForm } from '../fields/form/use-form';
import { TextField } from '../fields/text-field';
import { useShop } from '../frame/shop-context';
import { showToast } from '../frame/toast';

/** Whether what was written can be kept as a reason; nothing at all may be written too. */
export const isReasonWhole = (text: string): boolean =>
  text.trim() === '' || text.trim().length >= COUNTS.reason.lowest;

interface WhyAnywayProps {
  readonly verdict: Verdict | undefined;
  readonly reason: Signal<string>;
  readonly isTried: boolean;
}

/** Asks, in the form of an act that is held, why it is done all the same; no answer is taken too. */
export function WhyAnyway({ verdict, reason, isTried }: WhyAnywayProps) {
  if (!verdict || holdsOf(verdict).length === 0) return null;
  return (
    <TextField
      isLong
      label={WORDS.why}
      hint={WORDS.whyHint}
      text={reason.value}
      onText={(text) => {
        reason.value = text;
      }}
      problem={isTried && !isReasonWhole(reason.value) ? WORDS.tooShort(COUNTS.reason.lowest) : undefined}
    />
  );
}

/** Sets what holds an act aside, in writing, from the page that tells of it. */
export function SetAside({
  pieceId,
  verdict,
}: {
  readonly pieceId: string;
  readonly verdict: Verdict | undefined;
}) {
  const { needs } = useShop();
  const form = useForm();
  const reason = useSignal('');
  const holds = verdict ? holdsOf(verdict).filter(({ mayBeOverridden }) => mayBeOverridden) : [];
  if (!verdict || holds.length === 0) return null;
  const isWhole = reason.value.trim() !== '' && isReasonWhole(reason.value);
  const { act } = verdict;

  async function send(event: Event): Promise<void> {
    event.preventDefault();
    const said = { piece: pieceId, act, reason: reason.value };
    const done = await form.send(isWhole, async () => {
      const kept = await overrideHolds(needs, said, holds);
      return kept.ok ? { ok: true, value: true } : kept;
    });
    if (done) showToast({ text: WORDS.logged });
  }

  return (
    <details class="folded">
      <summary>{WORDS.open}</summary>
      <form class="stack" onSubmit={(event) => void send(event)} noValidate>
        <p class="quiet">{WORDS.text}</p>
        <TextField
          isLong
          label={WORDS.reason}
          text={reason.value}
          onText={(text) => {
            reason.value = text;
          }}
          problem={form.isTried.value && !isWhole ? WORDS.tooShort(COUNTS.reason.lowest) : undefined}
        />
        <Refusal refused={form.refused.value} />
        <div class="acts">
          <Button icon="note" isSubmit>
            {WORDS.log}
          </Button>
        </div>
      </form>
    </details>
  );
}
