import type { OldFinishRecord } from '../../../logbook/fold/piece/old-finishes';
import type { Piece } from '../../../logbook/fold/piece/pieces';
import { CautionNotice } from '../../../parts/blocks/caution';
import { useShop } from '../../../parts/frame/shop-context';
import { sandingRule } from '../../../shop/stack/old-finish';
import { cautionOf } from '../../../words/air/cautions';
import { OLD_WORDS as WORDS } from '../../../words/piece/old-finish';
import { whenWords } from '../../../words/times';
import { REASON_WORDS } from '../../../words/verdicts/reasons';
import { LeadForm } from './lead-form';

/** Once it is known, or taken for lead, nobody is asked to test it. */
const KNOWN = { ...cautionOf('lead'), text: REASON_WORDS.leadFound() };

interface LeadProps {
  readonly piece: Piece;
  readonly record: OldFinishRecord;
}

/** What is known of lead, and how; until something is, dry sanding of an opaque finish stays closed. */
export function Lead({ piece, record }: LeadProps) {
  const { nowMs } = useShop();
  const { lead, seen } = record;
  const rule = sandingRule(record);
  const isAsked = rule !== 'any' || lead !== undefined;
  return (
    <>
      {isAsked ? (
        <>
          {rule !== 'any' && <CautionNotice caution={rule === 'wet-only' ? KNOWN : cautionOf('lead')} />}
          <p>
            <strong>{WORDS.leadState[rule]}</strong>
          </p>
        </>
      ) : (
        <p>{seen ? WORDS.leadNone : WORDS.notLookedAt}</p>
      )}
      {lead ? (
        <>
          <p class="quiet">
            {WORDS.leadFindings[lead.finding].label}, {whenWords(lead.atMs, nowMs.value)}
            {lead.method && `: ${lead.method}`}
          </p>
          <details class="folded">
            <summary>{WORDS.correctLead}</summary>
            <LeadForm piece={piece} standing={lead.finding} />
          </details>
        </>
      ) : (
        <LeadForm piece={piece} standing={undefined} />
      )}
    </>
  );
}
