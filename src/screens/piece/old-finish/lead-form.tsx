import { useSignal } from '@preact/signals';
import { testForLead } from '../../../actions/air/test-for-lead';
import type { OldFinishRecord } from '../../../logbook/fold/piece/old-finishes';
import type { Piece } from '../../../logbook/fold/piece/pieces';
import { LEAD_FINDINGS } from '../../../logbook/kinds/piece/spot-test';
import { COUNTS } from '../../../logbook/limits';
import { OneOf, Send, Words } from '../../../parts/fields/form/form-fields';
import { useForm } from '../../../parts/fields/form/use-form';
import { useShop } from '../../../parts/frame/shop-context';
import { showToast } from '../../../parts/frame/toast';
import { OLD_WORDS as WORDS } from '../../../words/piece/old-finish';

type Finding = (typeof LEAD_FINDINGS)[number];

interface LeadFormProps {
  readonly piece: Piece;
  /** The answer that stands; undefined while there is none. */
  readonly standing: NonNullable<OldFinishRecord['lead']>['finding'] | undefined;
}

const isTested = (finding: Finding | undefined): boolean => finding === 'none-found' || finding === 'found';

/** Logs an answer about lead and how it was come by; one that takes back what stands asks for the reason in writing. */
export function LeadForm({ piece, standing }: LeadFormProps) {
  const { needs } = useShop();
  const form = useForm();
  const finding = useSignal<Finding | undefined>(undefined);
  const method = useSignal('');
  const correction = useSignal('');
  const chosen = finding.value;
  const isCorrection =
    chosen === 'untested' || (standing === 'found' && chosen !== undefined && chosen !== 'found');
  const isReason = correction.value.trim().length >= COUNTS.reason.lowest;

  async function send(event: Event): Promise<void> {
    event.preventDefault();
    const hasMethod = !isTested(chosen) || method.value.trim() !== '';
    const isWhole = chosen !== undefined && hasMethod && (!isCorrection || isReason);
    const kept = await form.send(isWhole, () =>
      testForLead(needs, {
        piece: piece.id,
        finding: chosen ?? 'treat-as-lead',
        ...(isTested(chosen) && { method: method.value.trim() }),
        ...(isCorrection && { correction: correction.value.trim() }),
      }),
    );
    if (kept) showToast({ text: WORDS.leadLogged });
  }

  return (
    <form class="stack" onSubmit={send} noValidate>
      <OneOf
        label={WORDS.leadFinding}
        of={finding}
        options={LEAD_FINDINGS.filter((value) => value !== 'untested' || standing !== undefined).map(
          (value) => ({
            value,
            ...WORDS.leadFindings[value],
          }),
        )}
        problem={form.isTried.value && chosen === undefined ? WORDS.leadMissing : undefined}
      />
      {isTested(chosen) && (
        <Words
          label={WORDS.method}
          hint={WORDS.methodHint}
          of={method}
          form={form}
          at="method"
          problem={method.value.trim() === '' ? WORDS.methodMissing : undefined}
        />
      )}
      {isCorrection && (
        <Words
          label={WORDS.correction}
          hint={WORDS.correctionHint}
          of={correction}
          form={form}
          at="correction"
          isLong
          problem={isReason ? undefined : WORDS.correctionMissing}
        />
      )}
      <Send form={form}>{WORDS.logLead}</Send>
    </form>
  );
}
