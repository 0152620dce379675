import { testForLead } from '../../../actions/air/test-for-lead';
import type { Piece } from '../../../logbook/fold/pieces';
import { LEAD_FINDINGS } from '../../../logbook/kinds/spot-test';
import { Refusal } from '../../../parts/fields/refusal';
import { useForm } from '../../../parts/fields/use-form';
import { Button } from '../../../parts/frame/button';
import { CautionNotice } from '../../../parts/frame/caution';
import { useShop } from '../../../parts/frame/shop-context';
import { showToast } from '../../../parts/frame/toast';
import type { SandingRule } from '../../../shop/stack/old-finish';
import { cautionOf } from '../../../words/air/cautions';
import { OLD_WORDS as WORDS } from '../../../words/air/old-finish';

interface LeadProps {
  readonly piece: Piece;
  readonly rule: SandingRule;
  readonly isOpaque: boolean;
}

/** The test for lead, or the choice to treat it as lead; until then dry sanding stays closed. */
export function Lead({ piece, rule, isOpaque }: LeadProps) {
  const { needs, actions } = useShop();
  const form = useForm();
  if (!isOpaque && rule === 'any') return <p>{WORDS.leadNone}</p>;

  async function note(finding: (typeof LEAD_FINDINGS)[number]): Promise<void> {
    const kept = await form.send(true, () => testForLead(needs, { piece: piece.id, finding }));
    if (kept) showToast({ text: WORDS.leadLogged, onUndo: () => void actions.undo(kept.id) });
  }

  return (
    <>
      <CautionNotice caution={cautionOf('lead')} />
      <p>
        <strong>{WORDS.leadState[rule]}</strong>
      </p>
      <Refusal refused={form.refused.value} />
      <div class="acts">
        {LEAD_FINDINGS.map((finding) => (
          <Button key={finding} onClick={() => void note(finding)}>
            {WORDS.leadFindings[finding]}
          </Button>
        ))}
      </div>
    </>
  );
}
