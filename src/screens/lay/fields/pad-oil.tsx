import { PADDED_REST_DAYS } from '../../../estimator/finishes/to-sheet';
import { CautionNotice } from '../../../parts/blocks/caution';
import { Choice } from '../../../parts/fields/choice';
import { cautionOf } from '../../../words/air/cautions';
import { PAD_WORDS as WORDS } from '../../../words/piece/coat/lay';
import type { CoatDraft } from '../coat-draft';

interface PadOilProps {
  readonly draft: CoatDraft;
  readonly onChange: (more: Partial<CoatDraft>) => void;
}

/** Whether there is oil on the pad, asked once a jar; with oil, the rags at once. */
export function PadOil({ draft, onChange }: PadOilProps) {
  if (draft.how !== 'pad') return null;
  return (
    <>
      <Choice
        label={WORDS.oil}
        options={[
          { value: 'yes', ...WORDS.withOil },
          { value: 'no', ...WORDS.withoutOil },
        ]}
        value={draft.oil === undefined ? undefined : draft.oil ? 'yes' : 'no'}
        onChange={(said) => onChange({ oil: said === 'yes' })}
      />
      {draft.oil && <CautionNotice caution={cautionOf('rags')} />}
      {draft.oil && <p class="quiet">{WORDS.spiritOff(PADDED_REST_DAYS)}</p>}
    </>
  );
}
